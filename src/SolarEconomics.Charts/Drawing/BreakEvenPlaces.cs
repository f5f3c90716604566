namespace SolarEconomics.Charts;

/// <summary>Finds places for the words in a picture of a break-even line where neither the line, a point nor other words are in the way.</summary>
internal sealed class BreakEvenPlaces
{
    private const int Samples = 40;
    private readonly Figure _figure;
    private readonly BreakEvenView _view;
    private readonly InputAxis _across;
    private readonly InputAxis _up;
    private readonly List<Box> _taken = [];
    private readonly List<(double X, double Y)> _line;

    internal BreakEvenPlaces(Figure figure, BreakEvenLine line, BreakEvenView view, InputAxis across, InputAxis up)
    {
        (_figure, _view, _across, _up) = (figure, view, across, up);
        _line = [.. view.Lines().SelectMany(run => run.Zip(run.Skip(1))).SelectMany(Sampled)];
        foreach (var point in line.Points) Keep(point, figure.Preset.LinePx * 2);
    }

    /// <summary>Keeps the ground around a mark free of words.</summary>
    internal void Keep((double Across, double Solved) at, double halfPx)
    {
        var (x, y) = Shares(at);
        var (w, h) = (halfPx / _figure.PlotWidthPx, halfPx / _figure.PlotHeightPx);
        _taken.Add(new Box(x - w, y - h, x + w, y + h));
    }

    /// <summary>To which side of a pair its words lean: <c>right</c>, <c>left below</c>.</summary>
    internal string Side(string text, (double Across, double Solved) at)
    {
        var all = new[] { "right", "left", "right below", "left below" };
        var inside = all.Where(side => Beside(text, at, side).IsInside).ToList();
        var side = inside.Find(s => IsFree(Beside(text, at, s))) ?? (inside.Count > 0 ? inside[0] : all[0]);
        _taken.Add(Beside(text, at, side));
        return side;
    }

    /// <summary>The middle of a word on the side that gains, or loses, in the tallest stretch that has room for it; none where no stretch has.</summary>
    internal (double Across, double Solved)? Middle(string text, bool gains)
    {
        foreach (var (across, low, high) in _view.Stretches(gains).OrderByDescending(s => s.High - s.Low))
        {
            foreach (var share in new[] { 0.5, 0.35, 0.65 })
            {
                var at = (across, low + (share * (high - low)));
                var box = Around(text, at);
                if (box.Low < _up.ShareOf(low) || box.High > _up.ShareOf(high) || !box.IsInside || !IsFree(box)) continue;
                _taken.Add(box);
                return at;
            }
        }

        return null;
    }

    private bool IsFree(Box box) => !_taken.Exists(box.Meets) && !_line.Exists(p => box.Holds(p.X, p.Y));

    private IEnumerable<(double X, double Y)> Sampled(((double Across, double Solved) From, (double Across, double Solved) To) part)
    {
        var (from, to) = (Shares(part.From), Shares(part.To));
        return Enumerable.Range(0, Samples + 1).Select(i => (double)i / Samples).Select(s => (from.X + (s * (to.X - from.X)), from.Y + (s * (to.Y - from.Y))));
    }

    private (double X, double Y) Shares((double Across, double Solved) at) => (_across.ShareOf(at.Across), _up.ShareOf(at.Solved));

    private Box Beside(string text, (double Across, double Solved) at, string side)
    {
        var sizePx = _figure.Preset.SmallTextPx;
        var (w, h) = (text.Length * FrameLayout.LetterWidth * sizePx / _figure.PlotWidthPx, sizePx * FrameLayout.LineHeight / _figure.PlotHeightPx);
        var (gapX, gapY) = (_figure.LabelGapPx / _figure.PlotWidthPx, _figure.LabelGapPx / _figure.PlotHeightPx);
        var (x, y) = Shares(at);
        x += side.StartsWith("left", StringComparison.Ordinal) ? -gapX - w : gapX;
        y += side.EndsWith("below", StringComparison.Ordinal) ? -gapY - h : gapY;
        return new Box(x, y, x + w, y + h);
    }

    private Box Around(string text, (double Across, double Solved) at)
    {
        var sizePx = _figure.Preset.TextPx;
        var (w, h) = (text.Length * FrameLayout.LetterWidth * sizePx / _figure.PlotWidthPx / 2, sizePx * FrameLayout.LineHeight / _figure.PlotHeightPx / 2);
        var (x, y) = Shares(at);
        return new Box(x - w, y - h, x + w, y + h);
    }
}
