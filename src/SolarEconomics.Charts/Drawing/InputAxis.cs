using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>An axis of an input between its declared ends: what its numbers are, and how they are written.</summary>
internal sealed class InputAxis
{
    private const int MostDigits = 9;
    private readonly DeclaredRange _range;
    private readonly double _scale;
    private readonly IReadOnlyList<decimal> _ticks;
    private readonly IReadOnlyList<string> _written;

    internal InputAxis(DeclaredRange range, Currency currency, CultureInfo culture)
    {
        _range = range;
        var isShare = range.Input.Unit is InputUnit.Share or InputUnit.SharePerYear;
        _scale = isShare ? 100 : 1;
        var ticks = Ticks.Between(range.Low * _scale, range.High * _scale, Figure.MostTicks);
        _ticks = range.Input.IsWhole ? [.. ticks.Where(t => t == decimal.Truncate(t))] : ticks;
        _written = range.Input.Unit == InputUnit.Money ? Ticks.Words(_ticks, currency, culture) : Written(_ticks, isShare ? "\u00a0%" : "", culture);
        Words = Sentences.Capital(range.Input.Name) + range.Input.Unit switch
        {
            InputUnit.SharePerYear => " (% a year)",
            InputUnit.Share => " (%)",
            InputUnit.Money => $" ({currency.Sign})",
            InputUnit.Years => " (years)",
            _ => " (a number)",
        };
    }

    /// <summary>Name and unit: <c>Discount rate (% a year)</c>.</summary>
    internal string Words { get; }

    /// <summary>The axis as plotly takes it.</summary>
    internal Fields Fields => new()
    {
        ["range"] = new[] { At(_range.Low - Beyond), At(_range.High + Beyond) }, ["tickvals"] = _ticks, ["ticktext"] = _written, ["fixedrange"] = true,
    };

    /// <summary>Room that the numbers need, in heights of their text.</summary>
    internal double Room => 0.9 + (FrameLayout.LetterWidth * _written.Max(w => w.Length));

    /// <summary>Room outside the declared ends, so that points on them are whole and the numbers of two axes stay apart.</summary>
    private double Beyond => 0.06 * (_range.High - _range.Low);

    /// <summary>A place on the axis, in the axis' own unit, to a ten-thousandth of the axis or finer.</summary>
    internal double At(double value)
    {
        var digits = 4 - (int)Math.Floor(Math.Log10((_range.High - _range.Low) * _scale));
        return Math.Round(value * _scale, Math.Clamp(digits, 2, 15), MidpointRounding.AwayFromZero) + 0.0;
    }

    /// <summary>Share of the plot at a value, from 0 to 1.</summary>
    internal double ShareOf(double value) => (value - _range.Low + Beyond) / (_range.High - _range.Low + (2 * Beyond));

    private static IReadOnlyList<string> Written(IReadOnlyList<decimal> ticks, string unit, CultureInfo culture)
    {
        var digits = Enumerable.Range(0, MostDigits + 1).First(d => d == MostDigits || ticks.All(t => decimal.Round(t, d) == t));
        return [.. ticks.Select(t => PeopleNumber.Number((double)t, digits, culture) + unit)];
    }
}
