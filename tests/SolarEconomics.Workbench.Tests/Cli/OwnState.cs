using System.Runtime.CompilerServices;

namespace SolarEconomics.Workbench.Tests;

/// <summary>What the program keeps per user stands in a folder of this test run, in this process and in those that it starts; it goes with the run.</summary>
internal static class OwnState
{
    public static string Folder { get; } = Directory.CreateTempSubdirectory("workbench-test-state-").FullName;

    [ModuleInitializer]
    internal static void UseIt()
    {
        Environment.SetEnvironmentVariable(StateFolder.Variable, Folder);
        AppDomain.CurrentDomain.ProcessExit += (_, _) => TakeAway();
    }

    private static void TakeAway()
    {
        try { Directory.Delete(Folder, recursive: true); }
        catch (IOException left)
        {
            // A program that a test killed may still be writing there; the system empties its temporary folder in its own time.
            Console.Error.WriteLine(left.Message);
        }
    }
}
