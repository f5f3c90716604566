using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>An axis of an input between its declared ends: what its numbers are, and how they are written.</summary>
internal sealed class InputAxis(DeclaredRange range, Currency currency, CultureInfo culture)
{
    private const int MostDigits = 9;
    private readonly double _scale = range.Input.Unit is InputUnit.Share or InputUnit.SharePerYear ? 100 : 1;

    /// <summary>Name and unit: <c>Discount rate (% a year)</c>.</summary>
    internal string Words { get; } = Sentences.Capital(range.Input.Name) + range.Input.Unit switch
    {
        InputUnit.SharePerYear => " (% a year)",
        InputUnit.Share => " (%)",
        InputUnit.Money => $" ({currency.Sign})",
        InputUnit.Years => " (years)",
        _ => " (a number)",
    };

    /// <summary>Room outside the declared ends, so that points on them are whole and the numbers of two axes stay apart.</summary>
    private double Beyond => 0.06 * (range.High - range.Low);

    /// <summary>Round numbers between the ends.</summary>
    private IReadOnlyList<decimal> TickValues
    {
        get
        {
            var ticks = Ticks.Between(range.Low * _scale, range.High * _scale, Figure.MostTicks);
            return range.Input.IsWhole ? [.. ticks.Where(t => t == decimal.Truncate(t))] : ticks;
        }
    }

    /// <summary>A place on the axis, in the axis' own unit, to a ten-thousandth of the axis or finer.</summary>
    internal double At(double value)
    {
        var digits = 4 - (int)Math.Floor(Math.Log10((range.High - range.Low) * _scale));
        return Math.Round(value * _scale, Math.Clamp(digits, 2, 15), MidpointRounding.AwayFromZero) + 0.0;
    }

    /// <summary>Share of the plot at a value, from 0 to 1.</summary>
    internal double ShareOf(double value) => (value - range.Low + Beyond) / (range.High - range.Low + (2 * Beyond));

    /// <summary>The axis as plotly takes it.</summary>
    internal Fields Fields()
    {
        var ticks = TickValues;
        return new Fields
        {
            ["range"] = new[] { At(range.Low - Beyond), At(range.High + Beyond) }, ["tickvals"] = ticks, ["ticktext"] = Written(ticks), ["fixedrange"] = true,
        };
    }

    /// <summary>Room that the numbers need, in heights of their text.</summary>
    internal double Room() => 0.9 + (FrameLayout.LetterWidth * Written(TickValues).Max(w => w.Length));

    private IReadOnlyList<string> Written(IReadOnlyList<decimal> ticks)
    {
        if (range.Input.Unit == InputUnit.Money) return Ticks.Words(ticks, currency, culture);
        var digits = Enumerable.Range(0, MostDigits + 1).First(d => d == MostDigits || ticks.All(t => decimal.Round(t, d) == t));
        return [.. ticks.Select(t => PeopleNumber.Number((double)t, digits, culture) + (_scale == 1 ? "" : "\u00a0%"))];
    }
}
