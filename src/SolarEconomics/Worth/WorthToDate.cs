using NodaTime;

namespace SolarEconomics;

/// <summary>What a plant has been worth so far, with its range, where each kWh went, and the straight line beside it.</summary>
/// <remarks>Immutable, so safe to share between threads. All money is nominal (money of the day) in the site's currency.</remarks>
public sealed partial class WorthToDate : IFinding
{
    // Each further record means computing the range again: only where it is asked for.
    private readonly Lazy<IReadOnlyList<Narrowing>> _narrowing;
    private readonly Lazy<OutlookRecord> _forOutlooks;
    private readonly Lazy<IReadOnlyList<LadderStep>> _ladder;

    private WorthToDate(Site site, TariffHistory tariffs, Ledger? ledger, WorthOptions options, SiteRecords records, EnergySet flows, EvidencePrices prices,
        Lazy<IReadOnlyList<LadderStep>> ladder)
    {
        (Site, Tariffs, Ledger, Options) = (site, tariffs, ledger, options);
        (Records, Flows, Prices) = (records, flows, prices);
        _ladder = ladder;
        _narrowing = new Lazy<IReadOnlyList<Narrowing>>(() => NarrowingRecords.Of(records, prices, new EvidenceLadder(records, prices), site.Currency));
        _forOutlooks = new Lazy<OutlookRecord>(() => new OutlookRecord(this));
    }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>The local days of the records, end excluded.</summary>
    public required DateSpan Period { get; init; }

    /// <summary>How much the records tell.</summary>
    public required EvidenceRung Rung { get; init; }

    /// <summary>Lowest and highest value that all records allow.</summary>
    public required MoneyRange Range { get; init; }

    /// <summary>The value with every missing reading half way between its ends; <see langword="null"/> where there is no upper end.</summary>
    public required Money? Value { get; init; }

    /// <summary>The range at each rung of evidence, up to <see cref="Rung"/>, with the flows that reach its ends; no range is wider than the one before.</summary>
    public IReadOnlyList<LadderStep> Ladder => _ladder.Value;

    /// <summary>Further records, the one that would narrow the range most first.</summary>
    public IReadOnlyList<Narrowing> Narrowing => _narrowing.Value;

    /// <summary>Energy and value by local calendar month.</summary>
    public required IReadOnlyList<MonthOfEnergy> Months { get; init; }

    /// <summary>Where the generation of the whole period went.</summary>
    public required EnergyTotals Energy { get; init; }

    /// <summary>The straight-line answer; <see langword="null"/> without a ledger or without anything that counted generation.</summary>
    public required StraightLine? StraightLine { get; init; }

    /// <summary>What was paid in running costs within the period.</summary>
    public required Money RunningCosts { get; init; }

    /// <summary>Everything paid and received so far, savings month by month included; <see langword="null"/> without a ledger or without an upper end.</summary>
    public required DatedMoneyFlow? CashSoFar { get; init; }

    /// <summary>Rules used, gaps filled and records left aside.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The value less what running the plant cost in the period; <see langword="null"/> where there is no upper end.</summary>
    public Money? ValueAfterRunningCosts => Value - RunningCosts;

    /// <summary>Years of records.</summary>
    public double RecordYears => Period.Days / 365.25;

    /// <summary>Rate of return so far as if the plant were worth nothing today; <see langword="null"/> where there is no cash flow.</summary>
    public IrrResult? XirrSoFar => XirrWith(0);

    /// <summary>Rate of return so far with the stated resale value; <see langword="null"/> where none is stated.</summary>
    public IrrResult? XirrWithResale => Options.ResaleToday is { } resale ? XirrWith(resale.Amount) : null;

    internal WorthOptions Options { get; }

    internal Ledger? Ledger { get; }

    internal TariffHistory Tariffs { get; }

    /// <summary>The records priced for looking ahead, once for every outlook.</summary>
    internal OutlookRecord ForOutlooks => _forOutlooks.Value;

    internal SiteRecords Records { get; }

    internal EnergySet Flows { get; }

    /// <summary>One device's AC generation per interval, missing readings half way between their ends.</summary>
    internal double[] GenerationOf(string device) => Flows.ByDevice[device];

    internal EvidencePrices Prices { get; }

    /// <summary>What was paid for export in each month, before rounding: the rest of the month's value is purchases avoided.</summary>
    internal IEnumerable<(MonthOfEnergy Month, double FeedIn)> MonthlyFeedIn()
    {
        var feedIn = new double[Months.Count];
        for (var i = 0; i < Flows.Grid.Count; i++) feedIn[Prices.MonthOf[i]] += Prices.Export[i] * Flows.ExportKwh[i];
        return Months.Select((month, m) => (month, feedIn[m]));
    }

    private IrrResult? XirrWith(decimal resale)
    {
        if (CashSoFar is not { } flow) return null;
        if (resale != 0) flow = flow.With(Period.End, Money.Nominal(resale, flow.Currency));
        _ = TimeValue.TryXirr(flow, out var result);
        return result;
    }
}
