using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>Batches against the one-by-one solver, which is checked against published rows; all vector widths agree.</summary>
public sealed class IrrOfEachTests
{
    private static readonly Gen<double[][]> Flows =
        from years in Gen.Int[1, 30]
        from flows in Gen.Select(Gen.Double[100, 1e4], Gen.Double[-50, 2e3].Array[years], (cost, later) => (double[])[-cost, .. later]).Array[0, 40]
        select flows;

    [Fact]
    public void A_batch_gives_each_flow_what_it_gets_alone() => Flows.Sample(flows =>
    {
        var values = flows.Length == 0 ? 1 : flows[0].Length;
        var batch = TimeValue.IrrOfEach([.. flows.SelectMany(f => f)], values);
        Assert.Equal(flows.Length, batch.Count);
        for (var i = 0; i < flows.Length; i++)
        {
            var single = TimeValue.TryIrr(flows[i], out var alone);
            Assert.Equal(alone.End, batch.Ends[i]);
            Assert.Equal(single, batch.TryRate(i, out var rate));
            if (single) Assert.True(Math.Abs(rate - alone.Roots[0].PerYear) <= 1e-10 * (1 + Math.Abs(rate)));
        }
        Assert.Equal(batch.Ends.Count(e => e == SolveEnd.Root), batch.Solved);
    });

    [Fact]
    public void Lanes_of_eight_and_of_four_agree_with_one_by_one() => Flows.Sample(flows =>
    {
        if (flows.Length == 0) return;
        double[] all = [.. flows.SelectMany(f => f)];
        var alone = Run(RateSolver.SolveOneByOne);
        Solver[] wide = [RateSolver.SolveInLanes<Lanes4>, RateSolver.SolveInLanes<Lanes8>, RateSolver.SolveInLanes<LanesPair<Lanes4>>, RateSolver.SolveInLanes<LanesPair<Lanes8>>];
        foreach (var lanes in wide.Select(Run))
        {
            Assert.Equal(alone.Ends, lanes.Ends);
            for (var i = 0; i < flows.Length; i++) Assert.True(Math.Abs(alone.Rates[i] - lanes.Rates[i]) <= 1e-10 * (1 + Math.Abs(alone.Rates[i])));
        }

        (double[] Rates, SolveEnd[] Ends) Run(Solver solve)
        {
            var (rates, ends) = (new double[flows.Length], new SolveEnd[flows.Length]);
            solve(all, flows[0].Length, rates, ends);
            return (rates, ends);
        }
    });

    [Fact]
    public void A_number_that_is_none_is_refused_with_its_place_in_the_batch()
    {
        double[] flows = [.. Enumerable.Repeat((double[])[-100, 60, 60], 9).SelectMany(f => f)];
        flows[13] = double.NaN;
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.IrrOfEach(flows, 3));
        Assert.StartsWith("Found NaN at place 13", refused.Message);
    }

    [Fact]
    public void Values_that_are_no_whole_number_of_flows_are_refused() =>
        Assert.Equal("Found 5 values and 3 a flow, expected a whole number of flows of 1 value or more.",
            Assert.Throws<ArgumentException>(() => TimeValue.IrrOfEach([1, 2, 3, 4, 5], 3)).Message);

    private delegate void Solver(ReadOnlySpan<double> flows, int values, Span<double> rates, Span<SolveEnd> ends);
}
