using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>How near a computed value must come to a published one, and how far the meta-test moves the published one.</summary>
/// <param name="Text">As written in the file: <c>5e-9</c>, <c>1e-7 relative</c>, <c>2 decimals</c> or <c>exact</c>.</param>
public sealed record PublishedTolerance(string Text)
{
    /// <summary>Null where the two agree, else a sentence with expected, got, difference and tolerance.</summary>
    public string? Difference(string expected, object got)
    {
        if (got is string word) return word == expected ? null : $"expected \"{expected}\", got \"{word}\"";
        if (got is double number && !double.IsFinite(number)) return $"expected {expected}, got {Print(got)}";
        var agrees = Text switch
        {
            "exact" => Exact(expected) == (got is decimal money ? money : (decimal)(double)got),
            _ when Decimals is { } digits => Math.Round(ToDouble(got), digits, MidpointRounding.AwayFromZero) == double.Parse(expected, CultureInfo.InvariantCulture),
            _ => Math.Abs(ToDouble(got) - double.Parse(expected, CultureInfo.InvariantCulture)) <= Width(expected),
        };
        return agrees ? null : string.Create(CultureInfo.InvariantCulture,
            $"expected {expected}, got {Print(got)}, difference {ToDouble(got) - double.Parse(expected, CultureInfo.InvariantCulture):0.###e+0}, tolerance {Text}");
    }

    /// <summary>The expected value moved by three tolerances; an exact one by one unit of its last digit, a text by a letter.</summary>
    public string Move(string expected, int steps)
    {
        if (!decimal.TryParse(expected, NumberStyles.Float, CultureInfo.InvariantCulture, out var exact)) return expected + "~";
        if (Text == "exact") return (exact + steps * Unit(exact.Scale)).ToString(CultureInfo.InvariantCulture);
        if (Decimals is { } digits) return (exact + steps * Unit(digits)).ToString(CultureInfo.InvariantCulture);
        return (double.Parse(expected, CultureInfo.InvariantCulture) + 3 * steps * Width(expected)).ToString("R", CultureInfo.InvariantCulture);
    }

    /// <summary>Throws where the text is none of the four forms: a check without a tolerance would check nothing.</summary>
    public PublishedTolerance Checked() =>
        Text == "exact" || Decimals is not null || Width("1") > 0 ? this : throw new FormatException($"\"{Text}\" is not a tolerance.");

    public static string Print(object got) => Convert.ToString(got, CultureInfo.InvariantCulture)!;

    private int? Decimals => Text.EndsWith(" decimals", StringComparison.Ordinal) ? int.Parse(Text[..^9], CultureInfo.InvariantCulture) : null;

    private double Width(string expected)
    {
        var relative = Text.EndsWith(" relative", StringComparison.Ordinal);
        var width = double.Parse(relative ? Text[..^9] : Text, NumberStyles.Float, CultureInfo.InvariantCulture);
        return relative ? width * Math.Abs(double.Parse(expected, CultureInfo.InvariantCulture)) : width;
    }

    private static decimal Exact(string expected) => decimal.Parse(expected, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static decimal Unit(int decimals) => new(1, 0, 0, isNegative: false, (byte)decimals);

    private static double ToDouble(object got) => Convert.ToDouble(got, CultureInfo.InvariantCulture);
}
