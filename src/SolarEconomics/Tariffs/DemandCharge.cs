namespace SolarEconomics;

/// <summary>A charge on the highest average power taken from the grid inside a window.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="PerKw">Price before tax for one kW, or kVA, and one <paramref name="Per"/>.</param>
/// <param name="Window">When demand counts.</param>
/// <param name="Per">What the price is for.</param>
/// <param name="AveragingMinutes">Length of the averages, from the hour on. Range: 1 to 60, a divisor of 60.</param>
public sealed record DemandCharge(string Name, decimal PerKw, RateWindow Window, ChargePeriod Per = ChargePeriod.Month, int AveragingMinutes = 30)
    : TariffPart(Name)
{
    /// <summary>Demand that is charged at least. Unit: kW. Default: 0.</summary>
    public decimal MinimumKw { get; init; }

    /// <summary>Share of the highest earlier demand that is charged at least. Range: 0 to 1. Default: 0, no memory.</summary>
    public decimal RatchetShare { get; init; }

    /// <summary>How many earlier demands the charge remembers. Default: 11.</summary>
    public int RatchetBills { get; init; } = 11;

    /// <summary>Name of the season whose demands alone are remembered, such as last winter's; <see langword="null"/> for all.</summary>
    public string? RatchetSeason { get; init; }

    /// <summary>Highest demand known from before the readings, such as last winter's. Unit: kW. Default: 0.</summary>
    public decimal EarlierKw { get; init; }

    /// <summary>Whether each day's highest demand is charged and added up, rather than the bill's. Default: no.</summary>
    public bool EachDay { get; init; }

    /// <summary>Whether each calendar month's own highest demand is charged in a bill of several, whatever the price is for. A price for a month always is. Default: no.</summary>
    public bool EachMonth { get; init; }

    /// <summary>The power that is measured. Default: real power.</summary>
    public DemandUnit Unit { get; init; }

    /// <summary>Share of the highest apparent power that is charged at least as kW, such as 0.9. Default: 0, none.</summary>
    public decimal KvaShare { get; init; }

    /// <summary>Blocks on demand in place of the one price; empty where there are none.</summary>
    public IReadOnlyList<DemandStep> Steps { get; init; } = [];

    /// <summary>The demand that is charged, where the tariff takes the highest of several.</summary>
    /// <param name="kw">Highest real power. Unit: kW.</param>
    /// <param name="kva">Highest apparent power. Unit: kVA.</param>
    /// <param name="kvaShare">Share of the apparent power that counts as kW.</param>
    /// <param name="earlierKw">Highest earlier demand, such as last winter's. Unit: kW.</param>
    /// <param name="earlierShare">Share of it that counts.</param>
    /// <returns>Charged demand in kW.</returns>
    /// <remarks>Equation: max(kW, a·kVA, b·kW earlier). Source: bill-13.</remarks>
    public static decimal BilledKw(decimal kw, decimal kva, decimal kvaShare, decimal earlierKw, decimal earlierShare) =>
        Math.Max(kw, Math.Max(kva * kvaShare, earlierKw * earlierShare));

    internal override bool PricesReactive => Unit == DemandUnit.KilovoltAmpere || KvaShare > 0;

    internal override SegmentPart On(SegmentContext context) => new SegmentDemand(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        var seasons = tariff.Seasons.Select(s => s.Name).ToList();
        foreach (var season in new[] { Window.Season, RatchetSeason }.OfType<string>().Distinct(StringComparer.Ordinal))
            if (!seasons.Contains(season, StringComparer.Ordinal)) yield return Throw.UnknownSeason(tariff, "demand", season, seasons);
        if (AveragingMinutes < 1 || 60 % AveragingMinutes != 0) yield return Throw.AveragingMinutes(tariff, this);
        if (Steps.Count > 0 && !Blocks.AreInOrder) yield return Throw.DemandStepsOutOfOrder(tariff, this);
    }

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) =>
        this with { PerKw = PerKw * importFactor, Steps = [.. Steps.Select(s => s with { Price = s.Price * importFactor })] };

    /// <summary>The steps as blocks, which share a quantity in the same way.</summary>
    internal RateBlocks Blocks => new([.. Steps.Select(s => new RateBlock(s.UpTo, s.Price))]);
}
