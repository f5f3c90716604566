using System.Runtime.CompilerServices;

namespace SolarEconomics.Workbench.Tests;

/// <summary>What the program keeps per user stands in a folder of the tests, in this process and in those that it starts.</summary>
internal static class OwnState
{
    public static string Folder { get; } = Path.Combine(Path.GetTempPath(), "workbench-test-state");

    [ModuleInitializer]
    internal static void UseIt() => Environment.SetEnvironmentVariable(StateFolder.Variable, Folder);
}
