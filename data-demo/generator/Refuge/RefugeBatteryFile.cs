using System.Globalization;
using NodaTime;

namespace AlderWeir;

/// <summary>Writes refuge-battery.csv: capacity tests, cell spread, water, cycles and equalising of the lead-acid battery.</summary>
internal static class RefugeBatteryFile
{
    internal static string Write(Clock clock, Draw draw, RefugeTruth truth)
    {
        var text = Text.Sheet();
        text.Append("# The refuge, off-grid sister of Alder Weir. 24 open lead-acid cells of 700 Ah; a capacity test discharges them from full at the ten-hour rate. Cycles are those of the monitor.\n");
        text.Append("date,kind,value,unit,cell °C,note\n");
        for (var (month, at) = (0, Timeline.Start); at < Timeline.End; month++, at = Timeline.Start.PlusMonths(month))
        {
            foreach (var row in RowsOf(month, at, clock, draw, truth)) text.Append(row).Append('\n');
        }
        return text.ToString();
    }

    private static IEnumerable<string> RowsOf(int month, LocalDate at, Clock clock, Draw draw, RefugeTruth truth)
    {
        if (at.Month is 4 or 10)
        {
            var day = at.PlusDays(9);
            var half = clock.FirstOf(day);
            var cellC = (long)draw.Between(Stream.RefugeCellWarmth, month, 8, 17);
            var tested = RefugeSite.NameplateKwh * truth.Health(half) * (1 - (0.006 * (25 - cellC))) * draw.Between(Stream.RefugeTest, month, 0.99, 1.01);
            yield return Row(day.PlusDays(-1), "equalising", "3.5", "h", "", "gravity even after it");
            yield return Row(day, "capacity test", Number(tested, "0.0"), "kWh", Text.Whole(cellC), "");
        }
        if (at.Month is 3 or 6 or 9 or 12)
        {
            var spreadMv = 16 + (0.8 * month) + draw.Between(Stream.RefugeSpread, month, -3, 3);
            yield return Row(at.PlusDays(14), "cell spread", Number(spreadMv, "0"), "mV", "", "at rest");
            var cycles = truth.DischargeWh.Take(clock.FirstOf(at.PlusDays(14))).Sum() / 1000.0 / RefugeSite.NameplateKwh;
            yield return Row(at.PlusDays(14), "cycles", Number(cycles, "0"), "cycles", "", "");
        }
        if (at.Month is >= 5 and <= 10)
            yield return Row(at.PlusDays(19), "water", Number(draw.Between(Stream.RefugeWater, month, 0.8, 2.2), "0.0"), "L", "", "");
    }

    private static string Row(LocalDate day, string kind, string value, string unit, string cellC, string note) => Text.Row(Text.Day(day), kind, value, unit, cellC, note);

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
