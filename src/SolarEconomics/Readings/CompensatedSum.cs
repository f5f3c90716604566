using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace SolarEconomics;

/// <summary>A sum that keeps the digits which plain addition drops, so that totals print as the record's own decimals add up.</summary>
/// <remarks>Source: readings-sum (Neumaier's variant of compensated summation).</remarks>
internal struct CompensatedSum
{
    private double _sum;
    private double _lost;

    internal void Add(double value)
    {
        var next = _sum + value;
        _lost += Math.Abs(_sum) >= Math.Abs(value) ? _sum - next + value : value - next + _sum;
        _sum = next;
    }

    internal readonly double Total => _sum + _lost;

    /// <summary>The sum of a column, four sums side by side that are added at the end.</summary>
    /// <remarks>Each lane keeps what it loses by Knuth's addition, which needs no comparison; the order of adding is the same on every machine.</remarks>
    internal static double Of(ReadOnlySpan<double> values) => Of(values, default);

    /// <summary>The sum of those values of a column that are not missing.</summary>
    internal static double OfCounted(ReadOnlySpan<double> values, ReadOnlySpan<Quality> quality) => Of(values, quality);

    private static double Of(ReadOnlySpan<double> values, ReadOnlySpan<Quality> quality)
    {
        var (sums, lost) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var whole = values.Length - (values.Length % Vector256<double>.Count);
        for (var i = 0; i < whole; i += Vector256<double>.Count)
        {
            var value = Vector256.Create(values.Slice(i, Vector256<double>.Count));
            if (!quality.IsEmpty) value = Counted(value, quality.Slice(i, Vector256<double>.Count));
            var next = sums + value;
            var taken = next - sums;
            lost += sums - (next - taken) + (value - taken);
            sums = next;
        }
        var sum = default(CompensatedSum);
        for (var lane = 0; lane < Vector256<double>.Count; lane++) sum.Add(sums[lane]);
        for (var lane = 0; lane < Vector256<double>.Count; lane++) sum.Add(lost[lane]);
        for (var i = whole; i < values.Length; i++)
            if (quality.IsEmpty || (quality[i] & Quality.Missing) == Quality.Good) sum.Add(values[i]);
        return sum.Total;
    }

    /// <summary>Four values with 0 in place of those that are missing.</summary>
    private static Vector256<double> Counted(Vector256<double> values, ReadOnlySpan<Quality> quality)
    {
        const uint MissingInAny = (uint)Quality.Missing * 0x01010101;
        var flags = MemoryMarshal.Read<uint>(MemoryMarshal.AsBytes(quality)) & MissingInAny;
        if (flags == 0) return values;
        for (var lane = 0; lane < quality.Length; lane++)
            if ((quality[lane] & Quality.Missing) != Quality.Good) values = values.WithElement(lane, 0);
        return values;
    }
}
