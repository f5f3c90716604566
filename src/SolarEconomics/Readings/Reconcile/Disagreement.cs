namespace SolarEconomics;

/// <summary>A likely reason why two sources differ.</summary>
/// <param name="Kind">What kind of fault.</param>
/// <param name="Words">The reason in words, with its number.</param>
public sealed record Disagreement(DisagreementKind Kind, string Words);
