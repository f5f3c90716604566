using NodaTime;

namespace SolarEconomics;

public sealed partial class Channel
{
    /// <summary>Fills short gaps on the straight line between the readings on both sides.</summary>
    /// <param name="longest">Longest gap that is filled. Unit: intervals. Range: 1 and above. Default: 4.</param>
    /// <exception cref="InvalidOperationException">The intervals have no usual length.</exception>
    public GapFilling FillGapsByNeighbours(int longest = 4)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(longest, 1);
        return GapFiller.Fill(this, FormattableString.Invariant($"by straight lines over at most {longest} intervals"), (laid, from, to) =>
        {
            if (from == 0 || to == laid.Count || to - from > longest) return null;
            var (before, after) = (laid.Kwh[from - 1], laid.Kwh[to]);
            return [.. Enumerable.Range(1, to - from).Select(k => before + ((after - before) * k / (to - from + 1)))];
        });
    }

    /// <summary>Fills gaps by the mean of the same weekday and time of day in the weeks around, where any of them was read.</summary>
    /// <param name="zone">Clock by which weekday and time are told.</param>
    /// <param name="weeks">How many weeks before and after are looked at. Range: 1 to 52. Default: 4.</param>
    /// <exception cref="InvalidOperationException">The intervals have no usual length.</exception>
    public GapFilling FillGapsBySameWeekdayAndTime(DateTimeZone zone, int weeks = 4)
    {
        ArgumentNullException.ThrowIfNull(zone);
        ArgumentOutOfRangeException.ThrowIfLessThan(weeks, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(weeks, 52);
        var known = new Dictionary<LocalDateTime, double>();
        for (var i = 0; i < Count; i++)
            if (!_quality[i].HasFlag(SolarEconomics.Quality.Missing)) known[_times.Start(i).InZone(zone).LocalDateTime] = _kwh[i];
        return GapFiller.Fill(this, FormattableString.Invariant($"by the same weekday and time of up to {weeks} weeks before and after"), (laid, from, to) =>
            [.. Enumerable.Range(from, to - from).Select(i => MeanOfWeeks(known, laid.Starts[i].InZone(zone).LocalDateTime, weeks))]);
    }

    /// <summary>Fills gaps by another channel, scaled so that both have the same total where both were read: a sister array, a neighbour's meter.</summary>
    /// <param name="other">A channel on the same intervals.</param>
    /// <exception cref="InvalidOperationException">The intervals have no usual length, or nothing was read in both.</exception>
    public GapFilling FillGapsScaledFrom(Channel other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var theirs = new Dictionary<(Instant, Instant), double>();
        for (var i = 0; i < other.Count; i++)
            if (!other._quality[i].HasFlag(SolarEconomics.Quality.Missing)) theirs[(other._times.Start(i), other._times.End(i))] = other._kwh[i];
        var (own, common) = (default(CompensatedSum), default(CompensatedSum));
        for (var i = 0; i < Count; i++)
        {
            if (_quality[i].HasFlag(SolarEconomics.Quality.Missing) || !theirs.TryGetValue((_times.Start(i), _times.End(i)), out var kwh)) continue;
            own.Add(_kwh[i]);
            common.Add(kwh);
        }
        if (common.Total == 0) throw Throw.NothingInCommon(Name, other.Name);
        var factor = own.Total / common.Total;
        return GapFiller.Fill(this, FormattableString.Invariant($"by \"{other.Name}\" times {factor:0.####}"), (laid, from, to) =>
            [.. Enumerable.Range(from, to - from).Select(i => theirs.TryGetValue((laid.Starts[i], laid.Ends[i]), out var kwh) ? kwh * factor : (double?)null)]);
    }

    private static double? MeanOfWeeks(Dictionary<LocalDateTime, double> known, LocalDateTime at, int weeks)
    {
        var (sum, count) = (0.0, 0);
        for (var week = -weeks; week <= weeks; week++)
        {
            if (week == 0 || !known.TryGetValue(at.PlusWeeks(week), out var kwh)) continue;
            sum += kwh;
            count++;
        }
        return count == 0 ? null : sum / count;
    }
}
