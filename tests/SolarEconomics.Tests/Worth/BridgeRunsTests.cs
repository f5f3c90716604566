using CsCheck;

namespace SolarEconomics.Tests;

public class BridgeRunsTests
{
    private static readonly BridgeRuns Example = BridgeExample.Runs;

    [Fact]
    public void The_worked_example_goes_from_3000_to_1600()
    {
        Assert.Equal(3_000m, Example.Start);
        Assert.Equal(1_600m, Example.End);
    }

    [Theory]
    [InlineData(new[] { 0, 1, 2 }, -300, -770, -330)]
    [InlineData(new[] { 2, 1, 0 }, -240, -560, -600)]
    public void The_parts_follow_the_order(int[] order, int lost, int exported, int price) =>
        Assert.Equal([lost, exported, price], Example.Parts(order));

    [Fact]
    public void The_Shapley_average_of_the_worked_example_is_270_665_465() =>
        Assert.Equal([-270m, -665m, -465m], Enumerable.Range(0, 3).Select(Example.Shapley));

    [Fact]
    public void Parts_sum_to_the_whole_in_every_order() => Random.Sample(values =>
    {
        var runs = new BridgeRuns(3, s => values[s]);
        foreach (var order in Orders(3))
            Assert.Equal(runs.End - runs.Start, runs.Parts(order).Sum());
    });

    [Fact]
    public void The_Shapley_average_is_the_mean_over_all_orders() => Random.Sample(values =>
    {
        // Naive: all six orders one by one.
        var runs = new BridgeRuns(3, s => values[s]);
        var orders = Orders(3).Select(runs.Parts).ToList();
        for (var i = 0; i < 3; i++)
            Assert.Equal((double)orders.Average(p => p[i]), (double)runs.Shapley(i), 5e-7);
    });

    [Fact]
    public void The_range_holds_the_part_of_every_order() => Random.Sample(values =>
    {
        var runs = new BridgeRuns(3, s => values[s]);
        for (var i = 0; i < 3; i++)
        {
            var parts = Orders(3).Select(o => runs.Parts(o)[i]).ToList();
            Assert.Equal((parts.Min(), parts.Max()), runs.Range(i));
        }
    });

    [Fact]
    public void A_correction_that_changes_nothing_has_no_part()
    {
        var runs = new BridgeRuns(3, s => BridgeExample.YearlyValue(s & 3));
        Assert.Equal(0m, runs.Shapley(2));
        Assert.Equal((0m, 0m), runs.Range(2));
    }

    [Fact]
    public void Two_corrections_that_do_the_same_share_alike()
    {
        var runs = new BridgeRuns(2, s => s == 0 ? 100 : s == 3 ? 40 : 80);
        Assert.Equal(runs.Shapley(0), runs.Shapley(1));
    }

    [Fact]
    public void The_order_of_listing_changes_nothing_of_the_Shapley_part()
    {
        var listedBackwards = new BridgeRuns(3, s => BridgeExample.YearlyValue(((s & 1) << 2) | (s & 2) | ((s & 4) >> 2)));
        Assert.Equal(Example.Shapley(0), listedBackwards.Shapley(2));
    }

    private static readonly Gen<decimal[]> Random = Gen.Int[-100_000, 100_000].Select(i => i / 100m).Array[8];

    private static IEnumerable<int[]> Orders(int n) => n == 1
        ? [[0]]
        : Orders(n - 1).SelectMany(o => Enumerable.Range(0, n).Select(at => (int[])[.. o.Take(at), n - 1, .. o.Skip(at)]));
}
