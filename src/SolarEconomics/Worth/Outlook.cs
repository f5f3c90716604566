using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>From the first purchase to a horizon: yearly flows of money and the measures of worth. Nominal, project view (no loan flows).</summary>
/// <remarks>The past is from records; the future repeats what the records say of each calendar month, at the latest prices, with the assumptions.
/// Generation that ages is taken from use and export in proportion. Immutable, so safe to share between threads.</remarks>
public sealed partial class Outlook : IFinding
{
    private readonly OutlookFlows _flows;
    private readonly List<CashEvent> _events;
    private readonly CashPath _path;
    private readonly CashPath _discounted;
    private readonly OwnerCash _ownerCash;

    private Outlook(OutlookRecord record, Assumptions assumptions)
    {
        WorthToDate = record.Worth;
        Assumptions = assumptions;
        _flows = new OutlookFlows(record, assumptions);
        _events = _flows.Events(ageing: true, replacement: true, pricePath: true);
        _path = Path(_events, 0);
        _discounted = Path(_events, assumptions.DiscountRate);
        YearsAhead = YearsOf(_events);
        _ownerCash = OwnerCash.Of(record, assumptions.Loans, _flows.Horizon);
    }

    /// <summary>The value to date from which it looks ahead.</summary>
    public WorthToDate WorthToDate { get; }

    /// <summary>What is assumed beyond the records.</summary>
    public Assumptions Assumptions { get; }

    /// <summary>The years from the first purchase to the horizon.</summary>
    public IReadOnlyList<OutlookYear> YearsAhead { get; }

    /// <summary>The fading battery by month from the records' end to the horizon; empty where no fade is assumed.</summary>
    public IReadOnlyList<BatteryAhead> BatteryMonths => [.. _flows.BatteryMonths()];

    /// <summary>The yearly flows, year 0 first.</summary>
    public MoneyFlow Flow => MoneyFlow.Nominal(Currency, [.. YearsAhead.Select(y => (double)y.Net.Amount)]);

    /// <summary>All flows with their dates; what comes in over a month is dated at its middle. What is paid on the horizon counts, what the ledger has later does not.</summary>
    public DatedMoneyFlow DatedFlow => DatedMoneyFlow.Sorted(Currency, PriceBasis.Nominal,
        _events.Where(e => e.Start < _flows.Horizon || (e.Start == e.End && e.Start == _flows.Horizon)).Select(e => new DatedAmount(MiddleOf(e), (decimal)e.Amount)));

    /// <summary>Net present value at the first purchase, at the assumed nominal discount rate.</summary>
    /// <remarks>Equation: Σ flow · (1 + r)^(−days/365). Source: worth-1.</remarks>
    public Money Npv => Round(_discounted.AtEnd);

    /// <summary>Internal rate of return of the dated flows, with how the search ended.</summary>
    public IrrResult Irr
    {
        get
        {
            _ = TimeValue.TryXirr(DatedFlow, out var result);
            return result;
        }
    }

    /// <summary>The cash position at the horizon, undiscounted.</summary>
    public Money PositionAtHorizon => Round(_path.AtEnd);

    /// <summary>First day that the outlook no longer counts.</summary>
    public LocalDate Horizon => _flows.Horizon;

    /// <summary>The same future in the owner's pocket, with the loans that are stated or in the ledger; <see langword="null"/> where there is no loan.</summary>
    public OwnerView? Owner => _ownerCash.Events.Count > 0 ? new OwnerView(this, _ownerCash) : null;

    internal Currency Currency => WorthToDate.Site.Currency;

    internal OutlookRecord Record => _flows.Record;

    /// <summary>All cash of the project.</summary>
    internal IReadOnlyList<CashEvent> Events => _events;

    /// <summary>Running costs of a year at today's prices, stated or the mean of the ledger.</summary>
    internal double RunningPerYear => _flows.RunningPerYear;

    /// <summary>The same records looked ahead from with other assumptions; energy is not priced again.</summary>
    /// <param name="assumptions">What is assumed instead.</param>
    /// <exception cref="ArgumentOutOfRangeException">An assumption is outside its range.</exception>
    public Outlook With(Assumptions assumptions)
    {
        ArgumentNullException.ThrowIfNull(assumptions);
        return Compute(Record, assumptions.Checked());
    }

    internal static Outlook Compute(OutlookRecord record, Assumptions assumptions)
    {
        var first = record.FirstPurchase;
        if (first.PlusYears(assumptions.Years) <= record.RecordEnd) throw Throw.HorizonInThePast(first, assumptions.Years, record.RecordEnd);
        return new Outlook(record, assumptions);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => OutlookWords.Say(this, _flows.RunningPerYear, Require.Given(culture));

    internal CashPath Path(IEnumerable<CashEvent> events, double rate) => new(_flows.FirstPurchase, _flows.Horizon, events, rate);

    internal Money Round(double amount) =>
        Money.Nominal(Math.Round(Throw.IfTooLarge(amount), Currency.MinorDigits, MidpointRounding.AwayFromZero), Currency);

    private static LocalDate MiddleOf(CashEvent e) => e.Start.PlusDays(Period.DaysBetween(e.Start, e.End) / 2);

    private List<OutlookYear> YearsOf(List<CashEvent> events)
    {
        var years = new List<OutlookYear>();
        var position = Money.Nominal(0, Currency);
        for (var y = 0; y < Assumptions.Years; y++)
        {
            var start = _flows.FirstPurchase.PlusYears(y);
            var end = _flows.FirstPurchase.PlusYears(y + 1);
            var isLast = y == Assumptions.Years - 1;
            Money Sum(MoneyPurpose purpose) => Round(events.Where(e => e.Purpose == purpose).Sum(e => PartWithin(e, start, end, isLast)));
            var year = new OutlookYear(y, start, Sum(MoneyPurpose.Investment), Sum(MoneyPurpose.Savings), Sum(MoneyPurpose.FeedIn),
                Sum(MoneyPurpose.Running), Sum(MoneyPurpose.Replacement), Sum(MoneyPurpose.Income), position, end <= WorthToDate.Period.End);
            position += year.Net;
            years.Add(year with { CumulativePosition = position });
        }
        return years;
    }

    /// <summary>What of a piece of cash falls within a year; the residual at the horizon belongs to the last one.</summary>
    private static double PartWithin(CashEvent e, LocalDate start, LocalDate end, bool isLast)
    {
        if (e.Start == e.End) return (e.Start >= start && e.Start < end) || (isLast && e.Start == end) ? e.Amount : 0;
        var shared = new DateSpan(start, end).Overlap(new DateSpan(e.Start, e.End)).Days;
        return e.Amount * shared / Period.DaysBetween(e.Start, e.End);
    }
}
