using System.CommandLine;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary><c>session PIPE</c>: this program as a session's own process. The program starts it itself, so help does not list it.</summary>
internal static class SessionVerb
{
    public const string Name = "session";

    /// <summary>How the program starts itself as a session.</summary>
    public static ChildProgram Program => ChildProgram.Itself(Name);

    public static Command Make()
    {
        var pipe = new Argument<string>("PIPE");
        var verb = new Command(Name) { Hidden = true };
        verb.Arguments.Add(pipe);
        verb.SetAction(parsed => ChildHost.Serve(parsed.GetValue(pipe)!));
        return verb;
    }
}
