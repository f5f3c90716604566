using CsCheck;

namespace SolarEconomics.Tests;

public class AllotmentTests
{
    [Fact]
    public void The_dearest_intervals_are_filled_first()
    {
        var into = new double[3];
        var left = Allotment.Lay(5, [0, 1, 2], [3, 3, 3], [0.1, 0.3, 0.2], ascending: false, into);
        Assert.Equal([0, 3, 2], into);
        Assert.Equal(0, left);
    }

    [Fact]
    public void What_finds_no_room_is_returned() =>
        Assert.Equal(4, Allotment.Lay(10, [0, 1], [3, 3], [1, 2], ascending: true, new double[2]));

    [Fact]
    public void No_other_way_of_laying_the_total_is_worth_more() =>
        Gen.Select(Gen.Double[0, 5].Array[6], Gen.Double[0, 1].Array[6], Gen.Double[0, 1].Array[6]).Sample((room, worth, shares) =>
        {
            var total = room.Zip(shares, (r, s) => r * s).Sum();
            var best = new double[6];
            Allotment.Lay(total, Enumerable.Range(0, 6).ToArray(), room, worth, ascending: false, best);
            var other = room.Zip(shares, (r, s) => r * s).Zip(worth, (k, w) => k * w).Sum();
            Assert.True(best.Zip(worth, (k, w) => k * w).Sum() >= other - 1e-9);
        });

    [Fact]
    public void Between_two_limits_more_is_laid_only_where_it_is_worth_something()
    {
        // By hand: room for 2 each; of 1 to 5 kWh the two worth having are laid, and nothing where a kWh costs.
        var into = new double[3];
        Allotment.LayBetween(1, 5, [0, 1, 2], [2, 2, 2], [0.3, -0.1, 0.2], into);
        Assert.Equal([2.0, 0, 2], into);
        // The lower limit is laid in any case, the dearest first.
        into = new double[3];
        Allotment.LayBetween(5, 6, [0, 1, 2], [2, 2, 2], [0.3, -0.1, 0.2], into);
        Assert.Equal([2.0, 1, 2], into);
    }

    [Fact]
    public void Nothing_else_between_two_limits_is_worth_more() =>
        Gen.Select(Gen.Double[0, 5].Array[6], Gen.Double[-1, 1].Array[6], Gen.Double[0, 1].Array[6], Gen.Double[0, 1], Gen.Double[1, 2]).Sample((room, worth, shares, below, above) =>
        {
            var other = room.Zip(shares, (r, s) => r * s).ToArray();
            var best = new double[6];
            Allotment.LayBetween(below * other.Sum(), above * other.Sum(), Enumerable.Range(0, 6).ToArray(), room, worth, best);
            Assert.InRange(best.Sum(), (below * other.Sum()) - 1e-9, (above * other.Sum()) + 1e-9);
            Assert.True(best.Zip(worth, (k, w) => k * w).Sum() >= other.Zip(worth, (k, w) => k * w).Sum() - 1e-9);
        });
}
