using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Finds the days that fell short, groups them into events and says what each looks like.</summary>
public static class Shortfalls
{
    private const double NextToNothing = 0.03;
    /// <summary>Air from which a cabinet's fan is usually set to work: 28 °C. A setting, common practice, no source.</summary>
    public const double HotAirC = 28;


    /// <summary>Events in a row of days.</summary>
    /// <param name="days">The days in order, without gaps between dates; days without a reading are let pass inside an event.</param>
    /// <param name="strings">Strings of the plant that could each drop out. Range: 1 to 100.</param>
    /// <param name="shortBelow">A day is short below this ratio to its usual level. Range: 0.3 to 0.98. Default: 0.85; a model from hourly weather scatters by 5 to 10 % a day.</param>
    /// <param name="fewestDays">Shorter events are left out as weather, except days of next to nothing. Range: 1 to 30. Default: 3.</param>
    /// <remarks>Ratios are first divided by their own median, so a model that is 10 % too high finds no failure on every day.</remarks>
    /// <exception cref="ArgumentException">The days are not in order.</exception>
    public static IReadOnlyList<Shortfall> Find(IReadOnlyList<DayOfOutput> days, int strings = 1, double shortBelow = 0.85, int fewestDays = 3)
    {
        ArgumentNullException.ThrowIfNull(days);
        Require.Within(strings, 1, 100, "strings");
        return Find(days, _ => strings, shortBelow, fewestDays);
    }

    /// <summary>The same where strings came and went.</summary>
    internal static IReadOnlyList<Shortfall> Find(IReadOnlyList<DayOfOutput> days, Func<LocalDate, int> stringsOn, double shortBelow, int fewestDays)
    {
        Require.Within(shortBelow, 0.3, 0.98, "a ratio to the usual level");
        Require.Within(fewestDays, 1, 30, "days");
        for (var i = 1; i < days.Count; i++)
            if (days[i].Date != days[i - 1].Date.PlusDays(1)) throw Throw.DaysOutOfOrder(days[i - 1].Date, days[i].Date);
        double[] usual = [.. days.Where(d => !d.Censored).Select(d => d.Ratio).OfType<double>().Where(r => r > NextToNothing)];
        if (usual.Length == 0) return [];
        var level = Statistics.Median(usual);
        var scatter = 1.4826 * Statistics.Median([.. usual.Select(r => Math.Abs((r / level) - 1))]);
        var events = new List<Shortfall>();
        for (var i = 0; i < days.Count;)
        {
            var end = EndOfRun(days, i, level * shortBelow);
            if (end > i)
            {
                if (Describe(days, i, end, level, scatter, stringsOn(days[i].Date), fewestDays) is { } found) events.Add(found);
                i = end;
            }
            else
            {
                i++;
            }
        }
        return events;
    }

    /// <summary>End (excluded) of the short days from here; days that cannot tell are let pass inside.</summary>
    private static int EndOfRun(IReadOnlyList<DayOfOutput> days, int from, double below)
    {
        if (!(days[from].Ratio < below)) return from;
        var end = from + 1;
        for (var i = end; i < days.Count; i++)
        {
            if (days[i].Censored != days[from].Censored || days[i].Ratio >= below) break;
            if (days[i].Ratio is not null) end = i + 1;
        }
        return end;
    }

    private static Shortfall? Describe(IReadOnlyList<DayOfOutput> days, int from, int end, double level, double scatter, int strings, int fewestDays)
    {
        var run = days.Skip(from).Take(end - from).Where(d => d.Ratio is not null).ToArray();
        double[] ratios = [.. run.Select(d => d.Ratio!.Value / level)];
        var lost = run.Sum(d => (d.ExpectedKwh * level) - d.MadeKwh!.Value);
        var span = new DateSpan(days[from].Date, days[end - 1].Date.PlusDays(1));
        var mean = ratios.Average();
        if (run[0].Censored) return new Shortfall(ShortfallKind.Curtailment, span, lost, "the record marks these days as held back");
        if (mean <= NextToNothing) return new Shortfall(ShortfallKind.Outage, span, lost, "next to nothing was made");
        if (run.Length < fewestDays) return null;
        if (run.All(d => d.HottestAirC >= HotAirC) && Cool(days, from, end, level))
            return new Shortfall(ShortfallKind.HeatDerating, span, lost, Say($"short only on days above {HotAirC} °C"));
        var slope = run.Length >= 6 ? LineFit.Of([.. ratios.Select((_, i) => (double)i)], ratios) : null;
        var back = end < days.Count && days[end].Ratio / level > 0.95;
        if (slope is not null && slope.SlopeInterval().High < 0 && back)
            return new Shortfall(ShortfallKind.Dirt, span, lost, Say($"{-slope.Slope * 100:0.0} % more missing each day, all back on {days[end].Date:uuuu-MM-dd}"));
        var spread = ratios.Length > 1 ? Statistics.StandardDeviation(ratios) : 0;
        var missing = Math.Round((1 - mean) * strings);
        // A missing string scatters as usual days do, in proportion to what is left.
        if (strings > 1 && spread < Math.Max(0.06, 2 * scatter * mean) && missing >= 1 && missing < strings && Math.Abs(1 - (missing / strings) - mean) < 0.05)
            return new Shortfall(ShortfallKind.PartialString, span, lost, Say($"a steady {mean * 100:0} % of the usual level, as with {missing} of {strings} strings missing"));
        return new Shortfall(ShortfallKind.Unexplained, span, lost, Say($"{mean * 100:0} % of the usual level"));
    }

    /// <summary>Whether the days just before and after were cooler and not short.</summary>
    private static bool Cool(IReadOnlyList<DayOfOutput> days, int from, int end, double level)
    {
        bool Fine(int i) => i < 0 || i >= days.Count || (days[i].HottestAirC < HotAirC && !(days[i].Ratio / level < 0.9));
        return Fine(from - 1) && Fine(end);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
