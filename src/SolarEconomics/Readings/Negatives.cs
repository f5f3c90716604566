using System.Globalization;
using System.Runtime.InteropServices;

namespace SolarEconomics;

/// <summary>Energy below zero where a flow has one direction: marked, and said with where it begins and how much it is.</summary>
internal static class Negatives
{
    internal static void Flag(ColumnEnergy energy, FlowKind flow, string name, int column, ProblemList problems)
    {
        var (count, first) = (0, -1);
        var sum = default(CompensatedSum);
        var kwh = energy.Values;
        for (var i = Next(kwh, 0); i >= 0; i = Next(kwh, i + 1))
        {
            energy.Quality[i] |= Quality.Negative;
            sum.Add(kwh[i]);
            if (count++ == 0) first = i;
        }
        if (count > 0 && flow != FlowKind.Unknown)
            problems.Doubtful(0, column, name, string.Create(CultureInfo.InvariantCulture, $"{count} values below zero under \"{name}\", {sum.Total:0.######} kWh together, the first at {energy.Times.Start(first)}"),
                "none, as this flow has one direction; they are counted as they stand. If the column holds both directions, read it as such");
    }

    /// <summary>Place of the next value below zero; −1 where there is none. As whole numbers such values are those below zero too, and many are compared at once.</summary>
    internal static int Next(ReadOnlySpan<double> kwh, int from)
    {
        const long MinusZero = long.MinValue;
        var at = MemoryMarshal.Cast<double, long>(kwh[from..]).IndexOfAnyInRange(MinusZero + 1, -1);
        return at < 0 ? at : from + at;
    }
}
