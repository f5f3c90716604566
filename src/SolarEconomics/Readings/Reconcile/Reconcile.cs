using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Holds records of the same energy against each other.</summary>
public static class Reconcile
{
    /// <summary>Totals within this share of each other agree: two meters of the common class 1 and their rounding.</summary>
    private const double Agreement = 0.02;

    /// <summary>Longest clock shift looked for: a zone's offset and a day of doubt about it.</summary>
    private const int LongestShiftHours = 26;

    private const double Alike = 0.95;

    /// <summary>Compares two channels that should show the same energy.</summary>
    /// <param name="first">One source.</param>
    /// <param name="second">The other source, in intervals of the same length.</param>
    /// <param name="others">Channels that one of them may have left out, for example single devices. Default: none.</param>
    /// <returns>Both totals over the time in which both were read, and the likely reasons of a difference.</returns>
    /// <exception cref="InvalidOperationException">Nothing was read in both at once.</exception>
    /// <remarks>The clock shift is the lag at which the two correlate best. A reason is named only where it explains the difference better than chance would.</remarks>
    public static SourceComparison Compare(Channel first, Channel second, params IReadOnlyList<Channel> others)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(others);
        var (a, b) = (ValuesOf(first), ValuesOf(second));
        var common = a.Keys.Where(b.ContainsKey).Order().ToArray();
        if (common.Length == 0) throw Throw.NothingInCommon(first.Name, second.Name);
        var (sumA, sumB) = (common.Sum(k => a[k]), common.Sum(k => b[k]));
        var step = first.UsualStep;
        var reasons = new List<Disagreement>();
        var correlation = Correlation(a, b, common, Duration.Zero);
        if (correlation < -Alike && sumA * sumB < 0) reasons.Add(new(DisagreementKind.Sign, $"\"{second.Name}\" has the opposite sign of \"{first.Name}\""));
        AddUnitFactor(first, second, sumA, sumB, reasons);
        AddClockShift(first, second, a, b, step, Math.Abs(correlation), reasons);
        if (reasons.Count == 0 && !Agree(sumA, sumB)) AddMissingDevice(first, second, a, b, common, others, reasons);
        return new SourceComparison(first.Name, second.Name, sumA, sumB, common.Length * step.TotalHours, reasons);
    }

    private static void AddUnitFactor(Channel first, Channel second, double sumA, double sumB, List<Disagreement> reasons)
    {
        var factor = Math.Abs(sumB == 0 ? 0 : sumA / sumB);
        foreach (var unit in new[] { 1000.0, 0.001 })
            if (Math.Abs((factor / unit) - 1) <= Agreement)
                reasons.Add(new(DisagreementKind.UnitFactor, $"\"{(unit > 1 ? first : second).Name}\" is a thousand times the other, as Wh read as kWh would be"));
    }

    private static void AddClockShift(Channel first, Channel second, Dictionary<Instant, double> a, Dictionary<Instant, double> b, Duration step, double unshifted, List<Disagreement> reasons)
    {
        var best = unshifted;
        var bestLag = Duration.Zero;
        var most = (int)(Duration.FromHours(LongestShiftHours) / step);
        for (var lag = -most; lag <= most; lag++)
        {
            if (lag == 0) continue;
            var shift = step * (long)lag;
            var keys = a.Keys.Where(k => b.ContainsKey(k + shift)).ToArray();
            if (keys.Length * 2 < Math.Min(a.Count, b.Count)) continue;
            var correlation = Math.Abs(Correlation(a, b, keys, shift));
            if (correlation <= best) continue;
            (best, bestLag) = (correlation, shift);
        }
        // A day is like the next, so the shifted match must be close and clearly better than the one as it stands.
        if (bestLag == Duration.Zero || best < Alike || (1 - unshifted) < 2 * (1 - best)) return;
        var minutes = bestLag.TotalMinutes;
        reasons.Add(new(DisagreementKind.ClockShift, string.Create(CultureInfo.InvariantCulture,
            $"the clock of \"{(minutes > 0 ? second : first).Name}\" is {Math.Abs(minutes):0} minutes ahead of the other")));
    }

    private static void AddMissingDevice(Channel first, Channel second, Dictionary<Instant, double> a, Dictionary<Instant, double> b, Instant[] common, IReadOnlyList<Channel> others, List<Disagreement> reasons)
    {
        foreach (var other in others)
        {
            var c = ValuesOf(other);
            var keys = common.Where(c.ContainsKey).ToArray();
            if (keys.Length == 0) continue;
            var (sumA, sumB, sumC) = (keys.Sum(k => a[k]), keys.Sum(k => b[k]), keys.Sum(k => c[k]));
            foreach (var (without, sign) in new[] { (second, 1), (first, -1) })
            {
                var difference = keys.ToDictionary(k => k, k => sign * (a[k] - b[k]));
                if (!Agree(sign * (sumA - sumB), sumC) || Correlation(difference, c, keys, Duration.Zero) < Alike) continue;
                reasons.Add(new(DisagreementKind.MissingDevice, $"\"{without.Name}\" lacks what \"{other.Name}\" counts"));
            }
        }
    }

    private static bool Agree(double a, double b) => Math.Abs(a - b) <= Agreement * Math.Max(Math.Abs(a), Math.Abs(b));

    private static Dictionary<Instant, double> ValuesOf(Channel channel)
    {
        var values = new Dictionary<Instant, double>(channel.Count);
        for (var i = 0; i < channel.Count; i++)
            if (!channel.Quality[i].HasFlag(Quality.Missing)) values[channel.Starts[i]] = channel.Kwh[i];
        return values;
    }

    /// <summary>Correlation of a at k with b at k + shift; 0 where one of them does not vary.</summary>
    private static double Correlation(Dictionary<Instant, double> a, Dictionary<Instant, double> b, Instant[] keys, Duration shift)
    {
        if (keys.Length < 2) return 0;
        var (meanA, meanB) = (keys.Average(k => a[k]), keys.Average(k => b[k + shift]));
        var (ab, aa, bb) = (0.0, 0.0, 0.0);
        foreach (var key in keys)
        {
            var (x, y) = (a[key] - meanA, b[key + shift] - meanB);
            ab += x * y;
            aa += x * x;
            bb += y * y;
        }
        return aa == 0 || bb == 0 ? 0 : ab / Math.Sqrt(aa * bb);
    }
}
