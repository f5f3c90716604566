using System.Numerics;
using System.Runtime.CompilerServices;

namespace SolarEconomics;

internal static partial class Utf8Number
{
    /// <summary>Bytes that <see cref="ReadWord"/> looks at.</summary>
    internal const int WordBytes = sizeof(ulong);

    private const ulong Zeros = 0x3030303030303030;
    private const ulong HighBits = 0x8080808080808080;

    /// <summary>Added to a byte from 0 to 9 it leaves the high bit clear; to anything above, one of the two has it set.</summary>
    private const ulong AboveNine = 0x7676767676767676;

    /// <summary>Reads a short number without a sign out of eight bytes at once, as <see cref="TryRead"/> reads it byte by byte: most readings have no more.</summary>
    /// <remarks>All bytes are judged side by side in one register (digit or not), the point is closed up, and three products add the digits up
    /// in pairs, fours and eights: no loop, and no branch that depends on how many digits there are.</remarks>
    /// <param name="word">The eight bytes from the place where the number begins, the first in the lowest.</param>
    /// <param name="value">The number.</param>
    /// <returns>Bytes of the number; 0 where there is no digit. A number only if a mark that ends a field stands behind them: that is for the caller to see.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static int ReadWord(ulong word, out double value)
    {
        var digits = word ^ Zeros;
        var others = ((digits + AboveNine) | digits) & HighBits;
        // Where the next field begins is what the next read waits for: both ends are worked out before it is known which counts.
        var endBehindPoint = BitOperations.TrailingZeroCount(others & (others - 1)) >> 3;
        var end = BitOperations.TrailingZeroCount(others) >> 3;
        var count = end;
        var decimals = 0;
        if (end < WordBytes && (byte)(word >> (end * 8)) == (byte)'.')
        {
            var before = (1UL << (end * 8)) - 1;
            digits = (digits & before) | ((digits >> 8) & ~before);
            end = endBehindPoint;
            decimals = end - 1 - count;
            count = end - 1;
        }
        if (count == 0)
        {
            value = 0;
            return 0;
        }
        // The first digit stands lowest: move the last one to the top, so that what is below reads as leading zeros.
        digits <<= (WordBytes - count) * 8;
        digits = (digits * 10) + (digits >> 8);
        digits = (((digits & 0x000000FF000000FF) * 0x000F424000000064) + (((digits >> 16) & 0x000000FF000000FF) * 0x0000271000000001)) >> 32;
        value = (int)digits / PowersOfTen[decimals];
        return end;
    }
}
