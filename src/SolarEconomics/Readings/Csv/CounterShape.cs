using NodaTime;

namespace SolarEconomics;

/// <summary>Tells the states of a counter from energy by their shape: a counter rises for days, energy goes up and down within one.</summary>
/// <remarks>Ends at the first rows that no counter could have, so that it costs nothing on records of energy. Thresholds: common practice, no source.</remarks>
internal static class CounterShape
{
    private const int FewestReadings = 24;
    private const int FewestRises = 5;

    /// <summary>Fewer readings do where they never fall and stand this many steps above 0, and fewer still where the header speaks of a reading or a total.</summary>
    private const int FewestHighReadings = 8;
    private const int FewestHintedReadings = 3;
    private const double HighLevelInSteps = 20;

    /// <summary>Two days and more have a middle third of more than this. Unit: milliseconds.</summary>
    private const long LongMiddleMs = 14 * 3_600_000;

    /// <summary>What falls more often than this was no counter, whatever its header says. Share of readings.</summary>
    private const double MostFalls = 0.05;

    /// <summary>A counter may be reset, but seldom: once, and once more in so many readings.</summary>
    private const int ReadingsPerReset = 500;

    /// <summary>A daily counter begins near 0: at most at this share of what it showed before.</summary>
    private const double NearZero = 0.1;

    /// <summary>Rises that a day must hold on average for a daily counter to be told from few rows.</summary>
    private const int RisesPerDay = 4;

    /// <summary>A counter stands well above its own steps; what is 0 for most of the time and jumps now and then is no counter.</summary>
    private const double LevelInSteps = 2;

    internal static ColumnKind Of(StampColumn atMs, ReadOnlySpan<double> values, ReadOnlySpan<Quality> quality, DateTimeZone clock, bool hinted)
    {
        var (readings, rises, falls, fallsToZero, daysWithFalls, last) = (0, 0, 0, 0, 0, -1);
        var (sum, rise, mostResets) = (0.0, 0.0, 1 + (values.Length / ReadingsPerReset));
        var dayOfFall = default(LocalDate);
        for (var i = 0; i < values.Length; i++)
        {
            if (quality[i].HasFlag(Quality.Missing)) continue;
            if (values[i] < 0) return ColumnKind.Energy;
            readings++;
            sum += values[i];
            var step = last < 0 ? 0 : values[i] - values[last];
            if (step > 0)
            {
                rises++;
                rise += step;
            }
            if (step < 0)
            {
                falls++;
                if (values[i] <= values[last] * NearZero) fallsToZero++;
                var day = DayOf(atMs[i], clock);
                if (day != dayOfFall) (daysWithFalls, dayOfFall) = (daysWithFalls + 1, day);
                if (falls > mostResets && (fallsToZero < falls || falls > MostOnDays(daysWithFalls))) return ColumnKind.Energy;
            }
            last = i;
        }
        var level = rises == 0 ? 0 : sum / readings / (rise / rises);
        var fewest = hinted ? FewestHintedReadings : FewestHighReadings;
        var varied = hinted || !HasOneStep(values, quality);
        if (falls == 0 && varied && readings >= fewest && (hinted || LastsDays(atMs)) && rises >= Math.Min(FewestRises, fewest - 1) && level >= HighLevelInSteps) return ColumnKind.Counter;
        if (readings < FewestReadings || rises < FewestRises || level < LevelInSteps) return ColumnKind.Energy;
        if (!LastsDays(atMs)) return ColumnKind.Energy;
        var days = Period.DaysBetween(DayOf(atMs[0], clock), DayOf(atMs[atMs.Count - 1], clock)) + 1;
        // A daily counter stands still by night, or rises by steps that differ; what rises by one step in every row was made so.
        var daily = falls > 0 && (varied || rises * 10L < (readings - 1 - falls) * 9L) && fallsToZero == falls && falls <= MostOnDays(daysWithFalls) && falls * 2 >= days - 1 && rises >= days * RisesPerDay;
        return daily ? ColumnKind.DailyCounter : varied && falls <= mostResets ? ColumnKind.Counter : ColumnKind.Energy;
    }

    /// <summary>Whether most rises are one and the same step: a row of made numbers, or a counter so coarse that its shape says nothing.</summary>
    private static bool HasOneStep(ReadOnlySpan<double> values, ReadOnlySpan<Quality> quality)
    {
        var (last, common, votes) = (-1, 0.0, 0);
        var steps = new List<double>();
        for (var i = 0; i < values.Length; i++)
        {
            if (quality[i].HasFlag(Quality.Missing)) continue;
            if (last >= 0 && values[i] > values[last])
            {
                // The step that wins most votes is the one that more than half of them have, if there is such a step.
                var step = Math.Round(values[i] - values[last], 9);
                steps.Add(step);
                if (votes == 0) common = step;
                votes += step == common ? 1 : -1;
            }
            last = i;
        }
        return steps.Count(s => s == common) * 2 > steps.Count;
    }

    /// <summary>Whether the record goes on for days: energy may rise through one. Judged by its middle, so that one broken time decides nothing.</summary>
    private static bool LastsDays(StampColumn atMs) => atMs[atMs.Count - (atMs.Count / 3) - 1] - atMs[atMs.Count / 3] >= LongMiddleMs;

    /// <summary>Whether numbers under a counter's header go up and down as only energy does.</summary>
    internal static bool IsEnergy(ReadOnlySpan<double> values, ReadOnlySpan<Quality> quality)
    {
        var (readings, falls, last) = (0, 0, -1);
        for (var i = 0; i < values.Length; i++)
        {
            if (quality[i].HasFlag(Quality.Missing)) continue;
            readings++;
            if (last >= 0 && values[i] < values[last]) falls++;
            last = i;
        }
        return readings >= FewestHighReadings && falls > MostFalls * readings;
    }

    /// <summary>Once a day, and now and then once more when the device starts again.</summary>
    private static int MostOnDays(int daysWithFalls) => daysWithFalls + (daysWithFalls / 10);

    private static LocalDate DayOf(long ms, DateTimeZone clock) => Instant.FromUnixTimeMilliseconds(ms).InZone(clock).Date;
}
