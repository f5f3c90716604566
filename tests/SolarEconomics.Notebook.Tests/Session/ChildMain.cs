namespace SolarEconomics.Notebook.Tests;

/// <summary>The tests' own program: started by a session, it serves one.</summary>
internal static class ChildMain
{
    public static int Main(string[] args) => ChildHost.Serve(args[0]);

    /// <summary>How a test starts it.</summary>
    public static ChildProgram Program { get; } = new("dotnet", [typeof(ChildMain).Assembly.Location]);
}
