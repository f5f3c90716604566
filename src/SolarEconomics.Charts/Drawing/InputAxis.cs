using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>An axis of an input between its declared ends: what its numbers are, and how they are written.</summary>
internal sealed class InputAxis(DeclaredRange range, Currency currency, CultureInfo culture)
{
    private readonly double _scale = range.Input.Unit is InputUnit.Share or InputUnit.SharePerYear ? 100 : 1;

    /// <summary>Room outside the declared ends, so that points on them are whole and the numbers of two axes stay apart.</summary>
    private double Beyond => 0.06 * (range.High - range.Low);

    /// <summary>Name and unit: <c>Discount rate (% a year)</c>.</summary>
    internal string Words { get; } = Sentences.Capital(range.Input.Name) + range.Input.Unit switch
    {
        InputUnit.SharePerYear => " (% a year)",
        InputUnit.Share => " (%)",
        InputUnit.Money => $" ({currency.Sign})",
        InputUnit.Years => " (years)",
        _ => " (a number)",
    };

    /// <summary>A place on the axis, in the axis' own unit.</summary>
    internal double At(double value) => Math.Round(value * _scale, 4, MidpointRounding.AwayFromZero) + 0.0;

    /// <summary>The axis as plotly takes it, with so many numbers at most.</summary>
    internal Fields Fields(int mostTicks)
    {
        var ticks = Ticks.Between(range.Low * _scale, range.High * _scale, mostTicks);
        return new Fields
        {
            ["range"] = new[] { At(range.Low - Beyond), At(range.High + Beyond) }, ["tickvals"] = ticks, ["ticktext"] = Written(ticks), ["fixedrange"] = true,
        };
    }

    /// <summary>Room that the numbers need, in heights of their text.</summary>
    internal double Room(int mostTicks) =>
        0.9 + (FrameLayout.LetterWidth * Written(Ticks.Between(range.Low * _scale, range.High * _scale, mostTicks)).Max(w => w.Length));

    private IReadOnlyList<string> Written(IReadOnlyList<decimal> ticks)
    {
        if (range.Input.Unit == InputUnit.Money) return Ticks.Words(ticks, currency, culture);
        var digits = Enumerable.Range(0, 4).First(d => d == 3 || ticks.All(t => decimal.Round(t, d) == t));
        return [.. ticks.Select(t => PeopleNumber.Number((double)t, digits, culture) + (_scale == 1 ? "" : "\u00a0%"))];
    }
}
