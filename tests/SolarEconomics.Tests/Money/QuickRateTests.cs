using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>The quick search for a rate: that it serves ordinary flows itself, since the thorough one behind it would hide it if it did not.</summary>
public sealed class QuickRateTests
{
    private static readonly Gen<double[]> Ordinary =
        from years in Gen.Int[3, 30]
        from cost in Gen.Double[1000, 20_000]
        from share in Gen.Double[0.6, 3]
        from weights in Gen.Double[0.5, 1.5].Array[years]
        select (double[])[-cost, .. weights.Select(w => w * cost * share / years)];

    [Fact]
    public void An_ordinary_flow_is_settled_by_the_quick_search() => Ordinary.Sample(flow =>
    {
        Assert.True(RateSolver.TryNewton(flow, out var quick));
        Assert.Equal(TimeValue.Irr(flow), quick, 1e-10 * (1 + Math.Abs(quick)));
    });

    [Fact]
    public void Savings_first_and_a_cost_last_are_settled_too()
    {
        Assert.True(RateSolver.TryNewton([0, 100, 0, -121, 0], out var rate));
        Assert.Equal(0.10, rate, 12);
    }

    [Fact]
    public void A_rate_far_below_0_is_settled()
    {
        Assert.True(RateSolver.TryNewton([-1000, 50, 50], out var rate));
        // By hand: 1000 = 50 v + 50 v², v = (-1 + √81)/2 = 4.
        Assert.Equal(-0.75, rate, 12);
    }

    [Theory]
    [InlineData(new double[] { 100, 50, 20 })]
    [InlineData(new double[] { -100, 250, -154 })]
    [InlineData(new double[] { -100, double.NaN, 200 })]
    [InlineData(new double[] { 0, 0, 0 })]
    public void What_has_no_single_sign_change_is_left_to_the_thorough_search(double[] flow)
    {
        Assert.False(RateSolver.TryNewton(flow, out var rate));
        Assert.Equal(0, rate);
    }

    private static readonly Solver[] EverySolver =
    [
        RateSolver.SolveOneByOne, RateSolver.SolveInLanes<Lanes1>, RateSolver.SolveInLanes<Lanes4>, RateSolver.SolveInLanes<Lanes8>,
        RateSolver.SolveInLanes<LanesPair<Lanes4>>, RateSolver.SolveInLanes<LanesPair<Lanes8>>, RateSolver.SolveEach,
    ];

    [Fact]
    public void Vectors_settle_ordinary_flows_without_the_thorough_search()
    {
        // The thorough search writes how it ended; the quick one leaves the end as it was, so a mark put there shows who answered.
        var flows = Enumerable.Range(0, 24).Select(i => (double[])[-1000 - i, 0, 150 + (10 * i), 400, 300, 500]).ToList();
        double[] all = [.. flows.SelectMany(f => f)];
        foreach (var solve in EverySolver)
        {
            var (rates, ends) = (new double[flows.Count], Enumerable.Repeat(SolveEnd.NotConverged, flows.Count).ToArray());
            solve(all, 6, rates, ends);
            Assert.All(ends, end => Assert.Equal(SolveEnd.NotConverged, end));
            for (var i = 0; i < flows.Count; i++) Assert.Equal(TimeValue.Irr(flows[i]), rates[i], 10);
        }
    }

    [Fact]
    public void Vectors_hand_over_what_has_no_single_rate()
    {
        double[] all = [.. Enumerable.Repeat((double[])[-100, 250, -154], 33).SelectMany(f => f)];
        foreach (var solve in EverySolver)
        {
            var (rates, ends) = (new double[33], new SolveEnd[33]);
            solve(all, 3, rates, ends);
            Assert.All(ends, end => Assert.Equal(SolveEnd.SeveralRoots, end));
            Assert.All(rates, rate => Assert.Equal(0, rate));
        }
    }

    [Theory]
    [InlineData(new double[] { -1000, 600, 600 }, 12)]
    [InlineData(new double[] { -1000, 50, 50 }, 16)]
    [InlineData(new double[] { -10_000, 0, 0, 0, 0, 0, 0, 0, 0, 0, 30_000 }, 30)]
    public void A_plain_flow_takes_few_steps(double[] flow, int most)
    {
        Assert.True(TimeValue.TryIrr(flow, out var result));
        Assert.InRange(result.Iterations, 1, most);
    }

    [Fact]
    public void The_residual_is_the_value_left_at_the_rate()
    {
        double[] flow = [-1_234_567.89, .. Enumerable.Repeat(98_765.4321, 25)];
        TimeValue.TryIrr(flow, out var result);
        Assert.Equal(Math.Abs(flow.Select((a, year) => a * Math.Pow(1 + result.Roots[0].PerYear, -year)).Sum()), result.Residual, 12);
    }

    [Fact]
    public void A_value_without_end_is_said() =>
        Assert.StartsWith("Found no finite value at -100 % a year", Assert.Throws<OverflowException>(() => TimeValue.Npv([-1, .. new double[400], 1], -0.999999)).Message);

    private delegate void Solver(ReadOnlySpan<double> flows, int values, Span<double> rates, Span<SolveEnd> ends);
}
