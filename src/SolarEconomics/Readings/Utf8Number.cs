using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>Reads plain decimal numbers from bytes: a whole mantissa divided by a power of ten.</summary>
/// <remarks>Exact: up to 14 digits and 22 decimals both parts are doubles without error, and one division rounds once, so the result is the
/// double that a full parser gives. Everything else is left to the full parser.</remarks>
internal static partial class Utf8Number
{
    private const int MostDigits = 14;

    private static ReadOnlySpan<double> PowersOfTen =>
        [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>Reads a number that begins at a place and ends at a delimiter or the end of the text. False where it is not plain; the place is then undefined.</summary>
    /// <param name="text">The line.</param>
    /// <param name="at">Where the number begins; afterwards the place of the delimiter, or the length.</param>
    /// <param name="delimiter">Mark between fields.</param>
    /// <param name="value">The number.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static bool TryRead(ReadOnlySpan<byte> text, ref int at, byte delimiter, out double value)
    {
        var i = at;
        var negative = false;
        if (i < text.Length && text[i] == (byte)'-')
        {
            negative = true;
            i++;
        }
        var mantissa = 0L;
        var first = i;
        var digit = 0u;
        while (i < text.Length && (digit = (uint)(text[i] - '0')) <= 9)
        {
            mantissa = (mantissa * 10) + digit;
            i++;
        }
        var digits = i - first;
        var decimals = 0;
        if (i < text.Length && text[i] == (byte)'.')
        {
            i++;
            first = i;
            while (i < text.Length && (digit = (uint)(text[i] - '0')) <= 9)
            {
                mantissa = (mantissa * 10) + digit;
                i++;
            }
            decimals = i - first;
            digits += decimals;
        }
        at = i;
        value = 0;
        if ((uint)(digits - 1) >= MostDigits || (i < text.Length && text[i] != delimiter)) return false;
        value = decimals == 0 ? mantissa : mantissa / PowersOfTen[decimals];
        if (negative) value = -value;
        return true;
    }
}
