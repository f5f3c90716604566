namespace SolarEconomics.Notebook;

/// <summary>A step's code as the engine gets it: with the name that messages use for its lines.</summary>
internal static class StepCode
{
    internal static string Named(RunStep step) => $"#line 1 \"{step.Place.Replace('"', '\'')}\"\n{step.Code}";
}
