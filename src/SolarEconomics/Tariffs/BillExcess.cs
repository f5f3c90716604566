namespace SolarEconomics;

/// <summary>What every priced kWh beyond the edge of a block costs on top, charged or not paid.</summary>
/// <param name="Side">Import or export.</param>
/// <param name="Intervals">The intervals whose energy fills the block, ascending.</param>
/// <param name="Factors">Priced kWh per metered kWh, for each of the intervals.</param>
/// <param name="BeyondKwh">The edge, in priced kWh.</param>
/// <param name="PerKwh">Price on top with tax. Range: 0 or more.</param>
internal sealed record BillExcess(EnergySide Side, IReadOnlyList<int> Intervals, IReadOnlyList<double> Factors, double BeyondKwh, double PerKwh);
