using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace SolarEconomics;

/// <summary>Several tariffs ranked by what they would have billed for a home's own readings.</summary>
/// <param name="Days">Billing days.</param>
/// <param name="Ranks">The tariffs, cheapest first; of the readings there are, where some are missing.</param>
/// <param name="Regrets">For each whole year after the first, the cost of having chosen by the year before.</param>
/// <param name="CoveredShare">Share of the days' time for which there are readings. Range: 0 to 1.</param>
public sealed record CompareAnswer(DateSpan Days, IReadOnlyList<TariffRank> Ranks, IReadOnlyList<ChoiceRegret> Regrets, double CoveredShare) : IFinding
{
    /// <summary>Whether times without a reading were filled.</summary>
    public bool IsEstimate { get; init; }

    /// <summary>Whether the ranks stand: the readings cover every day, or the answer is an estimate.</summary>
    public bool HasTotals => CoveredShare >= 1 || IsEstimate;

    /// <summary>What was decided about the readings, one sentence each; empty where there was nothing to decide.</summary>
    public IReadOnlyList<string> ReadingNotes { get; init; } = [];

    /// <summary>Name of the choice that the home has today; <see langword="null"/> where nobody said.</summary>
    public string? Today { get; init; }

    /// <summary>Where the difference between today's tariff and the cheapest comes from; <see langword="null"/> where nobody said what today's is.</summary>
    public TariffChange? Change { get; init; }

    internal static CompareAnswer Of(BilledReadings readings, Currency currency, IReadOnlyList<TariffCost> costs)
    {
        Money Nominal(decimal amount) => Money.Nominal(amount, currency);
        var ordered = costs.OrderBy(t => t.Total).ThenBy(t => t.Name, StringComparer.Ordinal).ToList();
        var best = ordered[0];
        var ties = ordered.Skip(1).Select(t => Ties([.. t.Years.Zip(best.Years, (own, least) => own - least)], t.Total - best.Total)).ToList();
        var ranks = ordered.Select((t, i) => new TariffRank(t.Name, Nominal(t.Total), Nominal(t.Total - best.Total),
            i == 0 ? ties.Contains(true) : ties[i - 1], [.. t.Years.Select(Nominal)]) { Remark = t.Remark });
        var regrets = Enumerable.Range(1, Math.Max(0, best.Years.Count - 1)).Select(year =>
        {
            var chosen = ordered.MinBy(t => t.Years[year - 1])!;
            var cheapest = ordered.MinBy(t => t.Years[year])!;
            return new ChoiceRegret(year + 1, chosen.Name, cheapest.Name, Nominal(chosen.Years[year] - cheapest.Years[year]));
        });
        return new CompareAnswer(readings.Days, [.. ranks], [.. regrets], readings.CoveredShare) { IsEstimate = readings.IsEstimate, ReadingNotes = readings.Notes };
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        if (!HasTotals)
            return new Finding("no ranks", $"The readings cover {CoveredShare.ToString("P1", culture)} of {Wording.Days(Days, culture)}. Add the missing readings, choose other days, or ask for an estimate.") { Cautions = [Bill.Caution] };
        var words = Ranks.Count == 1 ? "is the only tariff given."
            : Ranks[0].Tie ? $"is the cheapest on these readings, but ties with {DayWords.And([.. Ranks.Skip(1).Where(r => r.Tie).Select(r => r.Name)])}: they differ by no more than the difference swings from year to year."
            : $"is the cheapest on these readings: {Wording.Exact(Ranks[1].Difference, culture)} less than {Ranks[1].Name}.";
        return new Finding(Ranks[0].Name, words + ChangeWords(culture))
        {
            Notes = [.. Notes(culture)],
            Cautions = [Bill.Caution],
            Tables = [new FindingTable($"Bills for {Wording.Days(Days, culture)}", ["tariff", "total", "difference", "tie", "remark"],
                [.. Ranks.Select(r => (IReadOnlyList<string>)[r.Name, Wording.Exact(r.Total, culture), Wording.Exact(r.Difference, culture), r.Tie ? "tie" : "", r.Remark])])],
        };
    }

    /// <summary>The ranks as a JSON list: <c>tariff</c>, <c>total</c>, <c>difference</c> and <c>tie</c>, cheapest first.
    /// Amounts are texts, so that no cent is lost; <c>null</c> where the readings do not cover the days.</summary>
    public string ToJson()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true }))
        {
            json.WriteStartArray();
            foreach (var rank in Ranks)
            {
                json.WriteStartObject();
                json.WriteString("tariff", rank.Name);
                json.WriteString("total", HasTotals ? Text(rank.Total) : null);
                json.WriteString("difference", HasTotals ? Text(rank.Difference) : null);
                json.WriteBoolean("tie", HasTotals && rank.Tie);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>Such as <c>It is €143 a year less than today's; the evening peak is where it comes from.</c></summary>
    private string ChangeWords(CultureInfo culture)
    {
        if (Change is null || Today is null) return "";
        if (Today == Ranks[0].Name) return " It is the one that you have today.";
        var perYear = Change.Saved with { Amount = Change.Saved.Amount * 365.25m / Days.Days };
        var less = $" It is {Wording.Whole(perYear, culture)} a year less than today's";
        return Change.Main is { } main ? $"{less}; {(main is "export" or "the rest" or "fixed charges" ? main : "the " + main)} {(main == "fixed charges" ? "are" : "is")} where it comes from." : less + ".";
    }

    private IEnumerable<string> Notes(CultureInfo culture)
    {
        yield return "Each tariff is taken in its latest version for all days, with one bill over all of them; years count from the first day.";
        foreach (var note in ReadingNotes) yield return note;
        yield return Ranks[0].ByYear.Count < 2
            ? "Less than two whole years of readings cannot tell how the ranks swing from year to year: only equal totals are called a tie."
            : "A tie: the mean yearly difference is no larger than its range over the years.";
        foreach (var regret in Regrets)
            yield return $"Chosen on year {(regret.Year - 1).ToString(culture)}, {regret.Chosen} " + (regret.Cost.Amount == 0
                ? $"is the cheapest in year {regret.Year.ToString(culture)} too."
                : $"costs {Wording.Exact(regret.Cost, culture)} more than the best in year {regret.Year.ToString(culture)}, {regret.Best}.");
        if (IsEstimate) yield return $"An estimate: the readings cover {CoveredShare.ToString("P1", culture)}, the rest is the mean of the same time of day.";
    }

    private static bool Ties(IReadOnlyList<decimal> yearly, decimal difference) =>
        difference == 0 || (yearly.Count >= 2 && Math.Abs(yearly.Average()) <= yearly.Max() - yearly.Min());

    private static string Text(Money money) => money.Amount.ToString("0.00##########", CultureInfo.InvariantCulture);
}
