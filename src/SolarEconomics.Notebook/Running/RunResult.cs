namespace SolarEconomics.Notebook;

/// <summary>How the run of a notebook ended.</summary>
/// <param name="Ran">How many steps worked.</param>
/// <param name="Count">How many steps there are to work out.</param>
/// <param name="FailedAt">Name of the step at which the run ended; <see langword="null"/> where every step worked.</param>
/// <param name="Failure">How that step ended; <see langword="null"/> where every step worked.</param>
public sealed record RunResult(int Ran, int Count, string? FailedAt, StepEnded? Failure)
{
    /// <summary>Whether every step worked.</summary>
    public bool Worked => Failure is null;
}
