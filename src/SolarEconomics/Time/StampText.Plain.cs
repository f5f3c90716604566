using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace SolarEconomics;

internal static partial class StampText
{
    private const int WithMinutes = 16;
    private const int WithSeconds = 19;

    // The marks of "yyyy-MM-dd HH:mm" in two words of eight letters, the first letter lowest; a digit's place holds '0'.
    private const ulong DateMarks = 0x2D30302D30303030;
    private const ulong TimeMarks = 0x30303A3030203030;

    // Added to what is left of a letter after its mark is taken off: sets the high bit of a digit's place above 9, of a mark's place above 0.
    private const ulong DateExcess = 0x7F76767F76767676;
    private const ulong TimeExcess = 0x76767F76767F7676;
    private const ulong HighBits = 0x8080808080808080;

    /// <summary>What is left of a 'T' where a blank was taken off: ISO 8601 writes it between date and time.</summary>
    private const ulong LetterT = (ulong)('T' ^ ' ') << 16;

    private static ReadOnlySpan<byte> DaysOfMonth => [0, 31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>Reads yyyy-MM-dd HH:mm with or without seconds, by far the most common form, without looking for any other. What is not exactly so is left to the general way.</summary>
    /// <remarks>Sixteen letters become two words of bytes. Marks and digits are judged side by side in each, and one product adds all digits up in pairs.</remarks>
    private static bool TryPlain(ReadOnlySpan<char> text, out Stamp stamp)
    {
        stamp = default;
        if (text.Length != WithMinutes && text.Length != WithSeconds) return false;
        ref var letters = ref Unsafe.As<char, ushort>(ref MemoryMarshal.GetReference(text));
        // A letter that is no byte becomes 255, which is neither digit nor mark.
        var bytes = Vector128.NarrowWithSaturation(Vector128.LoadUnsafe(ref letters), Vector128.LoadUnsafe(ref letters, 8)).AsUInt64();
        var date = bytes[0] ^ DateMarks;
        var time = bytes[1] ^ TimeMarks;
        if ((time & 0xFF0000) == LetterT) time ^= LetterT;
        if (((((date + DateExcess) | date) | ((time + TimeExcess) | time)) & HighBits) != 0) return false;
        date = (date * 10) + (date >> 8);
        time = (time * 10) + (time >> 8);
        var (year, month, day) = (((uint)(byte)date * 100) + (byte)(date >> 16), (uint)(byte)(date >> 40), (uint)(byte)time);
        var (hour, minute, second) = ((uint)(byte)(time >> 24), (uint)(byte)(time >> 48), 0u);
        if (text.Length == WithSeconds)
        {
            var (tens, ones) = ((uint)(text[17] - '0'), (uint)(text[18] - '0'));
            if (text[16] != ':' || tens > 5 || ones > 9) return false;
            second = (tens * 10) + ones;
        }
        if (year is < FirstYear or > LastYear || month - 1 > 11 || day - 1 >= DaysOfMonth[(int)month] || hour > 23 || minute > 59) return false;
        if (month == 2 && day == 29 && !DateTime.IsLeapYear((int)year)) return false;
        stamp = new Stamp((DayNumber(year, month, day) * MsPerDay) + (((hour * 60) + minute) * MsPerMinute) + (second * 1000L), null, StampFineness.Time);
        return true;
    }

    /// <summary>Days since 1970-01-01. Years are counted from March, so that the leap day is the last of its year.</summary>
    private static long DayNumber(uint year, uint month, uint day)
    {
        var fromMarch = month <= 2 ? year - 1 : year;
        var months = month <= 2 ? month + 9 : month - 3;
        return (fromMarch * 365L) + (fromMarch / 4) - (fromMarch / 100) + (fromMarch / 400) + (((months * 153) + 2) / 5) + day - 719_469;
    }
}
