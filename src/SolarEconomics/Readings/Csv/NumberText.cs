using System.Globalization;

namespace SolarEconomics;

/// <summary>Reads a number as people write it in tables. Invariant: the marks are told, never taken from the computer's culture.</summary>
/// <param name="Decimal">The decimal mark.</param>
/// <param name="Thousands">The mark between thousands; <see langword="null"/> where there is none.</param>
internal readonly record struct NumberText(char Decimal, char? Thousands)
{
    private const int Longest = 64;

    internal static NumberText Plain => new('.', null);

    internal bool TryRead(ReadOnlySpan<char> text, out double number)
    {
        number = 0;
        text = text.Trim();
        if (text.IsEmpty || text.Length > Longest) return false;
        Span<char> clean = stackalloc char[Longest];
        var length = 0;
        var sinceThousands = -1;
        var seenDecimal = false;
        foreach (var c in text)
        {
            if (c == Thousands && !seenDecimal)
            {
                // Groups of three after the first: 1,234,567. Anything else is another number than it seems.
                if (sinceThousands is >= 0 and not 3 || length == 0) return false;
                sinceThousands = 0;
                continue;
            }
            if (c == Decimal && !seenDecimal)
            {
                if (sinceThousands is >= 0 and not 3) return false;
                seenDecimal = true;
                sinceThousands = -1;
                clean[length++] = '.';
                continue;
            }
            if (!char.IsAsciiDigit(c) && c is not ('-' or '+' or 'e' or 'E')) return false;
            if (sinceThousands >= 0 && char.IsAsciiDigit(c)) sinceThousands++;
            clean[length++] = c;
        }
        if (sinceThousands is >= 0 and not 3) return false;
        return double.TryParse(clean[..length], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
    }
}
