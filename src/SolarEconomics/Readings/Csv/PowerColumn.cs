using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Turns power into energy: the mean of each interval where rows are regular, straight lines between samples where they are not.</summary>
/// <remarks>Equation: regular rows W = P·h; samples W = (P₁ + P₂)/2 · (t₂ − t₁) where t₂ − t₁ is no longer than the longest bridge.</remarks>
internal static class PowerColumn
{
    private const double MsPerHour = 3_600_000;
    private const double TicksPerHour = NodaConstants.TicksPerHour;

    internal static ColumnEnergy ToEnergy(IntervalTable table, int column, TimeAxis times, Duration bridge, ValueColumn meaning, ProblemList problems)
    {
        var step = IntervalEnds.CommonStepMs(table.Stamps);
        var regular = step is { } ms && IntervalEnds.IsRegular(table.StartMs, ms);
        problems.Note(0, meaning.Index + 1, meaning.Name, $"power in {meaning.UnitName} under \"{meaning.Name}\"",
            regular
                ? "energy; rows are regular, so each number is taken as the mean of its interval"
                : string.Create(CultureInfo.InvariantCulture, $"energy; rows are irregular, so samples are joined by straight lines over at most {bridge.TotalMinutes:0.#} minutes"));
        return regular ? OfMeans(table, column, times) : OfSamples(table, column, (long)bridge.TotalMilliseconds);
    }

    private static ColumnEnergy OfMeans(IntervalTable table, int column, TimeAxis times)
    {
        var kwh = table.Values(column).ToArray();
        for (var i = 0; i < kwh.Length; i++) kwh[i] *= (times.EndTicks(i) - times.StartTicks(i)) / TicksPerHour;
        return new ColumnEnergy(times, kwh, table.Quality(column).ToArray());
    }

    private static ColumnEnergy OfSamples(IntervalTable table, int column, long bridgeMs)
    {
        var power = table.Values(column);
        var quality = table.Quality(column);
        var at = table.StartMs;
        var (starts, ends, kwh, known) = (new List<long>(), new List<long>(), new List<double>(), new List<Quality>());
        var last = -1;
        for (var i = 0; i < at.Length; i++)
        {
            if (quality[i].HasFlag(SolarEconomics.Quality.Missing)) continue;
            if (last >= 0)
            {
                var bridged = at[i] - at[last] <= bridgeMs;
                starts.Add(at[last]);
                ends.Add(at[i]);
                kwh.Add(bridged ? (power[last] + power[i]) / 2 * ((at[i] - at[last]) / MsPerHour) : 0);
                known.Add(bridged ? (quality[last] | quality[i]) : SolarEconomics.Quality.Missing);
            }
            last = i;
        }
        return new ColumnEnergy(TimeAxis.OfMilliseconds([.. starts], [.. ends]), [.. kwh], [.. known]);
    }
}
