namespace SolarEconomics.Notebook;

internal static partial class Throw
{
    internal const string StoppedByReader = "Stopped by you. What earlier steps declared is still there.";

    internal const string StoppedInQueue = "Stopped by you before its turn came.";

    internal const string NoSession = "Not worked out: no session could be started.";

    internal static InvalidOperationException OtherEngine(Version? version) =>
        new($"Found version {version} of the C# engine, expected the one this program was built with. Install the program again.");

    internal static InvalidOperationException NoProcessPath() =>
        new("Found no path of this program, expected one: a session's own process is this program once more.");

    internal static InvalidOperationException EngineDidNotStart(StepError error) =>
        new($"The C# engine could not load the library: {error}");
}
