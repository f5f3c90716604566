namespace SolarEconomics;

/// <summary>Records of one window that cannot all be true.</summary>
/// <param name="ByKwh">By how much. Unit: kWh.</param>
/// <param name="Too">Records that say too much.</param>
/// <param name="Against">Records that leave too little for it.</param>
internal sealed record FlowContradiction(double ByKwh, IReadOnlyList<string> Too, IReadOnlyList<string> Against);
