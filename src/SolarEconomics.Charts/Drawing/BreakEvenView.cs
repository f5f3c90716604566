namespace SolarEconomics.Charts;

/// <summary>What a picture shows of a break-even line: the line from step to step, and the ground on its side that gains.</summary>
/// <remarks>A step with several values, with one that only touches 0, or one that was not looked into to the end is drawn as points alone: how it goes on
/// beside them is not known.</remarks>
internal sealed class BreakEvenView
{
    private readonly BreakEvenLine _line;
    private readonly (double Low, double High) _solved;
    private readonly List<Section> _sections;
    private readonly List<Piece> _pieces = [];

    internal BreakEvenView(BreakEvenLine line)
    {
        _line = line;
        _solved = (line.Solved.Low, line.Solved.High);
        KnowsSides = line.GainsAbove.Count == line.Points.Count;
        _sections = [.. SectionsOf(line)];
        for (var i = 1; i < _sections.Count; i++) _pieces.AddRange(Between(_sections[i - 1], _sections[i]));
    }

    private enum Kind { NotKnown, Crossed, AllGains, AllLoses }

    /// <summary>Whether it is known which side of each point gains.</summary>
    internal bool KnowsSides { get; }

    /// <summary>The line, run by run.</summary>
    internal IEnumerable<IReadOnlyList<(double Across, double Solved)>> Lines()
    {
        var run = new List<(double, double)>();
        foreach (var piece in _pieces.Where(p => p.Line.Count > 0))
        {
            if (run.Count > 0 && run[^1] == piece.Line[0])
            {
                run.AddRange(piece.Line.Skip(1));
                continue;
            }

            if (run.Count > 0) yield return run;
            run = [.. piece.Line];
        }

        if (run.Count > 0) yield return run;
    }

    /// <summary>What gains, as closed outlines.</summary>
    internal IEnumerable<IReadOnlyList<(double Across, double Solved)>> Gaining()
    {
        var (lower, upper) = (new List<(double, double)>(), new List<(double, double)>());
        foreach (var piece in _pieces.Where(p => p.Lower.Count > 0))
        {
            if (lower.Count > 0 && lower[^1] == piece.Lower[0] && upper[^1] == piece.Upper[0])
            {
                lower.AddRange(piece.Lower.Skip(1));
                upper.AddRange(piece.Upper.Skip(1));
                continue;
            }

            if (lower.Count > 0) yield return Closed(lower, upper);
            (lower, upper) = ([.. piece.Lower], [.. piece.Upper]);
        }

        if (lower.Count > 0) yield return Closed(lower, upper);
    }

    /// <summary>Half way between steps that belong together: the stretches that gain, or lose.</summary>
    internal IEnumerable<(double Across, double Low, double High)> Stretches(bool gains) =>
        _sections.Zip(_sections.Skip(1)).Where(pair => pair.First.Kind == pair.Second.Kind && pair.First.GainsAbove == pair.Second.GainsAbove && pair.First.Kind != Kind.NotKnown)
            .Select(pair => pair.First with { At = (pair.First.At + pair.Second.At) / 2, Edge = (pair.First.Edge + pair.Second.Edge) / 2 })
            .Select(s => s.Kind switch
            {
                Kind.Crossed => s.GainsAbove == gains ? (s.At, s.Edge, _solved.High) : (s.At, _solved.Low, s.Edge),
                Kind.AllGains => (s.At, _solved.Low, gains ? _solved.High : _solved.Low),
                _ => (s.At, _solved.Low, gains ? _solved.Low : _solved.High),
            });

    private static IEnumerable<Section> SectionsOf(BreakEvenLine line)
    {
        var sections = new SortedDictionary<double, Section>();
        foreach (var at in line.AlwaysAbove) sections[at] = new Section(at, Kind.AllGains);
        foreach (var at in line.AlwaysBelow) sections[at] = new Section(at, Kind.AllLoses);
        foreach (var points in line.Points.Select((p, i) => (p.Across, p.Solved, GainsAbove: i < line.GainsAbove.Count ? line.GainsAbove[i] : true)).GroupBy(p => p.Across))
        {
            var first = points.First();
            sections[points.Key] = points.Count() == 1 && first.GainsAbove is { } gains
                ? new Section(points.Key, Kind.Crossed, first.Solved, gains) : new Section(points.Key, Kind.NotKnown);
        }

        foreach (var at in line.Unclear) sections[at] = new Section(at, Kind.NotKnown);
        return sections.Values;
    }

