namespace AlderWeir;

/// <summary>What the generator makes of a seed.</summary>
/// <param name="Files">Bytes of each file, by its name in <c>data-demo/</c>.</param>
/// <param name="Truth">The hidden true flows, for tests.</param>
/// <param name="Refuge">Those of the off-grid sister site.</param>
public sealed record ScenarioResult(IReadOnlyDictionary<string, byte[]> Files, TrueFlows Truth, RefugeTruth Refuge);
