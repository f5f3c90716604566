using System.Globalization;

namespace SolarEconomics;

/// <summary>Flags values that stand in a record but are hard to believe. They are counted as they stand.</summary>
internal static class Doubts
{
    /// <summary>An array may briefly make more than its rating, at cloud edges and in the cold.</summary>
    private const double AboveRating = 1.25;

    /// <summary>The same value of many digits for this long is a hung counter, not a steady load. Unit: hours.</summary>
    private const double StuckHours = 12;

    internal static void Flag(ColumnEnergy energy, FlowKind flow, Device? device, string name, int column, ProblemList problems)
    {
        if (flow == FlowKind.Generation && device is { RatedKwp: > 0 }) FlagAbove(energy, device.RatedKwp, name, column, problems);
        FlagStuck(energy, name, column, problems);
    }

    private static void FlagAbove(ColumnEnergy energy, double ratedKwp, string name, int column, ProblemList problems)
    {
        var (count, kwh, first) = (0, 0.0, -1);
        for (var i = 0; i < energy.Count; i++)
        {
            var most = ratedKwp * AboveRating * energy.Times.Hours(i, i);
            if (energy.Kwh[i] <= most) continue;
            energy.Quality[i] |= Quality.Doubtful;
            count++;
            kwh += energy.Kwh[i];
            if (first < 0) first = i;
        }
        if (count > 0)
            problems.Doubtful(0, column, name, string.Create(CultureInfo.InvariantCulture, $"{count} values under \"{name}\" above what {ratedKwp:0.###} kWp can make, with {kwh:0.###} kWh, the first at {energy.Times.Start(first)}"),
                "less; they are counted as they stand. Check the unit, and that the column is this array alone");
    }

    private static void FlagStuck(ColumnEnergy energy, string name, int column, ProblemList problems)
    {
        var from = 0;
        var kwh = energy.Values;
        for (var i = 1; i <= kwh.Length; i++)
        {
            if (i < kwh.Length && kwh[i] == kwh[from] && !energy.Quality[i].HasFlag(Quality.Missing)) continue;
            // Round numbers repeat by themselves; a value of three decimals and more does not, many times in a row.
            if (i - from >= 8 && energy.Kwh[from] != 0 && energy.Times.Hours(from, i - 1) is var hours and >= StuckHours && !energy.Quality[from].HasFlag(Quality.Missing) && HasThreeDecimals(energy.Kwh[from]))
            {
                for (var k = from; k < i; k++) energy.Quality[k] |= Quality.Doubtful;
                problems.Doubtful(0, column, name, string.Create(CultureInfo.InvariantCulture, $"the same {energy.Kwh[from]:R} kWh under \"{name}\" for {hours:0.#} hours from {energy.Times.Start(from)} on"),
                    "values that vary; they are counted as they stand. The device or its logger may have hung");
            }
            from = i;
        }
    }

    private static bool HasThreeDecimals(double kwh) => Math.Abs((kwh * 100) - Math.Round(kwh * 100)) > 1e-7;
}
