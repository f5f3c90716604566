using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace SolarEconomics;

internal static partial class RateSolver
{
    /// <summary>Solves flow after flow; lanes that Newton's method does not settle are solved one by one with all roots.</summary>
    internal static void SolveEach(ReadOnlySpan<double> flows, int values, Span<double> rates, Span<SolveEnd> ends)
    {
        // Emulated wide vectors are slower than none: only what the processor has.
        if (Vector512.IsHardwareAccelerated) SolveInLanes<LanesPair<Lanes8>>(flows, values, rates, ends);
        else if (Vector256.IsHardwareAccelerated) SolveInLanes<LanesPair<Lanes4>>(flows, values, rates, ends);
        else SolveOneByOne(flows, values, rates, ends);
    }

    internal static void SolveOneByOne(ReadOnlySpan<double> flows, int values, Span<double> rates, Span<SolveEnd> ends)
    {
        for (var i = 0; i < rates.Length; i++)
        {
            var flow = flows.Slice(i * values, values);
            if (!TryNewton(flow, out rates[i])) SolveFully(flow, i * values, out rates[i], out ends[i]);
        }
    }

    internal static void SolveInLanes<TLanes>(ReadOnlySpan<double> flows, int values, Span<double> rates, Span<SolveEnd> ends)
        where TLanes : struct, ILanes<TLanes>
    {
        var width = TLanes.Width;
        var whole = rates.Length - rates.Length % width;
        // Year by year instead of flow by flow, so that one load takes a year of every lane.
        var byYear = new double[values * width];
        Span<double> found = stackalloc double[width];
        for (var first = 0; first < whole; first += width)
        {
            LayByYear(flows.Slice(first * values, width * values), values, byYear);
            NewtonInLanes<TLanes>(byYear, values).CopyTo(found);
            for (var lane = 0; lane < width; lane++)
            {
                var at = first + lane;
                // A lane that did not settle, has no single sign change or is not finite comes back as 0.
                if (found[lane] > 0 && 1 / found[lane] - 1 is > -1 and var rate) rates[at] = rate;
                else SolveFully(flows.Slice(at * values, values), at * values, out rates[at], out ends[at]);
            }
        }
        SolveOneByOne(flows[(whole * values)..], values, rates[whole..], ends[whole..]);
    }

    /// <summary>Turns flow after flow into year after year, four years of four flows at a time where the processor can.</summary>
    private static void LayByYear(ReadOnlySpan<double> flows, int values, Span<double> byYear)
    {
        var width = flows.Length / values;
        var whole = Avx.IsSupported && width % 4 == 0 ? values - values % 4 : 0;
        for (var lane = 0; lane < width; lane += 4)
        {
            for (var year = 0; year < whole; year += 4)
            {
                var (a, b) = (Four(flows, lane * values + year), Four(flows, (lane + 1) * values + year));
                var (c, d) = (Four(flows, (lane + 2) * values + year), Four(flows, (lane + 3) * values + year));
                var (even, odd) = (Avx.UnpackLow(a, b), Avx.UnpackHigh(a, b));
                var (evenBelow, oddBelow) = (Avx.UnpackLow(c, d), Avx.UnpackHigh(c, d));
                var to = byYear[(year * width + lane)..];
                Avx.Permute2x128(even, evenBelow, 0x20).CopyTo(to);
                Avx.Permute2x128(odd, oddBelow, 0x20).CopyTo(to[width..]);
                Avx.Permute2x128(even, evenBelow, 0x31).CopyTo(to[(2 * width)..]);
                Avx.Permute2x128(odd, oddBelow, 0x31).CopyTo(to[(3 * width)..]);
            }
        }
        for (var lane = 0; lane < width; lane++)
        {
            for (var year = whole; year < values; year++) byYear[year * width + lane] = flows[lane * values + year];
        }
    }

    private static Vector256<double> Four(ReadOnlySpan<double> values, int at) => Vector256.Create(values.Slice(at, 4));

    /// <summary>The factor v = 1/(1 + r) of every lane; 0 where it has to be found another way.</summary>
    private static TLanes NewtonInLanes<TLanes>(ReadOnlySpan<double> byYear, int values)
        where TLanes : struct, ILanes<TLanes>
    {
        var (single, v) = StartInLanes<TLanes>(byYear, values);
        var settled = TLanes.Zero;
        for (var step = 0; step < MostQuickSteps; step++)
        {
            TLanes value = TLanes.Zero, slope = TLanes.Zero, bend = TLanes.Zero;
            for (var at = (values - 1) * TLanes.Width; at >= 0; at -= TLanes.Width)
            {
                bend = TLanes.MultiplyAdd(bend, v, slope);
                slope = TLanes.MultiplyAdd(slope, v, value);
                value = TLanes.MultiplyAdd(value, v, TLanes.Load(byYear[at..]));
            }
            var change = value * slope / ((slope * slope) - (value * bend));
            v -= change;
            settled |= TLanes.LessThan(TLanes.Abs(change), v * TLanes.Of(Settled));
            if (TLanes.All(settled | TLanes.Not(single))) break;
        }
        return v & settled & single;
    }

    /// <summary>Which lanes have exactly one sign change, and the same first guess that one flow alone gets.</summary>
    private static (TLanes Single, TLanes Factor) StartInLanes<TLanes>(ReadOnlySpan<double> byYear, int values)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes changes = TLanes.Zero, last = TLanes.Zero, paid = TLanes.Zero, received = TLanes.Zero, paidYears = TLanes.Zero, receivedYears = TLanes.Zero;
        for (var year = 0; year < values; year++)
        {
            var amount = TLanes.Load(byYear[(year * TLanes.Width)..]);
            changes += TLanes.LessThan(last * amount, TLanes.Zero) & TLanes.Of(1);
            // A 0 keeps the sign before it; the size does not matter, only that products cannot vanish.
            last = TLanes.Select(TLanes.Equal(amount, TLanes.Zero), last, TLanes.CopySign(TLanes.Of(1), amount));
            var (plus, minus) = (TLanes.Max(amount, TLanes.Zero), TLanes.Max(TLanes.Zero - amount, TLanes.Zero));
            received += plus;
            paid += minus;
            receivedYears = TLanes.MultiplyAdd(plus, TLanes.Of(year), receivedYears);
            paidYears = TLanes.MultiplyAdd(minus, TLanes.Of(year), paidYears);
        }
        var years = receivedYears / received - paidYears / paid;
        var growth = ((received / paid) - (paid / received)) / (TLanes.Of(2) * years);
        var factor = TLanes.Select(TLanes.LessThan(growth, TLanes.Zero), TLanes.Of(1) - growth, TLanes.Of(1) / (TLanes.Of(1) + growth));
        return (TLanes.Equal(changes, TLanes.Of(1)), factor);
    }

    private static void SolveFully(ReadOnlySpan<double> flow, int start, out double rate, out SolveEnd end)
    {
        for (var i = 0; i < flow.Length; i++)
        {
            if (!double.IsFinite(flow[i])) throw Throw.NotFinite(flow[i], start + i);
        }
        var result = Solve(flow.ToArray(), WholeYears(flow.Length), isReal: false);
        end = result.End;
        rate = end == SolveEnd.Root ? result.Roots[0].PerYear : 0;
    }
}
