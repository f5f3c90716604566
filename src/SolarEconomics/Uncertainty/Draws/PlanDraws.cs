using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace SolarEconomics;

/// <summary>Draws of a yearly plan, a draw to a lane: eight, four or one at a time, each the same bits.</summary>
internal static class PlanDraws
{
    /// <summary>Streams of scores: the numbers common to all years, and each year's weather.</summary>
    private const uint Common = 0;
    private const uint Weather = 1;

    /// <summary>Names of the inputs in the order of their scores.</summary>
    internal static readonly string[] Names = [nameof(YearlyPlan.Investment), nameof(YearlyPlan.YearlyValue), nameof(YearlyPlan.Growth), nameof(YearlyPlan.Ageing)];

    /// <summary>Fills net present values from a first draw on, with the widest vectors that the processor has.</summary>
    internal static void Fill(YearlyPlan plan, double[,]? root, ulong seed, int first, Span<double> npv)
    {
        // Emulated wide vectors are slower than none: only what the processor has.
        if (Vector512.IsHardwareAccelerated) Fill<Words8, Lanes8>(plan, root, seed, first, npv);
        else if (Vector256.IsHardwareAccelerated) Fill<Words4, Lanes4>(plan, root, seed, first, npv);
        else Fill<Words1, Lanes1>(plan, root, seed, first, npv);
    }

    internal static void Fill<TWords, TLanes>(YearlyPlan plan, double[,]? root, ulong seed, int first, Span<double> npv)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        IDistribution[] inputs = [plan.Investment, plan.YearlyValue, plan.Growth, plan.Ageing];
        var numbers = new PlanNumbers(plan.DiscountRate, plan.WeatherSd, plan.Years);
        var width = TLanes.Width;
        var whole = npv.Length - (npv.Length % width);
        for (var at = 0; at < whole; at += width)
            Npv<TWords, TLanes>(inputs, root, numbers, seed, (ulong)(first + at)).CopyTo(npv.Slice(at, width));
        if (whole < npv.Length) Fill<Words1, Lanes1>(plan, root, seed, first + whole, npv[whole..]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static TLanes Npv<TWords, TLanes>(IDistribution[] inputs, double[,]? root, in PlanNumbers numbers, ulong seed, ulong draw)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var (a, b, c, d) = NormalScores.Four<TWords, TLanes>(draw, 0, Common, seed);
        if (root is not null) (a, b, c, d) = Correlate(root, a, b, c, d);
        var investment = Value(inputs[0], a);
        var growth = Value(inputs[2], c);
        var ageing = Value(inputs[3], d);
        var perYear = TLanes.Of(1 / (1 + numbers.DiscountRate));
        var present = Value(inputs[1], b) * perYear;
        var ratio = (TLanes.Of(1) + growth) * (TLanes.Of(1) - ageing) * perYear;
        var sum = numbers.WeatherSd > 0
            ? present * WithWeather<TWords, TLanes>(ratio, numbers, seed, draw)
            : present * SumOfPowers(ratio, numbers.Years);
        return sum - investment;
    }

    /// <summary>Σ (1 + w zₜ) qᵗ⁻¹ by a running product: no power, no table of draws by years.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes WithWeather<TWords, TLanes>(TLanes ratio, in PlanNumbers numbers, ulong seed, ulong draw)
        where TWords : struct, IWords<TWords, TLanes>
        where TLanes : struct, ILanes<TLanes>
    {
        var one = TLanes.Of(1);
        var spread = TLanes.Of(numbers.WeatherSd);
        var (sum, power) = (TLanes.Zero, one);
        var year = 0;
        for (var block = 0u; year < numbers.Years; block++)
        {
            var (a, b, c, d) = NormalScores.Four<TWords, TLanes>(draw, block, Weather, seed);
            sum = TLanes.MultiplyAdd(TLanes.MultiplyAdd(spread, a, one), power, sum);
            power *= ratio;
            if (++year == numbers.Years) break;
            sum = TLanes.MultiplyAdd(TLanes.MultiplyAdd(spread, b, one), power, sum);
            power *= ratio;
            if (++year == numbers.Years) break;
            sum = TLanes.MultiplyAdd(TLanes.MultiplyAdd(spread, c, one), power, sum);
            power *= ratio;
            if (++year == numbers.Years) break;
            sum = TLanes.MultiplyAdd(TLanes.MultiplyAdd(spread, d, one), power, sum);
            power *= ratio;
            year++;
        }
        return sum;
    }

    /// <summary>1 + q + … + qⁿ⁻¹ by doubling: S₂ₖ = Sₖ (1 + qᵏ), Sₖ₊₁ = Sₖ + qᵏ. Exact where q is 1, unlike (1 − qⁿ)/(1 − q).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes SumOfPowers<TLanes>(TLanes ratio, int count)
        where TLanes : struct, ILanes<TLanes>
    {
        var (sum, power) = (TLanes.Zero, TLanes.Of(1));
        for (var bit = 31 - System.Numerics.BitOperations.LeadingZeroCount((uint)count); bit >= 0; bit--)
        {
            sum = TLanes.MultiplyAdd(sum, power, sum);
            power *= power;
            if (((count >> bit) & 1) == 0) continue;
            sum += power;
            power *= ratio;
        }
        return sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Value<TLanes>(IDistribution input, TLanes score)
        where TLanes : struct, ILanes<TLanes> =>
        input is NormalDistribution normal ? TLanes.MultiplyAdd(TLanes.Of(normal.Sd), score, TLanes.Of(normal.Mean)) : LookUp(input, score);

    private static TLanes LookUp<TLanes>(IDistribution input, TLanes score)
        where TLanes : struct, ILanes<TLanes>
    {
        Span<double> values = stackalloc double[TLanes.Width];
        score.CopyTo(values);
        for (var lane = 0; lane < values.Length; lane++) values[lane] = input.AtScore(values[lane]);
        return TLanes.Load(values);
    }

    private static (TLanes A, TLanes B, TLanes C, TLanes D) Correlate<TLanes>(double[,] root, TLanes a, TLanes b, TLanes c, TLanes d)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes Of(int row, int column) => TLanes.Of(root[row, column]);
        return (
            a,
            (Of(1, 0) * a) + (Of(1, 1) * b),
            (Of(2, 0) * a) + (Of(2, 1) * b) + (Of(2, 2) * c),
            (Of(3, 0) * a) + (Of(3, 1) * b) + (Of(3, 2) * c) + (Of(3, 3) * d));
    }

    /// <summary>What is known for sure of a plan, beside the vectors in registers.</summary>
    private readonly record struct PlanNumbers(double DiscountRate, double WeatherSd, int Years);
}
