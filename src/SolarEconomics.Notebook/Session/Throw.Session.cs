namespace SolarEconomics.Notebook;

internal static partial class Throw
{
    internal const string StoppedByReader = "Stopped by you. What earlier steps declared is still there.";

    internal static InvalidOperationException OtherEngine(Version? version) =>
        new($"Found version {version} of the C# engine, expected the one this program was built with. Install the program again.");

    internal static InvalidOperationException EngineDidNotStart(StepError error) =>
        new($"The C# engine could not load the library: {error}");
}
