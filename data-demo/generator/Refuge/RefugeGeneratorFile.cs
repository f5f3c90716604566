using System.Globalization;
using NodaTime;

namespace AlderWeir;

/// <summary>Writes refuge-generator.csv: hours, litres, starts, oil and prices as the warden wrote them down. Nothing at the refuge counts the generator's kWh.</summary>
internal static class RefugeGeneratorFile
{
    private const double OpeningHours = 1214.0;
    private const double OilEveryHours = 100;

    internal static string Write(Clock clock, RefugeTruth truth)
    {
        var text = Text.Sheet();
        text.Append("# The refuge, off-grid sister of Alder Weir. Hours are those on the meter of the used 4.5 kW generator; litres were filled in, to the brim unless \"full\" says no.\n");
        text.Append("date,hours,litres,price per litre,full,starts,oil litres,oil price per litre,note\n");
        var (hours, burned, missing, oilAt, from) = (OpeningHours, 0.0, 0.0, OpeningHours + OilEveryHours, 0);
        foreach (var visit in Visits())
        {
            var starts = 0;
            var until = Math.Min(clock.Count, clock.FirstOf(visit));
            for (; from < until; from++)
            {
                hours += truth.GeneratorWh[from] > 0 ? 0.5 : 0;
                burned += truth.Litres(from);
                starts += truth.Starts[from] ? 1 : 0;
            }
            var isShort = visit == new LocalDate(2023, 9, 1);
            // A can has marks of half a litre; what is not poured in is missing in the tank at the next visit.
            var litres = Math.Floor((burned + missing - (isShort ? 12 : 0)) * 2) / 2;
            missing += burned - litres;
            burned = 0;
            var changesOil = hours >= oilAt;
            if (changesOil) oilAt = hours + OilEveryHours;
            text.Append(Row(visit, hours, Math.Max(0, litres), isShort, starts, changesOil)).Append('\n');
        }
        return text.ToString();
    }

    private static string Row(LocalDate visit, double hours, double litres, bool isShort, int starts, bool changesOil) => Text.Row(
        Text.Day(visit), Number(hours, "0.0"), Number(litres, "0.0"), litres > 0 ? Number(PriceOn(visit), "0.00") : "", isShort ? "no" : "yes",
        Text.Whole(starts), changesOil ? "1.6" : "", changesOil ? "9.80" : "",
        isShort ? "the last can was empty" : changesOil ? "oil changed" : visit == Timeline.Start ? "first row; tank filled before" : "");

    /// <summary>The first of each month, and the last day.</summary>
    private static IEnumerable<LocalDate> Visits()
    {
        for (var day = Timeline.Start; day < Timeline.End; day = day.PlusMonths(1)) yield return day;
        yield return Timeline.End.PlusDays(-1);
    }

    private static double PriceOn(LocalDate day) => day.Year switch { 2022 => 1.94, 2023 => 1.72, 2024 => 1.68, _ => 1.75 };

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
