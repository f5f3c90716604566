using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Holds records of the same energy against each other.</summary>
public static partial class Reconcile
{
    /// <summary>Totals within this share of each other agree: two meters of the common class 1 and their rounding.</summary>
    private const double Agreement = 0.02;

    /// <summary>Longest clock shift looked for: a zone's offset and a day of doubt about it.</summary>
    private const int LongestShiftHours = 26;

    private const double Alike = 0.95;

    /// <summary>Compares two channels that should show the same energy. Where one has longer intervals, or begins them at other times, the other is brought to them.</summary>
    /// <param name="first">One source.</param>
    /// <param name="second">The other source.</param>
    /// <param name="others">Channels that one of them may have left out, for example single devices. Default: none.</param>
    /// <returns>Both totals over the time in which both were read, and the likely reasons of a difference.</returns>
    /// <exception cref="InvalidOperationException">Nothing was read in both at once.</exception>
    /// <remarks>The clock shift is the lag at which the two correlate best; one that covers only some days is named with them. A reason is named only where it explains the difference better than chance would.</remarks>
    public static SourceComparison Compare(Channel first, Channel second, params IReadOnlyList<Channel> others)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(others);
        var (a, b) = OnOneStep(first, second);
        var common = DenseSeries.Compare(a, b, lag: 0);
        if (common.Count == 0) throw Throw.NothingInCommon(first.Name, second.Name);
        var reasons = new List<Disagreement>();
        if (common.Correlation < -Alike && common.SumA * common.SumB < 0)
            reasons.Add(new(DisagreementKind.Sign, $"\"{second.Name}\" has the opposite sign of \"{first.Name}\""));
        AddUnitFactor(first.Name, second.Name, common.SumA, common.SumB, reasons);
        if (Agree(common.SumA, common.SumB) && PartialShift.Find(a, b, MostLag(a)) is { } partial)
            reasons.Add(new(DisagreementKind.ClockShift, partial.Words(first.Name, second.Name, a.Step)));
        else
            AddClockShift(first, second, a, b, Math.Abs(common.Correlation), reasons);
        if (reasons.Count == 0 && !Agree(common.SumA, common.SumB)) AddMissingDevice(first, second, a, b, others, reasons);
        return new SourceComparison(first.Name, second.Name, common.SumA, common.SumB, common.Count * Duration.FromTicks(a.Step).TotalHours, reasons);
    }

    private static (DenseSeries A, DenseSeries B) OnOneStep(Channel first, Channel second)
    {
        if (first.UsualStep == second.UsualStep)
        {
            var (a, b) = (DenseSeries.Of(first), DenseSeries.Of(second));
            return (a, DenseSeries.Meet(a, b) ? b : DenseSeries.Of(second, a));
        }
        if (first.UsualStep > second.UsualStep)
        {
            var coarse = DenseSeries.Of(first);
            return (coarse, DenseSeries.Of(second, coarse));
        }
        var other = DenseSeries.Of(second);
        return (DenseSeries.Of(first, other), other);
    }

    private static void AddUnitFactor(string first, string second, double sumA, double sumB, List<Disagreement> reasons)
    {
        var factor = Math.Abs(sumB == 0 ? 0 : sumA / sumB);
        foreach (var unit in new[] { 1000.0, 0.001 })
            if (Math.Abs((factor / unit) - 1) <= Agreement)
                reasons.Add(new(DisagreementKind.UnitFactor, $"\"{(unit > 1 ? first : second)}\" is a thousand times the other, as Wh read as kWh would be"));
    }

    private static void AddClockShift(Channel first, Channel second, DenseSeries a, DenseSeries b, double unshifted, List<Disagreement> reasons)
    {
        var best = unshifted;
        var bestLag = 0L;
        var most = MostLag(a);
        for (var lag = -most; lag <= most; lag++)
        {
            if (lag == 0) continue;
            var overlap = DenseSeries.Compare(a, b, lag);
            if (overlap.Count * 2 < Math.Min(a.Known, b.Known)) continue;
            var correlation = Math.Abs(overlap.Correlation);
            if (correlation > best) (best, bestLag) = (correlation, lag);
        }
        // A day is like the next, so the shifted match must be close and clearly better than the one as it stands.
        if (bestLag == 0 || best < Alike || (1 - unshifted) < 2 * (1 - best)) return;
        var minutes = Duration.FromTicks(bestLag * a.Step).TotalMinutes;
        reasons.Add(new(DisagreementKind.ClockShift, string.Create(CultureInfo.InvariantCulture,
            $"the clock of \"{(minutes > 0 ? second : first).Name}\" is {Math.Abs(minutes):0} minutes ahead of the other")));
    }

    private static long MostLag(DenseSeries series) => Duration.FromHours(LongestShiftHours).BclCompatibleTicks / series.Step;

    private static void AddMissingDevice(Channel first, Channel second, DenseSeries a, DenseSeries b, IReadOnlyList<Channel> others, List<Disagreement> reasons)
    {
        var difference = DenseSeries.Difference(a, b);
        foreach (var other in others)
        {
            var overlap = DenseSeries.Compare(difference, DenseSeries.Of(other, difference), lag: 0);
            foreach (var (without, sign) in new[] { (second, 1), (first, -1) })
            {
                if (overlap.Count == 0 || !Agree(sign * overlap.SumA, overlap.SumB) || sign * overlap.Correlation < Alike) continue;
                reasons.Add(new(DisagreementKind.MissingDevice, $"\"{without.Name}\" lacks what \"{other.Name}\" counts"));
            }
        }
    }

    private static bool Agree(double a, double b) => Math.Abs(a - b) <= Agreement * Math.Max(Math.Abs(a), Math.Abs(b));
}
