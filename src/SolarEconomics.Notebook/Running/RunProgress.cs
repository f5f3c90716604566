namespace SolarEconomics.Notebook;

/// <summary>How far the run of a notebook is.</summary>
/// <param name="Number">Number of the step at work among all steps that are worked out, counted from 1.</param>
/// <param name="Count">How many steps are worked out.</param>
/// <param name="Name">What the step is called: its heading and number.</param>
/// <param name="Ended">How the step ended; <see langword="null"/> while it is at work.</param>
public sealed record RunProgress(int Number, int Count, string Name, StepEnded? Ended);
