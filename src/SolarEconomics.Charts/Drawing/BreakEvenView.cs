namespace SolarEconomics.Charts;

/// <summary>The parts of a break-even line that a picture shows: runs of steps with one value each, and the side of them that gains.</summary>
/// <remarks>A step with several values breaks a run: which of them belong together is not known, so they stand as points without a line.</remarks>
internal sealed class BreakEvenView
{
    private readonly BreakEvenLine _line;
    private readonly List<Step> _steps = [];

    internal BreakEvenView(BreakEvenLine line)
    {
        _line = line;
        var byStep = line.Points.Select((p, i) => (p.Across, p.Solved, GainsAbove: i < line.GainsAbove.Count && line.GainsAbove[i]))
            .GroupBy(p => p.Across).ToDictionary(g => g.Key, g => g.ToList());
        // Where all of a step gains, all of it lies above a line at the lower edge.
        var whole = line.AlwaysAbove.Select(at => (at, Gains: true)).Concat(line.AlwaysBelow.Select(at => (at, Gains: false))).ToDictionary(w => w.at, w => w.Gains);
        foreach (var at in byStep.Keys.Concat(whole.Keys).Order())
        {
            if (byStep.TryGetValue(at, out var points) && points.Count == 1) _steps.Add(new Step(at, points[0].Solved, points[0].GainsAbove, IsPoint: true));
            else if (whole.TryGetValue(at, out var gains)) _steps.Add(new Step(at, gains ? line.Solved.Low : line.Solved.High, GainsAbove: true, IsPoint: false));
            else _steps.Add(new Step(at, double.NaN, GainsAbove: true, IsPoint: false));
        }

        AlignEdges();
    }

    /// <summary>Whether it is known which side of each point gains.</summary>
    internal bool KnowsSides => _line.GainsAbove.Count == _line.Points.Count;

    /// <summary>The line, run by run: steps beside each other with one value each.</summary>
    internal IEnumerable<IReadOnlyList<(double Across, double Solved)>> Runs() =>
        Split((a, b) => a.IsPoint && b.IsPoint && a.GainsAbove == b.GainsAbove, s => s.IsPoint).Select(run => run.Select(s => (s.At, s.Edge)).ToList());

    /// <summary>What gains, as closed outlines: along the line and back along the edge of the picture.</summary>
    internal IEnumerable<IReadOnlyList<(double Across, double Solved)>> Gaining() =>
        Split((a, b) => a.GainsAbove == b.GainsAbove, s => !double.IsNaN(s.Edge)).Where(run => run.Count > 1).Select(run =>
        {
            var edge = run[0].GainsAbove ? _line.Solved.High : _line.Solved.Low;
            return (IReadOnlyList<(double, double)>)[.. run.Select(s => (s.At, s.Edge)), (run[^1].At, edge), (run[0].At, edge), (run[0].At, run[0].Edge)];
        });

    /// <summary>A place for a word on the side that gains, or loses: high enough a stretch, and away from <paramref name="away"/>; none where there is too little room.</summary>
    internal (double Across, double Solved)? Place(bool gains, (double Across, double Solved)? away)
    {
        var (best, room) = (((double, double)?)null, 0.15);
        foreach (var step in Between())
        {
            var (low, high) = step.GainsAbove == gains ? (step.Edge, _line.Solved.High) : (_line.Solved.Low, step.Edge);
            var height = (high - low) / (_line.Solved.High - _line.Solved.Low);
            foreach (var at in new[] { 0.5, 0.35, 0.65 }.Select(share => low + (share * (high - low))))
            {
                var here = Math.Min(height, away is { } a ? 2 * Distance(step.At, at, a) : 1);
                if (here > room) (best, room) = ((step.At, at), here);
            }
        }

        return best;
    }

    private double Distance(double across, double solved, (double Across, double Solved) from) => Math.Max(
        Math.Abs(across - from.Across) / (_line.Across.High - _line.Across.Low), Math.Abs(solved - from.Solved) / (_line.Solved.High - _line.Solved.Low));

    /// <summary>Half way between two steps that belong together: a word there stands on one side of the line only.</summary>
    private IEnumerable<Step> Between()
    {
        var (from, to) = (Share(0.1), Share(0.9));
        return _steps.Zip(_steps.Skip(1))
            .Where(pair => !double.IsNaN(pair.First.Edge) && !double.IsNaN(pair.Second.Edge) && pair.First.GainsAbove == pair.Second.GainsAbove)
            .Select(pair => pair.First with { At = (pair.First.At + pair.Second.At) / 2, Edge = (pair.First.Edge + pair.Second.Edge) / 2 })
            .Where(step => step.At >= from && step.At <= to);
    }

    private double Share(double share) => _line.Across.Low + (share * (_line.Across.High - _line.Across.Low));

    /// <summary>A step that gains throughout stands below a line of higher gains and above one of lower gains: it takes the side of its neighbour.</summary>
    private void AlignEdges()
    {
        if (_steps.Find(s => s.IsPoint) is not { IsPoint: true } first || first.GainsAbove) return;
        for (var i = 0; i < _steps.Count; i++)
        {
            var step = _steps[i];
            if (step.IsPoint || double.IsNaN(step.Edge)) continue;
            _steps[i] = step with { Edge = step.Edge == _line.Solved.Low ? _line.Solved.High : _line.Solved.Low, GainsAbove = false };
        }
    }

    private IEnumerable<List<Step>> Split(Func<Step, Step, bool> belong, Func<Step, bool> counts)
    {
        var run = new List<Step>();
        foreach (var step in _steps)
        {
            if (run.Count > 0 && (!counts(step) || !belong(run[^1], step)))
            {
                yield return run;
                run = [];
            }

            if (counts(step)) run.Add(step);
        }

        if (run.Count > 0) yield return run;
    }

    /// <summary>One step across, and where on it the side changes.</summary>
    private readonly record struct Step(double At, double Edge, bool GainsAbove, bool IsPoint);
}
