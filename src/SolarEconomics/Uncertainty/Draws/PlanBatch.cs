using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>Net present values of a batch of draws of a yearly plan, by one loop after the other over memory that stays.</summary>
internal sealed class PlanBatch<TWords, TLanes>(YearlyPlan plan, double[,]? root, ulong seed)
    where TWords : struct, IWords<TWords, TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    private const int Draws = ScoreBatch<TWords, TLanes>.Draws;

    /// <summary>Streams of scores: the numbers common to all years, and each year's weather.</summary>
    private const uint Common = 0;
    private const uint Weather = 1;

    private readonly ScoreBatch<TWords, TLanes> _scores = new();
    private readonly double[] _investment = new double[Draws];
    private readonly double[] _present = new double[Draws];
    private readonly double[] _ratio = new double[Draws];
    private readonly double[] _power = new double[Draws];
    private readonly double[] _sum = new double[Draws];

    /// <summary>The values of the draws from a first one on, until the next call.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal ReadOnlySpan<double> Npv(ulong first)
    {
        _scores.Fill(first, 0, Common, seed);
        DrawNumbers();
        if (plan.WeatherSd > 0) SumWithWeather(first);
        else SumPowers();
        for (var at = 0; at < Draws; at += TLanes.Width)
            ((Lane(_present, at) * Lane(_sum, at)) - Lane(_investment, at)).CopyTo(_sum.AsSpan(at));
        return _sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Lane(ReadOnlySpan<double> values, int at) => TLanes.Load(values.Slice(at, TLanes.Width));

    /// <summary>The numbers common to all years, and the ratio from year to year.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void DrawNumbers()
    {
        var perYear = TLanes.Of(1 / (1 + plan.DiscountRate));
        var one = TLanes.Of(1);
        for (var at = 0; at < Draws; at += TLanes.Width)
        {
            var (a, b, c, d) = (Lane(_scores.Score(0), at), Lane(_scores.Score(1), at), Lane(_scores.Score(2), at), Lane(_scores.Score(3), at));
            if (root is not null) (a, b, c, d) = Correlate(root, a, b, c, d);
            Value(plan.Investment, a).CopyTo(_investment.AsSpan(at));
            (Value(plan.YearlyValue, b) * perYear).CopyTo(_present.AsSpan(at));
            ((one + Value(plan.Growth, c)) * (one - Value(plan.Ageing, d)) * perYear).CopyTo(_ratio.AsSpan(at));
        }
    }

    /// <summary>Σ (1 + w zₜ) qᵗ⁻¹ by a running product: no power, no table of draws by years.</summary>
    private void SumWithWeather(ulong first)
    {
        Array.Clear(_sum);
        Array.Fill(_power, 1);
        for (var (year, block) = (0, 0u); year < plan.Years; year += 4, block++)
        {
            _scores.Fill(first, block, Weather, seed);
            AddYears(Math.Min(4, plan.Years - year));
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private void AddYears(int years)
    {
        var (one, spread) = (TLanes.Of(1), TLanes.Of(plan.WeatherSd));
        Span<double> sums = _sum, powers = _power, ratios = _ratio;
        for (var year = 0; year < years; year++)
        {
            var scores = _scores.Score(year);
            for (var at = 0; at < Draws; at += TLanes.Width)
            {
                var power = Lane(powers, at);
                TLanes.MultiplyAdd(TLanes.MultiplyAdd(spread, Lane(scores, at), one), power, Lane(sums, at)).CopyTo(sums.Slice(at, TLanes.Width));
                (power * Lane(ratios, at)).CopyTo(powers.Slice(at, TLanes.Width));
            }
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private void SumPowers()
    {
        for (var at = 0; at < Draws; at += TLanes.Width) SumOfPowers(Lane(_ratio, at), plan.Years).CopyTo(_sum.AsSpan(at));
    }

    /// <summary>1 + q + … + qⁿ⁻¹ by doubling: S₂ₖ = Sₖ (1 + qᵏ), Sₖ₊₁ = Sₖ + qᵏ. Exact where q is 1, unlike (1 − qⁿ)/(1 − q).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes SumOfPowers(TLanes ratio, int count)
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
    private static TLanes Value(IDistribution input, TLanes score) =>
        input is NormalDistribution normal ? TLanes.MultiplyAdd(TLanes.Of(normal.Sd), score, TLanes.Of(normal.Mean)) : LookUp(input, score);

    private static TLanes LookUp(IDistribution input, TLanes score)
    {
        Span<double> values = stackalloc double[TLanes.Width];
        score.CopyTo(values);
        for (var lane = 0; lane < values.Length; lane++) values[lane] = input.AtScore(values[lane]);
        return TLanes.Load(values);
    }

    private static (TLanes A, TLanes B, TLanes C, TLanes D) Correlate(double[,] root, TLanes a, TLanes b, TLanes c, TLanes d)
    {
        TLanes Of(int row, int column) => TLanes.Of(root[row, column]);
        return (
            a,
            (Of(1, 0) * a) + (Of(1, 1) * b),
            (Of(2, 0) * a) + (Of(2, 1) * b) + (Of(2, 2) * c),
            (Of(3, 0) * a) + (Of(3, 1) * b) + (Of(3, 2) * c) + (Of(3, 3) * d));
    }
}
