using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>The day of a battery that nobody read: by hand and by trying whole kWh. A linear program holds it in the tests of the solvers; no published table is known.</summary>
public class BatteryDayTests
{
    private static double Value(double[] cost, double[] worth, double room, double most, double share, out double[] charge, out double[] discharge)
    {
        (charge, discharge) = (new double[cost.Length], new double[cost.Length]);
        BatteryDay.Lay(0, cost.Length, room, most, share, cost, worth, charge, discharge);
        return discharge.Zip(worth, (kwh, w) => kwh * w).Sum() - charge.Zip(cost, (kwh, c) => kwh * c).Sum();
    }

    [Fact]
    public void It_charges_in_the_cheapest_hours_and_discharges_in_the_dearest()
    {
        // By hand: 3 kWh at most, 2 an hour: in at 0.10 (2) and 0.20 (1), out at 0.40 (2) and 0.30 (1).
        Assert.Equal((0.80 + 0.30) - (0.20 + 0.20), Value([0.10, 0.20, 0.30, 0.40], [0.10, 0.20, 0.30, 0.40], 2, 3, 0.75, out var charge, out var discharge), 9);
        Assert.Equal([2.0, 1, 0, 0], charge);
        Assert.Equal([0.0, 0, 1, 2], discharge);
    }

    [Fact]
    public void At_its_worst_it_charges_dear_discharges_cheap_and_loses_what_it_can()
    {
        // By hand: 4 kWh in at 0.40 (2) and 0.30 (2), of which 3 come out at 0.10 (2) and 0.20 (1).
        Assert.Equal(-((0.80 + 0.60) - (0.20 + 0.20)), -Value([-0.10, -0.20, -0.30, -0.40], [-0.10, -0.20, -0.30, -0.40], 2, 4, 0.75, out _, out var discharge), 9);
        Assert.Equal(3, discharge.Sum(), 9);
    }

    [Fact]
    public void At_one_price_it_does_nothing() => Assert.Equal(0, Value([0.3, 0.3], [0.3, 0.3], 2, 4, 0.75, out _, out _), 12);

    [Fact]
    public void No_other_day_is_worth_more() =>
        Gen.Select(Gen.Double[-0.4, 0.4].Array[3], Gen.Double[-0.4, 0.4].Array[3], Gen.Int[1, 6]).Sample((cost, worth, most) =>
        {
            var best = 0.0;
            foreach (var c in Threes())
                foreach (var d in Threes())
                {
                    if (c.Sum() > most || d.Sum() > c.Sum() || d.Sum() < 0.5 * c.Sum()) continue;
                    best = Math.Max(best, d.Zip(worth, (kwh, w) => kwh * w).Sum() - c.Zip(cost, (kwh, p) => kwh * p).Sum());
                }
            // Whole kWh of a room of 2 hold the corners but those of half a kWh, which may be worth more still.
            Assert.True(Value(cost, worth, 2, most, 0.5, out var charge, out var discharge) >= best - 1e-9);
            Assert.True(discharge.Sum() <= charge.Sum() + 1e-9 && discharge.Sum() >= (0.5 * charge.Sum()) - 1e-9 && charge.Sum() <= most + 1e-9);
            Assert.All(charge.Concat(discharge), kwh => Assert.InRange(kwh, 0, 2));
        });

    private static IEnumerable<int[]> Threes() =>
        from a in Enumerable.Range(0, 3)
        from b in Enumerable.Range(0, 3)
        from c in Enumerable.Range(0, 3)
        select (int[])[a, b, c];
}
