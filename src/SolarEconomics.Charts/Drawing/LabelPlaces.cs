using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>Finds a place for each label of a cash curve where neither a line nor another label is in the way.</summary>
/// <remarks>Places are tried in the order given and the first free one is taken; where none is, the first that stands inside the picture.</remarks>
internal sealed class LabelPlaces(Figure figure, CashView view)
{
    private const int Samples = 40;
    private readonly List<Box> _taken = [];

    /// <summary>Keeps the ground around a mark free of later labels.</summary>
    internal void Keep(LocalDate date, double amount)
    {
        var (x, y) = (view.ShareOf(date), view.HeightOf(amount));
        var (w, h) = (figure.Preset.LinePx * 2.4 / figure.PlotWidthPx, figure.Preset.LinePx * 2.4 / figure.PlotHeightPx);
        _taken.Add(new Box(x - w, y - h, x + w, y + h));
    }

    internal void Label(string text, bool strong, string name, IEnumerable<Place> places)
    {
        var all = places.ToList();
        var inside = all.Where(p => BoxOf(text, strong, p).IsInside).ToList();
        var place = inside.Find(p => IsFree(BoxOf(text, strong, p))) ?? (inside.Count > 0 ? inside[0] : all[0]);
        _taken.Add(BoxOf(text, strong, place));
        figure.Label(text, Fields.Iso(place.Date), Fields.Round(place.Amount), place.Side, strong, name);
    }

    private bool IsFree(Box box)
    {
        if (_taken.Exists(box.Meets))
        {
            return false;
        }

        for (var i = 0; i <= Samples; i++)
        {
            var date = view.DateAt(box.Left + (box.Right - box.Left) * i / Samples);
            foreach (var height in view.HeightsAt(date))
            {
                if (height > box.Low && height < box.High)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private Box BoxOf(string text, bool strong, Place place)
    {
        var sizePx = strong ? figure.Preset.TextPx : figure.Preset.SmallTextPx;
        var (w, h) = (text.Length * FrameLayout.LetterWidth * sizePx / figure.PlotWidthPx, sizePx * 1.3 / figure.PlotHeightPx);
        var (gapX, gapY) = (figure.LabelGapPx / figure.PlotWidthPx, figure.LabelGapPx / figure.PlotHeightPx);
        var x = view.ShareOf(place.Date) + (place.IsLeft ? -gapX - w : gapX);
        var y = view.HeightOf(place.Amount) + (place.IsBelow ? -gapY - h : gapY);
        return new Box(x, y, x + w, y + h);
    }

    /// <summary>A point and the side of it on which a label stands, for example <c>left above</c>.</summary>
    internal sealed record Place(LocalDate Date, double Amount, string Side)
    {
        internal bool IsLeft => Side.StartsWith("left", StringComparison.Ordinal);

        internal bool IsBelow => Side.EndsWith("below", StringComparison.Ordinal);
    }
}
