namespace SolarEconomics;

/// <summary>One full set of flows on a grid that the records allow: kWh per interval at the board. Unit: kWh.</summary>
/// <remarks>Balance of each interval: generation + import + discharge = use + export + charge; use includes the plant's standby.</remarks>
internal sealed record EnergySet(
    IntervalGrid Grid,
    double[] GenerationKwh,
    double[] ImportKwh,
    double[] ExportKwh,
    double[] ChargeKwh,
    double[] DischargeKwh,
    double[] StandbyKwh)
{
    /// <summary>AC generation per interval of each device; what the balance adds beyond them belongs to none.</summary>
    internal IReadOnlyDictionary<string, double[]> ByDevice { get; init; } = new Dictionary<string, double[]>(StringComparer.Ordinal);

    /// <summary>What the home wanted: use less the plant's own standby.</summary>
    internal double WantedKwh(int i) =>
        GenerationKwh[i] + ImportKwh[i] + DischargeKwh[i] - ExportKwh[i] - ChargeKwh[i] - StandbyKwh[i];

    /// <summary>The set half way between two sets on one grid.</summary>
    internal static EnergySet Middle(EnergySet a, EnergySet b) => new(
        a.Grid,
        Middle(a.GenerationKwh, b.GenerationKwh),
        Middle(a.ImportKwh, b.ImportKwh),
        Middle(a.ExportKwh, b.ExportKwh),
        Middle(a.ChargeKwh, b.ChargeKwh),
        Middle(a.DischargeKwh, b.DischargeKwh),
        a.StandbyKwh)
    {
        ByDevice = a.ByDevice.ToDictionary(d => d.Key, d => Middle(d.Value, b.ByDevice[d.Key]), StringComparer.Ordinal),
    };

    private static double[] Middle(double[] a, double[] b)
    {
        if (ReferenceEquals(a, b)) return a;
        var middle = new double[a.Length];
        for (var i = 0; i < a.Length; i++) middle[i] = (a[i] + b[i]) / 2;
        return middle;
    }
}
