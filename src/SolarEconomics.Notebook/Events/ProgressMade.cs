namespace SolarEconomics.Notebook;

/// <summary>A step at work told how far a long piece of its work is.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="Share">Share of the piece that is done, 0 to 1; 1 once it has ended, and the step may go on with other work.</param>
/// <param name="SecondsLeft">How long the rest of the piece takes at the pace so far. Unit: s.</param>
public sealed record ProgressMade(string StepId, double Share, double SecondsLeft) : StepEvent(StepId);
