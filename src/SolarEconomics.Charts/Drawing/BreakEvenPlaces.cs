namespace SolarEconomics.Charts;

/// <summary>Finds places for the words in a picture of a break-even line where neither the line, a point nor other words are in the way.</summary>
internal sealed class BreakEvenPlaces
{
    private const int Samples = 40;
    private readonly BreakEvenView _view;
    private readonly InputAxis _across;
    private readonly InputAxis _up;
    private readonly TakenGround _ground;
    private readonly List<(double X, double Y)> _line;

    internal BreakEvenPlaces(Figure figure, BreakEvenLine line, BreakEvenView view, InputAxis across, InputAxis up)
    {
        (_view, _across, _up, _ground) = (view, across, up, new TakenGround(figure));
        _line = [.. view.Lines().SelectMany(run => run.Zip(run.Skip(1))).SelectMany(Sampled)];
        foreach (var point in line.Points) Keep(point, figure.Preset.LinePx * 2);
    }

    /// <summary>Keeps the ground around a mark free of words.</summary>
    internal void Keep((double Across, double Solved) at, double halfPx)
    {
        var (x, y) = Shares(at);
        _ground.Keep(x, y, halfPx);
    }

    /// <summary>To which side of a pair its words lean: <c>right</c>, <c>left below</c>.</summary>
    internal string Side(string text, (double Across, double Solved) at)
    {
        var (x, y) = Shares(at);
        return _ground.Take(["right", "left", "right below", "left below"], side => _ground.Beside(text, strong: false, x, y, side), IsFree);
    }

    /// <summary>The middle of a word on the side that gains, or loses, in the tallest stretch that has room for it; none where no stretch has.</summary>
    internal (double Across, double Solved)? Middle(string text, bool gains)
    {
        foreach (var (across, low, high) in _view.Stretches(gains).OrderByDescending(s => s.High - s.Low))
        {
            foreach (var share in new[] { 0.5, 0.35, 0.65 })
            {
                var at = (across, low + (share * (high - low)));
                var (x, y) = Shares(at);
                var box = _ground.Around(text, strong: true, x, y);
                if (box.Low < _up.ShareOf(low) || box.High > _up.ShareOf(high) || !box.IsInside || !IsFree(box)) continue;
                _ground.Keep(box);
                return at;
            }
        }

        return null;
    }

    private bool IsFree(Box box) => _ground.IsFree(box) && !_line.Exists(p => box.Holds(p.X, p.Y));

    private IEnumerable<(double X, double Y)> Sampled(((double Across, double Solved) From, (double Across, double Solved) To) part)
    {
        var (from, to) = (Shares(part.From), Shares(part.To));
        return Enumerable.Range(0, Samples + 1).Select(i => (double)i / Samples).Select(s => (from.X + (s * (to.X - from.X)), from.Y + (s * (to.Y - from.Y))));
    }

    private (double X, double Y) Shares((double Across, double Solved) at) => (_across.ShareOf(at.Across), _up.ShareOf(at.Solved));
}
