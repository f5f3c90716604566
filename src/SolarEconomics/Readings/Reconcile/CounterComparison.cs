using System.Globalization;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>A lifetime counter beside the intervals of the same energy, period by period between its readings, with the most likely reasons why they differ.</summary>
/// <param name="Device">Device of the counter.</param>
/// <param name="Channel">Name of the channel of intervals.</param>
/// <param name="Periods">One for each pair of readings that follow each other, in order of time.</param>
/// <param name="Reasons">Likely reasons of a difference, the most likely first; empty where they agree or nothing explains it.</param>
public sealed record CounterComparison(string Device, string Channel, IReadOnlyList<CounterPeriod> Periods, IReadOnlyList<Disagreement> Reasons) : IFinding
{
    /// <summary>Energy of the counter over the periods that the intervals cover. Unit: kWh.</summary>
    public double CounterKwh => Periods.Where(p => p.Complete).Sum(p => p.CounterKwh);

    /// <summary>Energy of the intervals over the same periods, in the middle of what the days of reading leave open. Unit: kWh.</summary>
    public double IntervalsKwh => Periods.Where(p => p.Complete).Sum(p => (p.LowKwh + p.HighKwh) / 2);

    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var complete = Periods.Count(p => p.Complete);
        var words = $"The counter of \"{Device}\" has {CounterKwh.ToString("#,0.0", culture)} kWh and \"{Channel}\" has about {IntervalsKwh.ToString("#,0.0", culture)} kWh over the {complete.ToString(culture)} of "
            + $"{Periods.Count.ToString(culture)} periods that the intervals cover. " + (Reasons.Count == 0 ? "Nothing points to a fault." : "Most likely: " + string.Join("; ", Reasons.Select(r => r.Words)) + ".");
        return new Finding((CounterKwh - IntervalsKwh).ToString("#,0.0", culture) + " kWh apart", words)
        {
            Notes = ["A reading may be taken at any time of its day, so the intervals give a range."],
            Tables =
            [
                new FindingTable("Between the readings (kWh)", ["from", "until", "counter", "intervals, least", "intervals, most", "apart", "covered"],
                [.. Periods.Select(p => (IReadOnlyList<string>)[LocalDatePattern.Iso.Format(p.Days.Start), LocalDatePattern.Iso.Format(p.Days.End), Text(p.CounterKwh, culture), Text(p.LowKwh, culture),
                    Text(p.HighKwh, culture), p.Complete ? Text(p.ApartKwh, culture) : "", p.Complete ? "yes" : "no"])]),
            ],
        };
    }

    private static string Text(double kwh, CultureInfo culture) => kwh.ToString("#,0.0", culture);
}
