using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>Round numbers along an axis of money, written with the currency. They stand in the figure itself, as a client may leave out everything but data and layout.</summary>
internal static class Ticks
{
    /// <summary>Multiples of 1, 2 or 5 times a power of ten inside the axis, so many or a few less.</summary>
    internal static IReadOnlyList<decimal> Between(double low, double high, int most)
    {
        var least = (high - low) / most;
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        var step = (decimal)power * (least <= power ? 1 : least <= 2 * power ? 2 : least <= 5 * power ? 5 : 10);
        var ticks = new List<decimal>();
        for (var at = Math.Ceiling((decimal)low / step) * step; at <= (decimal)high; at += step)
        {
            ticks.Add(at);
        }

        return ticks;
    }

    /// <summary>The ticks in words: thousands as <c>€10k</c>, millions as <c>€2M</c>, each with the digits that its neighbours need.</summary>
    internal static IReadOnlyList<string> Words(IReadOnlyList<decimal> ticks, Currency currency, CultureInfo culture)
    {
        var reach = ticks.Count == 0 ? 0 : ticks.Max(Math.Abs);
        var (unit, letter) = reach >= 2_000_000 ? (1_000_000m, "M") : reach >= 2_000 ? (1_000m, "k") : (1m, "");
        var digits = Enumerable.Range(0, 7).First(d => d == 6 || ticks.All(t => decimal.Round(t / unit, d) == t / unit));
        var (before, after) = currency.SignAround(culture);
        var format = "N" + digits.ToString(CultureInfo.InvariantCulture);
        return [.. ticks.Select(t =>
            (t < 0 ? "\u2212" : "") + before + Math.Abs(t / unit).ToString(t == 0 ? "N0" : format, culture) + (t == 0 ? "" : letter) + after)];
    }

    /// <summary>Room that the longest of them needs, in heights of their text; at least that of the euro, so that most charts align.</summary>
    internal static double RoomFor(double low, double high, int most, Currency currency, CultureInfo culture) =>
        Math.Max(4.2, 0.8 + FrameLayout.LetterWidth * Words(Between(low, high, most), currency, culture).Max(w => w.Length));
}
