using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>Finds a place for each label of a cash curve where neither a line nor another label is in the way.</summary>
/// <remarks>Places are tried in the order given and the first free one is taken; where none is, the first that stands inside the picture.</remarks>
internal sealed class LabelPlaces(Figure figure, CashView view)
{
    private const int Samples = 40;
    private readonly TakenGround _ground = new(figure);

    /// <summary>Keeps the ground around a mark free of later labels.</summary>
    internal void Keep(LocalDate date, double amount) => _ground.Keep(view.ShareOf(date), view.HeightOf(amount), figure.Preset.LinePx * 2.4);

    internal void Label(string text, bool strong, string name, IEnumerable<Place> places)
    {
        var place = _ground.Take([.. places], p => _ground.Beside(text, strong, view.ShareOf(p.Date), view.HeightOf(p.Amount), p.Side), IsFree);
        figure.Label(text, Fields.Iso(place.Date), Fields.Round(place.Amount), place.Side, strong, name);
    }

    private bool IsFree(Box box)
    {
        if (!_ground.IsFree(box))
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

    /// <summary>A point and the side of it on which a label stands, for example <c>left above</c>.</summary>
    internal sealed record Place(LocalDate Date, double Amount, string Side);
}
