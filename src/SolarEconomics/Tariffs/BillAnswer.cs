using System.Globalization;

namespace SolarEconomics;

/// <summary>The bill of some readings over some days, with how much of those days the readings cover.</summary>
/// <param name="Days">Billing days.</param>
/// <param name="Currency">Currency of all amounts.</param>
/// <param name="Bills">One bill for each period; of the readings there are, where some are missing.</param>
/// <param name="CoveredShare">Share of the days' time for which there are readings. Range: 0 to 1.</param>
public sealed partial record BillAnswer(DateSpan Days, Currency Currency, IReadOnlyList<Bill> Bills, double CoveredShare) : IFinding
{
    /// <summary>Whether times without a reading were filled.</summary>
    public bool IsEstimate { get; init; }

    /// <summary>Whether the days were cut into periods, each with a bill of its own.</summary>
    public bool HasPeriods { get; init; }

    /// <summary>What the tariff says that cannot be priced here, by its path; empty where everything is priced.</summary>
    public IReadOnlyList<string> Unpriced { get; init; } = [];

    /// <summary>Which clocks hours and billing days follow, in a sentence.</summary>
    public string Clocks { get; init; } = "";

    /// <summary>What was decided about the readings, one sentence each; empty where there was nothing to decide.</summary>
    public IReadOnlyList<string> ReadingNotes { get; init; } = [];

    /// <summary>All lines, those of one part and rate added up over the periods.</summary>
    public IReadOnlyList<BillLine> Lines =>
    [
        .. Bills.SelectMany(b => b.Lines).GroupBy(l => (l.Source, l.Part, l.Unit, l.Rate)).Select(g => g.Count() == 1 ? g.First() : g.First() with
        {
            Days = new DateSpan(g.First().Days.Start, g.Last().Days.End),
            Quantity = g.Sum(l => l.Quantity),
            Amount = Nominal(g.Sum(l => l.Amount.Amount)),
            Tax = Nominal(g.Sum(l => l.Tax.Amount)),
            Why = WhyOf([.. g]),
        }),
    ];

    /// <summary>Whether there is a total: the readings cover every day, or the answer is an estimate.</summary>
    public bool HasTotal => CoveredShare >= 1 || IsEstimate;

    /// <summary>Sum of the lines; <see langword="null"/> where the readings do not cover the days.</summary>
    public Money? TotalBeforeTax => HasTotal ? Nominal(Bills.Sum(b => b.TotalBeforeTax.Amount)) : null;

    /// <summary>Tax on them; <see langword="null"/> where the readings do not cover the days.</summary>
    public Money? Tax => HasTotal ? Nominal(Bills.Sum(b => b.Tax.Amount)) : null;

    /// <summary>To pay; <see langword="null"/> where the readings do not cover the days.</summary>
    public Money? Total => HasTotal ? Nominal(Bills.Sum(b => b.Total.Amount)) : null;

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var days = Wording.Days(Days, culture);
        var covered = Wording.Percent(CoveredShare, culture);
        return new Finding(
            Total is { } total ? Wording.Exact(total, culture) : "no total",
            Total is null ? $"for {days}: the readings cover {covered} of these days. Add the missing readings, choose other days, or ask for an estimate."
            : IsEstimate ? $"to pay for {days}, as an estimate: the readings cover {covered}, the rest is the mean of the same time of day."
            : $"to pay for {days}, tax included.")
        {
            Notes = [.. NotesOf()],
            Cautions = [Bill.Caution],
            Tables =
            [
                new FindingTable($"The bill, line by line ({Currency})", ["part", "quantity", "unit", "rate", "amount", "why"],
                    [.. Lines.Select(l => Bill.Row(l, culture))]),
                .. HasPeriods && HasTotal ? [ByPeriod(culture)] : Array.Empty<FindingTable>(),
            ],
        };
    }

    private FindingTable ByPeriod(CultureInfo culture) => new($"Bill by bill ({Currency})", ["days", "before tax", "tax", "to pay"],
        [.. Bills.Select(b => (IReadOnlyList<string>)[Wording.Days(b.Period, culture), Wording.Plain(b.TotalBeforeTax, culture), Wording.Plain(b.Tax, culture), Wording.Plain(b.Total, culture)])]);

    /// <summary>Lines added up are read aloud as one: how many there are, what they come to, and the first as it stands.</summary>
    private static string WhyOf(IReadOnlyList<BillLine> lines) => string.Create(CultureInfo.InvariantCulture,
        $"{lines.Count} lines that come to {lines.Sum(l => l.Quantity):#,0.###} {Many(lines[0].Unit)}. The first: {lines[0].Why}");

    private IEnumerable<string> NotesOf()
    {
        foreach (var note in Bills.SelectMany(b => b.Notes).Distinct(StringComparer.Ordinal)) yield return note;
        if (Clocks.Length > 0) yield return Clocks;
        foreach (var note in ReadingNotes) yield return note;
        foreach (var path in Unpriced) yield return $"Not priced here: {path}.";
    }

    private Money Nominal(decimal amount) => Money.Nominal(amount, Currency);

    /// <summary>A unit of several: days, kW months; kWh and currencies stay as they are.</summary>
    private static string Many(string unit) => unit.EndsWith("day", StringComparison.Ordinal) || unit.EndsWith("month", StringComparison.Ordinal)
        || unit.EndsWith("year", StringComparison.Ordinal) || unit.EndsWith("bill", StringComparison.Ordinal) ? unit + "s" : unit;
}
