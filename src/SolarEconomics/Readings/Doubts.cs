using System.Globalization;

namespace SolarEconomics;

/// <summary>Flags values that stand in a record but are hard to believe. They are counted as they stand.</summary>
internal static class Doubts
{
    /// <summary>An array may briefly make more than its rating, at cloud edges and in the cold.</summary>
    private const double AboveRating = 1.25;

    /// <summary>The same value of many digits for this long is a hung counter, not a steady load. Unit: hours.</summary>
    private const double StuckHours = 12;
    private const int FewestStuck = 8;

    /// <summary>What a meter's own format states: nothing of an array is known, but values may hang, or go below zero.</summary>
    internal static void FlagMetered(ColumnEnergy energy, FlowKind flow, string name, ProblemList problems)
    {
        Negatives.Flag(energy, flow, name, 0, problems);
        FlagStuck(energy, name, 0, problems);
    }

    internal static void Flag(ColumnEnergy energy, FlowKind flow, Device? device, string name, int column, ProblemList problems)
    {
        if (flow == FlowKind.Generation && device is { RatedKwp: > 0 }) FlagAbove(energy, device.RatedKwp, name, column, problems);
        FlagStuck(energy, name, column, problems);
    }

    private static void FlagAbove(ColumnEnergy energy, double ratedKwp, string name, int column, ProblemList problems)
    {
        var (count, kwh, first) = (0, 0.0, -1);
        var mostPerHour = ratedKwp * AboveRating;
        double? oneMost = energy.Times.StepTicks is not null ? mostPerHour * energy.Times.Hours(0, 0) : null;
        for (var i = 0; i < energy.Count; i++)
        {
            if (energy.Kwh[i] <= (oneMost ?? (mostPerHour * energy.Times.Hours(i, i)))) continue;
            energy.Quality[i] |= Quality.Doubtful;
            count++;
            kwh += energy.Kwh[i];
            if (first < 0) first = i;
        }
        if (count > 0)
            problems.Doubtful(0, column, name, string.Create(CultureInfo.InvariantCulture, $"{count} values under \"{name}\" above what {ratedKwp:0.###} kWp can make, with {kwh:0.###} kWh, the first at {energy.Times.Start(first)}"),
                "less; they are counted as they stand. Check the unit, and that the column is this array alone");
    }

    /// <remarks>A run of eight values holds a pair of neighbours at every seventh place: only those pairs are compared.</remarks>
    private static void FlagStuck(ColumnEnergy energy, string name, int column, ProblemList problems)
    {
        var kwh = energy.Values;
        for (var i = FewestStuck - 1; i < kwh.Length; i += FewestStuck - 1)
        {
            // Round numbers repeat by themselves; a value of three decimals and more does not, many times in a row.
            if (kwh[i] != kwh[i - 1] || kwh[i] == 0 || !HasThreeDecimals(kwh[i])) continue;
            var (from, to) = (i, i);
            while (from > 0 && Same(energy, from - 1, i)) from--;
            while (to < kwh.Length && Same(energy, to, i)) to++;
            if (to - from >= FewestStuck && energy.Times.Hours(from, to - 1) is var hours and >= StuckHours)
            {
                for (var k = from; k < to; k++) energy.Quality[k] |= Quality.Doubtful;
                problems.Doubtful(0, column, name, string.Create(CultureInfo.InvariantCulture, $"the same {kwh[from]:R} kWh under \"{name}\" for {hours:0.#} hours from {energy.Times.Start(from)} on"),
                    "values that vary; they are counted as they stand. The device or its logger may have hung");
            }
            // The next place that is looked at lies behind the run.
            while (i + FewestStuck - 1 < to) i += FewestStuck - 1;
        }
    }

    private static bool Same(ColumnEnergy energy, int index, int model) => energy.Kwh[index] == energy.Kwh[model] && (energy.Quality[index] & Quality.Missing) == Quality.Good;

    private static bool HasThreeDecimals(double kwh) => Math.Abs((kwh * 100) - Math.Round(kwh * 100)) > 1e-7;
}
