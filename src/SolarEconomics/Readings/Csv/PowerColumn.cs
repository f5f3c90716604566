using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Turns power into energy: the mean of each interval where rows are regular, straight lines between samples where they are not.</summary>
/// <remarks>Equation: regular rows W = P·h; samples W = (P₁ + P₂)/2 · (t₂ − t₁) where t₂ − t₁ is no longer than the longest bridge.</remarks>
internal static class PowerColumn
{
    private const double MsPerHour = 3_600_000;

    internal static ColumnEnergy ToEnergy(IntervalTable table, int column, long[] startMs, long[] endMs, Duration bridge, ValueColumn meaning, ProblemList problems)
    {
        var step = IntervalEnds.CommonStepMs(table.StartMs);
        var regular = step is { } ms && IntervalEnds.IsRegular(table.StartMs, ms);
        problems.Note(0, meaning.Index + 1, meaning.Name, $"power in {meaning.UnitName} under \"{meaning.Name}\"",
            regular
                ? "energy; rows are regular, so each number is taken as the mean of its interval"
                : string.Create(CultureInfo.InvariantCulture, $"energy; rows are irregular, so samples are joined by straight lines over at most {bridge.TotalMinutes:0.#} minutes"));
        return regular ? OfMeans(table, column, startMs, endMs) : OfSamples(table, column, (long)bridge.TotalMilliseconds);
    }

    private static ColumnEnergy OfMeans(IntervalTable table, int column, long[] startMs, long[] endMs)
    {
        var kwh = table.Values(column).ToArray();
        for (var i = 0; i < kwh.Length; i++) kwh[i] *= (endMs[i] - startMs[i]) / MsPerHour;
        return new ColumnEnergy(ChannelsOfTable.ToInstants(startMs), ChannelsOfTable.ToInstants(endMs), kwh, table.Quality(column).ToArray());
    }

    private static ColumnEnergy OfSamples(IntervalTable table, int column, long bridgeMs)
    {
        var power = table.Values(column);
        var quality = table.Quality(column);
        var at = table.StartMs;
        var (starts, ends, kwh, known) = (new List<Instant>(), new List<Instant>(), new List<double>(), new List<Quality>());
        var last = -1;
        for (var i = 0; i < at.Length; i++)
        {
            if (quality[i].HasFlag(SolarEconomics.Quality.Missing)) continue;
            if (last >= 0)
            {
                var bridged = at[i] - at[last] <= bridgeMs;
                starts.Add(Instant.FromUnixTimeMilliseconds(at[last]));
                ends.Add(Instant.FromUnixTimeMilliseconds(at[i]));
                kwh.Add(bridged ? (power[last] + power[i]) / 2 * ((at[i] - at[last]) / MsPerHour) : 0);
                known.Add(bridged ? (quality[last] | quality[i]) : SolarEconomics.Quality.Missing);
            }
            last = i;
        }
        return new ColumnEnergy([.. starts], [.. ends], [.. kwh], [.. known]);
    }
}
