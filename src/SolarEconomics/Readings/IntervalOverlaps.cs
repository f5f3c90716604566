using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Intervals that reach into the next one, cut where that begins: which they are, and how much of each lay in the next.</summary>
/// <param name="Cuts">Place of each, and the share of its length that was cut off, above 0 and at most 1.</param>
/// <param name="FirstStart">Start of the first. Unit: milliseconds since 1970.</param>
/// <param name="FirstEnd">End that the record states for it.</param>
internal sealed record IntervalOverlaps(IReadOnlyList<(int At, double Share)> Cuts, long FirstStart, long FirstEnd)
{
    /// <summary>Ends each interval where the next begins, at the latest.</summary>
    /// <param name="starts">Starts, rising. Unit: milliseconds since 1970.</param>
    /// <param name="ends">Ends as stated; changed in place.</param>
    internal static IntervalOverlaps Cut(ReadOnlySpan<long> starts, long[] ends)
    {
        var cuts = new List<(int, double)>();
        var firstEnd = 0L;
        for (var i = 0; i + 1 < ends.Length; i++)
        {
            if (ends[i] <= starts[i + 1]) continue;
            if (cuts.Count == 0) firstEnd = ends[i];
            cuts.Add((i, (ends[i] - starts[i + 1]) / (double)(ends[i] - starts[i])));
            ends[i] = starts[i + 1];
        }
        return new IntervalOverlaps(cuts, cuts.Count == 0 ? 0 : starts[cuts[0].Item1], firstEnd);
    }

    /// <summary>Marks each as doubtful.</summary>
    internal void Mark(Span<Quality> quality)
    {
        foreach (var (at, _) in Cuts) quality[at] |= Quality.Doubtful;
    }

    /// <summary>Takes from each its part that lies in the next: right for power that holds until another value is stated.</summary>
    internal void CutEnergy(double[] kwh)
    {
        foreach (var (at, share) in Cuts) kwh[at] *= 1 - share;
    }

    /// <summary>Says how many intervals overlap, where the first stands, and what was done with their energy.</summary>
    /// <param name="name">Name of the channel.</param>
    /// <param name="kwh">Its energy, by interval.</param>
    /// <param name="isCut">Whether energy was cut with its interval; else each amount is counted whole.</param>
    /// <param name="lineOf">Line of an interval.</param>
    /// <param name="problems">Where to say it.</param>
    internal void Report(string name, ReadOnlySpan<double> kwh, bool isCut, Func<int, int> lineOf, ProblemList problems)
    {
        if (Cuts.Count == 0) return;
        var twice = 0.0;
        foreach (var (at, share) in Cuts) twice += kwh[at] * share;
        var first = Cuts[0].At;
        var found = string.Create(CultureInfo.InvariantCulture, $"{Cuts.Count} of \"{name}\" reaching into the interval after them, the first from {IsoOf(FirstStart)} to {IsoOf(FirstEnd)}");
        problems.Doubtful(lineOf(first), 0, kwh[first].ToString("R", CultureInfo.InvariantCulture), found, isCut
            ? "intervals that follow each other; each was counted until the next begins"
            : string.Create(CultureInfo.InvariantCulture, $"intervals that follow each other; each amount was counted whole, so that up to {twice:0.######} kWh may be counted twice"));
    }

    private static string IsoOf(long ms) => NodaTime.Text.InstantPattern.General.Format(Instant.FromUnixTimeMilliseconds(ms));
}
