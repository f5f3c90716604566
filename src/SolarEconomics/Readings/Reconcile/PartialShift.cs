using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>A clock that was ahead or behind on some days only: from one day on, up to one, or in between, as a clock that knows no summer time.</summary>
/// <param name="Lag">Steps by which the second is ahead.</param>
/// <param name="From">First such day; <see langword="null"/> where the record begins so.</param>
/// <param name="To">Last such day; <see langword="null"/> where the record ends so.</param>
internal sealed record PartialShift(long Lag, LocalDate? From, LocalDate? To)
{
    private const int FewestDays = 2;

    /// <summary>Below this share of a usual day's variance on every day the two fit as they stand. Common practice, no source.</summary>
    private const double Fits = 0.05;

    /// <summary>What is left must be less than this share of what is left by any one lag for the whole record.</summary>
    private const double MuchBetter = 0.25;

    /// <summary>The days and the lag that explain the difference best; <see langword="null"/> where nothing explains it much better than one clock for all days.</summary>
    /// <remarks>For each lag, the days on which it fits better than no lag are the run of days with the highest sum of gains (Kadane's algorithm). Days are those of UTC.</remarks>
    internal static PartialShift? Find(DenseSeries a, DenseSeries b, long mostLag)
    {
        var (standing, pairs, variance) = DenseSeries.DayErrors(a, b, 0);
        var days = pairs.Count(p => p > 0);
        if (days < 2 * FewestDays || variance <= 0 || standing.Max() <= Fits * variance / days) return null;
        var (whole, left) = (standing.Sum(), double.MaxValue);
        (long Lag, int From, int To) best = default;
        for (var lag = -mostLag; lag <= mostLag; lag++)
        {
            if (lag == 0) continue;
            var (shifted, pairsShifted, _) = DenseSeries.DayErrors(a, b, lag);
            if (pairsShifted.Sum() * 2 >= pairs.Sum()) whole = Math.Min(whole, shifted.Sum());
            var (from, to, gain) = BestRun(standing, shifted, pairs, pairsShifted);
            if (gain <= 0 || standing.Sum() - gain >= left) continue;
            (left, best) = (standing.Sum() - gain, (lag, from, to));
        }
        if (left > Fits * variance || left > MuchBetter * whole) return null;
        var inside = pairs[best.From..best.To].Count(p => p > 0);
        if (inside < FewestDays || days - inside < FewestDays) return null;
        return new PartialShift(best.Lag, pairs[..best.From].Any(p => p > 0) ? DayOf(a, best.From) : null, pairs[best.To..].Any(p => p > 0) ? DayOf(a, best.To - 1) : null);
    }

    /// <summary>The finding in words.</summary>
    internal string Words(string first, string second, long step)
    {
        var minutes = Duration.FromTicks(Lag * step).TotalMinutes;
        var when = (From, To) switch
        {
            ({ } from, { } to) => $"from {Iso(from)} to {Iso(to)}",
            ({ } from, null) => $"from {Iso(from)} on",
            (_, { } to) => $"up to {Iso(to)}",
            _ => "all the time",
        };
        return string.Create(CultureInfo.InvariantCulture, $"the clock of \"{(minutes > 0 ? second : first)}\" is {Math.Abs(minutes):0} minutes ahead of the other {when} (days in UTC), and right on the other days");
    }

    private static (int From, int To, double Gain) BestRun(double[] standing, double[] shifted, int[] pairs, int[] pairsShifted)
    {
        var (best, sum, begin) = ((From: 0, To: 0, Gain: 0.0), 0.0, 0);
        for (var day = 0; day < standing.Length; day++)
        {
            // A lag that leaves a day with few pairs would fit by having nothing to miss.
            if (pairsShifted[day] * 2 < pairs[day]) (sum, begin) = (0, day + 1);
            else sum += standing[day] - shifted[day];
            if (sum < 0) (sum, begin) = (0, day + 1);
            if (sum > best.Gain) best = (begin, day + 1, sum);
        }
        return best;
    }

    private static LocalDate DayOf(DenseSeries series, int day) => Instant.FromUnixTimeTicks(series.FirstTicks).InUtc().Date.PlusDays(day);

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
