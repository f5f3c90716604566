namespace SolarEconomics;

/// <summary>A demand that is charged once: the highest of some averages, or more where the tariff remembers earlier ones.</summary>
/// <param name="Averages">First interval, number of intervals and hours of each average.</param>
/// <param name="PerKw">Price with tax for one kW. Range: 0 or more.</param>
/// <param name="LeastKw">Charged at least.</param>
/// <param name="Steps">What each kW above an edge costs on top.</param>
internal sealed record BillPeak(IReadOnlyList<(int First, int Count, double Hours)> Averages, double PerKw, double LeastKw, IReadOnlyList<(double AboveKw, double PerKw)> Steps)
{
    /// <summary>Earlier demands of the same charge that it remembers.</summary>
    internal IReadOnlyList<BillPeak> Earlier { get; init; } = [];

    /// <summary>Share of them that is charged at least.</summary>
    internal double EarlierShare { get; init; }
}
