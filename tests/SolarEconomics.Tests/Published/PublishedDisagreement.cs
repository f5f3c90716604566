namespace SolarEconomics.Tests;

/// <summary>A computed value and a published one disagree.</summary>
public sealed class PublishedDisagreement(PublishedRow row, string difference)
    : Exception($"{row.Id} ({row.Check}): {difference}. Inputs: {row.Inputs}. Source ({row.Mark}): {row.Source}");