    private IEnumerable<Piece> Between(Section a, Section b)
    {
        (double Across, double Solved)? low = Edge(a, b, _solved.Low), high = Edge(a, b, _solved.High);
        return (a.Kind, b.Kind) switch
        {
            (Kind.NotKnown, _) or (_, Kind.NotKnown) => [],
            (Kind.Crossed, Kind.Crossed) when a.GainsAbove == b.GainsAbove => [Along(a.Point, b.Point, a.GainsAbove)],
            (Kind.Crossed, Kind.Crossed) => low is { } l && high is { } h ? Turned(a, b, l, h) : [],
            (Kind.Crossed, _) => Leaving(a, b, low, high),
            (_, Kind.Crossed) => Returning(a, b, low, high),
            (Kind.AllGains, Kind.AllGains) => [Whole(a.At, b.At)],
            (Kind.AllLoses, Kind.AllLoses) => [],
            _ => low is { } l && high is { } h ? [Upright(a, b, l, h)] : [],
        };
    }

    private (double Across, double Solved)? Edge(Section a, Section b, double solved)
    {
        var found = _line.Edges.Where(e => e.Solved == solved && e.Across >= a.At && e.Across <= b.At).ToList();
        return found.Count == 1 ? found[0] : null;
    }

    private Piece Along((double Across, double Solved) a, (double Across, double Solved) b, bool gainsAbove) => gainsAbove
        ? new Piece([a, b], [a, b], [(a.Across, _solved.High), (b.Across, _solved.High)])
        : new Piece([a, b], [(a.Across, _solved.Low), (b.Across, _solved.Low)], [a, b]);

    private Piece Whole(double from, double to) => new([], [(from, _solved.Low), (to, _solved.Low)], [(from, _solved.High), (to, _solved.High)]);

    /// <summary>From a step that the line crosses to the edge at which it leaves, and on to a step that gains or loses throughout.</summary>
    private IEnumerable<Piece> Leaving(Section crossed, Section whole, (double Across, double Solved)? low, (double Across, double Solved)? high)
    {
        var gains = whole.Kind == Kind.AllGains;
        if ((gains == crossed.GainsAbove ? low : high) is not { } edge) yield break;
        yield return Along(crossed.Point, edge, crossed.GainsAbove);
        if (gains) yield return Whole(edge.Across, whole.At);
    }

    /// <summary>The same the other way: from a step that gains or loses throughout by the edge to one that the line crosses.</summary>
    private IEnumerable<Piece> Returning(Section whole, Section crossed, (double Across, double Solved)? low, (double Across, double Solved)? high) =>
        Leaving(crossed, whole, low, high).Select(p => p.Reversed()).Reverse();

    /// <summary>The line leaves by one edge and comes back by the other, with its sides exchanged.</summary>
    private IEnumerable<Piece> Turned(Section a, Section b, (double Across, double Solved) low, (double Across, double Solved) high)
    {
        var isLowFirst = low.Across < high.Across;
        var middle = new Section((low.Across + high.Across) / 2, isLowFirst == a.GainsAbove ? Kind.AllGains : Kind.AllLoses);
        return Leaving(a, middle, low, high).Concat(Returning(middle, b, low, high));
    }

    /// <summary>The line goes from edge to edge between two steps: the input solved for hardly matters.</summary>
    private Piece Upright(Section a, Section b, (double Across, double Solved) low, (double Across, double Solved) high) => a.Kind == Kind.AllGains
        ? new Piece([low, high], [(a.At, _solved.Low), low], [(a.At, _solved.High), high])
        : new Piece([low, high], [low, (b.At, _solved.Low)], [high, (b.At, _solved.High)]);

    private static List<(double Across, double Solved)> Closed(List<(double, double)> lower, List<(double, double)> upper) => [.. lower, .. Enumerable.Reverse(upper), lower[0]];

    /// <summary>One step across: where the side changes on it, or which side all of it is.</summary>
    private readonly record struct Section(double At, Kind Kind, double Edge = 0, bool GainsAbove = true)
    {
        internal (double Across, double Solved) Point => (At, Edge);
    }

    /// <summary>The line between two steps, and the ground that gains from below to above; each may be missing.</summary>
    private sealed record Piece(
        IReadOnlyList<(double Across, double Solved)> Line, IReadOnlyList<(double Across, double Solved)> Lower, IReadOnlyList<(double Across, double Solved)> Upper)
    {
        internal Piece Reversed() => new([.. Line.Reverse()], [.. Lower.Reverse()], [.. Upper.Reverse()]);
    }
}
