namespace SolarEconomics.Notebook.Tests;

/// <summary>The tests' own program: started by a session, it serves one; started by a kill test, it writes until it is killed.</summary>
internal static class ChildMain
{
    public static int Main(string[] args) => args is [RestlessWriter.Name, var notebook] ? RestlessWriter.Write(notebook) : ChildHost.Serve(args[0]);

    /// <summary>How a test starts it.</summary>
    public static ChildProgram Program { get; } = new("dotnet", [typeof(ChildMain).Assembly.Location]);
}
