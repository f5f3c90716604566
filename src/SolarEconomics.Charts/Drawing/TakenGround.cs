namespace SolarEconomics.Charts;

/// <summary>The ground of a plot that marks and words have taken, and where the next words find room. Places are shares of the plot, from its lower left corner.</summary>
internal sealed class TakenGround(Figure figure)
{
    private readonly List<Box> _taken = [];

    /// <summary>Keeps the ground around a mark free of words.</summary>
    internal void Keep(double x, double y, double halfPx)
    {
        var (w, h) = (halfPx / figure.PlotWidthPx, halfPx / figure.PlotHeightPx);
        Keep(new Box(x - w, y - h, x + w, y + h));
    }

    internal void Keep(Box box) => _taken.Add(box);

    internal bool IsFree(Box box) => !_taken.Exists(box.Meets);

    /// <summary>Words beside a point; the side says which way they lean from it, for example <c>left below</c>.</summary>
    internal Box Beside(string text, bool strong, double x, double y, string side)
    {
        var (w, h) = Size(text, strong);
        var (gapX, gapY) = (figure.LabelGapPx / figure.PlotWidthPx, figure.LabelGapPx / figure.PlotHeightPx);
        var left = x + (side.StartsWith("left", StringComparison.Ordinal) ? -gapX - w : gapX);
        var low = y + (side.EndsWith("below", StringComparison.Ordinal) ? -gapY - h : gapY);
        return new Box(left, low, left + w, low + h);
    }

    /// <summary>Words with their middle at a point.</summary>
    internal Box Around(string text, bool strong, double x, double y)
    {
        var (w, h) = Size(text, strong);
        return new Box(x - (w / 2), y - (h / 2), x + (w / 2), y + (h / 2));
    }

    /// <summary>Takes the first place, in the order given, that is inside the picture and free; where none is, the first inside, or simply the first.</summary>
    internal T Take<T>(IReadOnlyList<T> places, Func<T, Box> boxOf, Func<Box, bool> isFree)
    {
        var inside = places.Where(p => boxOf(p).IsInside).ToList();
        var free = inside.FindIndex(p => isFree(boxOf(p)));
        var place = inside.Count == 0 ? places[0] : inside[Math.Max(free, 0)];
        Keep(boxOf(place));
        return place;
    }

    private (double Width, double Height) Size(string text, bool strong)
    {
        var sizePx = strong ? figure.Preset.TextPx : figure.Preset.SmallTextPx;
        return (text.Length * FrameLayout.LetterWidth * sizePx / figure.PlotWidthPx, sizePx * FrameLayout.LineHeight / figure.PlotHeightPx);
    }
}
