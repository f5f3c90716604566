using System.Globalization;

namespace SolarEconomics;

/// <summary>Reads a time as a number since 1970: whole, or with a fraction as programs write it that keep times as floating point.</summary>
internal static class UnixText
{
    private const int LongestFraction = 9;

    /// <summary>Reads the whole units, and the fraction in thousandths of one.</summary>
    internal static bool TryRead(ReadOnlySpan<char> field, out long whole, out int thousandths)
    {
        thousandths = 0;
        field = field.Trim();
        var point = field.IndexOf('.');
        var digits = point < 0 ? field : field[..point];
        if (!long.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out whole)) return false;
        if (point < 0) return true;
        var fraction = field[(point + 1)..];
        if (fraction.Length is 0 or > LongestFraction || fraction.IndexOfAnyExceptInRange('0', '9') >= 0) return false;
        for (var i = 0; i < 3; i++) thousandths = (thousandths * 10) + (i < fraction.Length ? fraction[i] - '0' : 0);
        return true;
    }
}
