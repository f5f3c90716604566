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
}
