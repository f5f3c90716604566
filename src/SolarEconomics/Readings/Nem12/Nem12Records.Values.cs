using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace SolarEconomics;

internal sealed partial class Nem12Records
{
    /// <summary>Reads short numbers that follow each other, eight bytes at a time, and stops before the first that needs a closer look. All of them are good readings.</summary>
    /// <returns>How many were read.</returns>
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private static int PlainValues(ReadOnlySpan<byte> line, ref int at, Span<double> kwh, EnergyUnit? scaled)
    {
        ref var text = ref MemoryMarshal.GetReference(line);
        var last = line.Length - Utf8Number.WordBytes - 1;
        var (place, count) = (at, 0);
        while (count < kwh.Length && place < last)
        {
            var length = Utf8Number.ReadWord(Unsafe.ReadUnaligned<ulong>(ref Unsafe.Add(ref text, place)), out kwh[count]);
            if (length == 0 || Unsafe.Add(ref text, place + length) != Comma) break;
            place += length + 1;
            count++;
        }
        at = place;
        if (scaled is not null)
            foreach (ref var value in kwh[..count]) value = scaled.Scale(value);
        return count;
    }
}
