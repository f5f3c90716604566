namespace SolarEconomics.Solvers;

/// <summary>A first answer about controls, from some weeks of the run: no bound, but near it in a fraction of the time.</summary>
/// <remarks>Each week begins at the charge that the control had and ends with no less, so that the weeks say what was to be had inside them; the mean gap is scaled to the whole.</remarks>
internal static class JudgePreview
{
    private const int Weeks = 8;

    /// <summary>Fewer intervals are solved before a first answer were read.</summary>
    private const long FewIntervals = 4000;

    /// <summary>Whether the full answer takes longer than a reader waits.</summary>
    internal static bool TakesLong(Timeline time, int controls) => (long)time.Count * controls > FewIntervals;

    /// <summary>Whether weeks are a small part of it.</summary>
    internal static bool IsWorthwhile(Timeline time) => Length(time) * Weeks * 3 < time.Count;

    internal static JudgedControls Of(IReadOnlyList<EnergyFlows> runs, Func<EnergyFlows, double?> costAtRest, BestPossibleOptions options, CancellationToken stop)
    {
        var judged = new List<JudgedControl>();
        var off = 0.0;
        foreach (var run in runs)
        {
            var (best, error) = Least(run, options, stop);
            judged.Add(new JudgedControl(run, best, costAtRest(run)));
            off = Math.Max(off, error);
        }
        return new JudgedControls(judged) { IsPreview = true, PreviewOff = off };
    }

    private static (BestPossibleCost Best, double Off) Least(EnergyFlows run, BestPossibleOptions options, CancellationToken stop)
    {
        var limits = new RunLimits(run, options);
        var (count, length) = (run.Time.Count, Length(run.Time));
        var gaps = new double[Weeks];
        for (var week = 0; week < Weeks; week++)
        {
            var from = (int)((((2L * week) + 1) * count / (2 * Weeks)) - (length / 2));
            using var program = new DispatchProgram(limits, from, from + length, keepsCharge: true);
            gaps[week] = limits.Costs.Of(run, from, from + length) - program.Least(stop);
        }
        var (mean, scale) = (gaps.Average(), (double)count / length);
        var spread = Math.Sqrt(gaps.Sum(g => (g - mean) * (g - mean)) / (Weeks - 1));
        var cost = limits.Costs.Of(run);
        return (new BestPossibleCost(run.ControlName, cost, cost - (mean * scale), Weeks), spread / Math.Sqrt(Weeks) * scale);
    }

    /// <summary>Intervals of about a week.</summary>
    private static int Length(Timeline time)
    {
        var hours = 0.0;
        foreach (var h in time.Hours) hours += h;
        return Math.Max(1, (int)Math.Round(7 * 24 * time.Count / hours));
    }
}
