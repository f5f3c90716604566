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
        Span<char> clean = stackalloc char[Longest + 1];
        var length = 0;
        // Some programs write the sign behind the number, or a minus sign of its own letter before it.
        if (text.Length > 1 && text[^1] == '-' && char.IsAsciiDigit(text[0]))
        {
            clean[length++] = '-';
            text = text[..^1];
        }
        else if (text[0] == '\u2212')
        {
            clean[length++] = '-';
            text = text[1..];
        }
        var sinceThousands = -1;
        var seenDecimal = false;
        foreach (var c in text)
        {
            if (c == Thousands && !seenDecimal)
            {
                // Groups of three after the first: 1,234,567. Anything else is another number than it seems.
                if (sinceThousands < 0 ? !CanBeFirstGroup(clean[..length]) : sinceThousands != 3) return false;
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

    /// <summary>Whether digits may stand before the first mark of thousands: one to three, and no zero in front. 0 375 is two numbers, or a broken one.</summary>
    private static bool CanBeFirstGroup(ReadOnlySpan<char> written)
    {
        var digits = written.TrimStart("+-");
        return digits.Length is >= 1 and <= 3 && digits[0] is >= '1' and <= '9' && digits.IndexOfAnyExceptInRange('0', '9') < 0;
    }
}
