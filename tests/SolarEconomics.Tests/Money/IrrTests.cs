using CsCheck;

namespace SolarEconomics.Tests;

public sealed class IrrTests
{
    [Fact]
    public void Irr_of_minus_100_then_110_is_10_percent() => Assert.Equal(0.10, TimeValue.Irr([-100, 110]), 12);

    [Fact]
    public void Both_rates_of_a_flow_built_from_10_and_40_percent_are_found()
    {
        // By hand: -(v·1.1 - 1)(v·1.4 - 1)·100 with v = 1/(1+r) is -100 + 250 v - 154 v².
        Assert.False(TimeValue.TryIrr([-100, 250, -154], out var result));
        Assert.Equal(SolveEnd.SeveralRoots, result.End);
        Assert.Equal(0.10, result.Roots[0].PerYear, 10);
        Assert.Equal(0.40, result.Roots[1].PerYear, 10);
        Assert.Equal(2, result.SignChanges);
    }

    [Fact]
    public void A_rate_that_only_touches_zero_stands_once()
    {
        // By hand: -(12 v - 10)² is -100 + 240 v - 144 v²: the value is 0 at 20 % and negative on both sides.
        Assert.True(TimeValue.TryIrr([-100, 240, -144], out var result));
        Assert.Equal(0.20, Assert.Single(result.Roots).PerYear, 7);
    }

    [Fact]
    public void Two_sign_changes_without_a_rate_are_told_apart_from_none()
    {
        Assert.False(TimeValue.TryIrr([-100, 100, -100], out var without));
        Assert.Equal(SolveEnd.NoRealRoot, without.End);
        Assert.False(TimeValue.TryIrr([10, 20, 0], out var none));
        Assert.Equal(SolveEnd.NoSignChange, none.End);
        Assert.Empty(none.Roots);
    }

    [Fact]
    public void Every_root_that_a_flow_was_built_from_is_found() =>
        // Property, against the construction: p(v) = ∏ (1 - (1 + rᵢ) v) has exactly the rates rᵢ. Roots a whole 4 % apart or more.
        Gen.Int[-20, 40].Array[1, 6].Sample(steps =>
        {
            var rates = steps.Distinct().Order().Select(s => s * 0.04).Where(r => r > -0.9).ToArray();
            double[] flow = [-100];
            foreach (var rate in rates) flow = Times(flow, -(1 + rate));
            TimeValue.TryIrr(flow, out var result);
            Assert.Equal(rates.Length, result.Roots.Count);
            for (var i = 0; i < rates.Length; i++) Assert.Equal(rates[i], result.Roots[i].PerYear, 6);
        });

    private static double[] Times(double[] flow, double slope)
    {
        var product = new double[flow.Length + 1];
        for (var i = 0; i < flow.Length; i++)
        {
            product[i] += flow[i];
            product[i + 1] += flow[i] * slope;
        }
        return product;
    }
}
