using System.Globalization;
using CsCheck;
using NodaTime;
using SolarEconomics.Tests;

namespace SolarEconomics.Solvers.Tests;

/// <summary>The bound of whole bills with demand and blocks: by hand, by trying every charge as the naive twin, and as a property over random tariffs and controls.
/// No published optimum of a bill with demand is at hand.</summary>
public class BillBoundTests
{
    private static readonly LocalDate s_from = new(2025, 1, 1);

    [Fact]
    public void A_peak_is_shared_between_two_hours()
    {
        // By hand: 3 kWh wanted in hour 1 only, a battery of 1 kWh that starts empty. At 0.20 a kWh and 10 a kW: charge 1 in hour 0, import 1 and 2: 3 · 0.20 + 2 · 10.
        // Without the demand charge the same 0.60. With more battery the peak would be 1.5.
        var demand = new DemandCharge("demand", 10m, RateWindow.Always, ChargePeriod.Bill, 60);
        Assert.Equal(0.60 + 20, Least(new Battery { UsableKwh = 1 }, [0, 3], demand), 5);
        Assert.Equal(0.60 + 15, Least(new Battery { UsableKwh = 5 }, [0, 3], demand), 5);
        Assert.Equal(0.60 + 30, Least(null, [0, 3], demand), 5);
    }

    [Fact]
    public void Demand_counts_in_its_window_only_and_at_least_its_minimum()
    {
        // The window is 00:00 to 01:00, so that the hour from 01:00 costs no demand; 2.5 kW are charged at least.
        var window = RateWindow.Always with { Hours = [HourSpan.Parse("00:00-01:00")] };
        Assert.Equal(0.60 + 25, Least(null, [0, 3], new DemandCharge("demand", 10m, window, ChargePeriod.Bill, 60) { MinimumKw = 2.5m }), 5);
        Assert.Equal(0.60 + 30, Least(null, [3, 0], new DemandCharge("demand", 10m, window, ChargePeriod.Bill, 60) { MinimumKw = 2.5m }), 5);
    }

    [Fact]
    public void Dearer_blocks_are_exact_and_cheaper_ones_count_at_their_lowest_price()
    {
        // 5 kWh: 2 at 0.20 and 3 at 0.50 are 1.90. The other way about: 2 at 0.50 and 3 at 0.20 are 1.60, of which the bound knows 5 · 0.20.
        Assert.Equal(1.90, Least(null, [2, 3], Blocks(0.20m, 0.50m)), 5);
        Assert.Equal(1.00, Least(null, [2, 3], Blocks(0.50m, 0.20m)), 5);
    }

    [Fact]
    public void A_ratchet_is_remembered_in_the_next_month()
    {
        // January's 4 kW stand at half in February: 2 kW at 10, though only 1 kW is taken then.
        var demand = new DemandCharge("demand", 10m, RateWindow.Always, ChargePeriod.Bill, 60) { RatchetShare = 0.5m };
        var use = new double[24 * 59];
        (use[5], use[24 * 40]) = (4, 1);
        Assert.Equal((5 * 0.20) + 40 + 20, Least(null, use, demand), 5);
    }

    [Fact]
    public void Each_control_is_told_its_share_of_what_the_bill_could_save()
    {
        // By hand: at rest 0.60 + 30. Reachable: 0.60 + 20. Shaving at 2.5 kW gets half of it.
        var plan = Plan(2, new DemandCharge("demand", 10m, RateWindow.Always, ChargePeriod.Bill, 60));
        var half = Control.Of("half ahead", now => now.Interval == 0 ? Order.Charge(0.5) : now.Cover());
        var judged = BestPossible.Judge(new EnergySystem { Battery = new Battery { UsableKwh = 1 } }, Conditions([0, 3]), [half], new BestPossibleOptions { Bills = plan });
        Assert.Equal(0.5, judged.Controls[0].Share!.Value, 6);
        var said = judged.Say(CultureInfo.InvariantCulture);
        Assert.Equal(["half ahead", "25.60", "30.60", "20.60", "50.0 %"], said.Tables[0].Rows[0]);
        Assert.Contains(said.Notes, n => n.StartsWith("Whole bills: fixed charges, blocks and demand are in both.", StringComparison.Ordinal));
    }

    [Fact]
    public void Whole_numbers_give_the_optimum_of_trying_every_charge() =>
        Gen.Select(Gen.Int[0, 4].Array[6], Gen.Int[0, 3], Gen.Int[1, 2], Gen.Int[0, 300]).Sample((use, usable, power, perKw) =>
        {
            var battery = new Battery { UsableKwh = usable, MostChargeKw = power, MostDischargeKw = power };
            var least = Least(battery, [.. use.Select(u => (double)u)], new DemandCharge("demand", perKw / 100m, RateWindow.Always, ChargePeriod.Bill, 60), Blocks(0.20m, 0.50m));
            var naive = Naive(use, usable, power, perKw / 100.0);
            // Whole kWh are a part of what is possible, so that the linear program may do better, by less than half a kWh of each kind.
            Assert.True(least <= naive + 1e-5, $"bound {least}, whole kWh {naive}");
            Assert.True(least >= naive - (perKw / 100.0) - 0.3 - 1e-5, $"bound {least}, whole kWh {naive}");
        }, iter: 200, threads: 1);

    /// <param name="seed">A plant whose limits and efficiencies lie so far apart that the solver lost its way; none for new plants in each run.</param>
    /// <param name="cases">How many.</param>
    [Theory]
    [InlineData(null, 600), InlineData("bF10DrYS0gT1", 1), InlineData("6TfvdAucJ392", 1)]
    public void The_bound_of_a_bill_is_never_beaten_by_any_control_on_random_plants_and_tariffs(string? seed, int cases) =>
        Gen.Select(RandomPlant.Any, AnyTariff, Gen.Int[0, 2]).Sample((plant, tariff, split) =>
        {
            var time = plant.Conditions.Time;
            var options = new BillingOptions { Periods = split == 0 ? null : [new DateSpan(s_from.PlusDays(-1), s_from.PlusDays(split)), new DateSpan(s_from.PlusDays(split), s_from.PlusDays(9))] };
            var plan = TariffHistory.Of(tariff).On(new IntervalGrid(time.StartOf(0), time.StartOf(1) - time.StartOf(0), time.Count), Made.Dublin, options);
            var conditions = plant.Conditions.PricedBy(plan);
            foreach (var control in new[] { plant.Control, Control.SelfConsumption, Control.Of("rest", _ => Order.Rest), new PeakShaving(1), new TimeShift() })
            {
                var cost = BestPossible.Of(plant.System.Run(conditions, control), new BestPossibleOptions { Bills = plan, MostIntervals = 10 });
                Assert.True(cost.LeastCost <= cost.Cost + (1e-5 * (1 + Math.Abs(cost.Cost))), $"{control.Name}: bill {cost.Cost}, bound {cost.LeastCost}");
            }
        }, seed: seed, iter: cases, threads: 1);

    [Fact]
    public void A_tariff_that_no_linear_program_can_say_is_named_and_so_are_other_intervals()
    {
        var levy = Plan(2, new PercentCharge("levy", 0.1m, []));
        var run = new EnergySystem().Run(Conditions([1, 1]), Control.SelfConsumption);
        Assert.StartsWith("No bound: \"test\" has \"levy\" (PercentCharge), which no linear program can say", Assert.Throws<ArgumentException>(() =>
            BestPossible.Of(run, new BestPossibleOptions { Bills = levy })).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found a tariff laid on 3 intervals", Assert.Throws<ArgumentException>(() =>
            BestPossible.Of(run, new BestPossibleOptions { Bills = Plan(3) })).Message, StringComparison.Ordinal);
    }

    private static readonly Gen<Tariff> AnyTariff =
        from prices in Gen.Int[-5, 60].Array[4]
        from edges in Gen.Int[1, 8].Array[2]
        from demand in Gen.Select(Gen.Int[0, 800].Array[2], Gen.Int[0, 3], Gen.Bool, Gen.Bool)
        from extras in Gen.Select(Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[0, 40])
        select Sheet(
            EnergyOf("import", EnergySide.Import, prices[0], prices[1], edges[0], (BlockPeriod)(extras.Item2 == 0 ? 0 : 1)),
            EnergyOf("export", EnergySide.Export, prices[2], prices[3], edges[1], BlockPeriod.Bill),
            new DemandCharge("demand", demand.Item1[0] / 100m, RateWindow.Always with { Hours = [demand.Item3 ? HourSpan.Parse("06:00-20:00") : HourSpan.WholeDay] }, ChargePeriod.Bill, 60)
            {
                MinimumKw = demand.Item2, EachDay = demand.Item4, RatchetShare = extras.Item1 / 4m, Steps = extras.Item2 == 2 ? [new DemandStep(2, demand.Item1[0] / 100m), new DemandStep(null, demand.Item1[1] / 100m)] : [],
            },
            new SupplyCharge("supply", extras.Item3 / 100m, ChargePeriod.Day), new MinimumBill("minimum", extras.Item1));

    private static EnergyPart EnergyOf(string name, EnergySide side, int first, int second, int edge, BlockPeriod per) =>
        new(name, side, [EnergyRate.InBlocks(name, new RateBlocks([new RateBlock(edge, first / 100m), new RateBlock(null, second / 100m)], per))]);

    private static EnergyPart Blocks(decimal first, decimal second) =>
        new("import", EnergySide.Import, [EnergyRate.InBlocks("import", new RateBlocks([new RateBlock(2, first), new RateBlock(null, second)]))]);

    /// <summary>The bound with one bill for all, nothing rounded; at 0.20 a kWh unless a part says otherwise.</summary>
    private static double Least(Battery? battery, double[] use, params TariffPart[] parts)
    {
        var plan = Plan(use.Length, parts);
        return BestPossible.Of(new EnergySystem { Battery = battery }.Run(Conditions(use), Control.Of("rest", _ => Order.Rest)), new BestPossibleOptions { Bills = plan }).LeastCost;
    }

    private static BillingPlan Plan(int hours, params TariffPart[] parts) =>
        TariffHistory.Of(Sheet(parts.Any(p => p is EnergyPart) ? parts : [new EnergyPart("import", EnergySide.Import, [EnergyRate.Flat("import", 0.20m)]), .. parts]))
            .On(new IntervalGrid(Instant.FromUtc(2025, 1, 1, 0, 0), Duration.FromHours(1), hours), Made.Dublin,
                new BillingOptions { Periods = hours <= 24 ? [new DateSpan(s_from, s_from.PlusDays(1))] : null });

    private static Tariff Sheet(params TariffPart[] parts) => Tariff.Named("test", "EUR", s_from.PlusDays(-9)) with { Parts = parts, Rounding = new BillRounding(Place: RoundingPlace.Nowhere) };

    private static Conditions Conditions(double[] use) => new(LoadSeries.Of(Made.HoursOf(use.Length), use));

    [Fact]
    public void A_year_s_bills_are_told_first_while_the_bound_is_at_work()
    {
        // By hand: 1 kWh in each of the 4,799 hours of 200 days (the clock goes forward once) at 0.20 is 959.80; a peak of 1 kW at 10 in each of two bills is 20; nothing is stored.
        var use = Enumerable.Repeat(1.0, (24 * 200) - 1).ToArray();
        var plan = TariffHistory.Of(Sheet(new EnergyPart("import", EnergySide.Import, [EnergyRate.Flat("import", 0.20m)]), new DemandCharge("demand", 10m, RateWindow.Always, ChargePeriod.Bill, 60)))
            .On(new IntervalGrid(Instant.FromUtc(2025, 1, 1, 0, 0), Duration.FromHours(1), use.Length), Made.Dublin,
                new BillingOptions { Periods = [.. Enumerable.Range(0, 2).Select(k => new DateSpan(s_from.PlusDays(100 * k), s_from.PlusDays(100 * (k + 1))))] });
        using var stop = new CancellationTokenSource();
        var told = new List<IFinding>();
        using (WorkProgress.Around(new WorkListener(null) { Preview = answer => { told.Add(answer); stop.Cancel(); } }))
        {
            Assert.ThrowsAny<OperationCanceledException>(() => BestPossible.Judge(new EnergySystem { Battery = new Battery { UsableKwh = 1 } }, Conditions(use),
                [Control.SelfConsumption, Control.Of("rest", _ => Order.Rest)], new BestPossibleOptions { Bills = plan }, null, stop.Token));
        }
        var said = Assert.Single(told).Say(CultureInfo.InvariantCulture);
        Assert.Equal("979.80", said.Figure);
        Assert.Equal("is a preview: so much, in the currency of the prices, come the whole bills to with \"self-consumption first\", as much as with the battery at rest, the least of these controls. " +
            "What was possible at best is being worked out.", said.Words);
        Assert.Equal(["self-consumption first", "979.80", "979.80"], said.Tables[0].Rows[0]);
    }

    /// <summary>Least bill over whole kWh of charge, by trying them all; the end may be as full as it likes.</summary>
    private static double Naive(int[] use, int usable, int power, double perKw)
    {
        var best = double.PositiveInfinity;
        Try(0, 0, 0, 0);
        return best;

        void Try(int i, int stored, int total, int peak)
        {
            if (i == use.Length)
            {
                best = Math.Min(best, (0.20 * Math.Min(2, total)) + (0.50 * Math.Max(0, total - 2)) + (perKw * peak));
                return;
            }
            for (var after = Math.Max(0, stored - power); after <= Math.Min(usable, stored + power); after++)
            {
                var import = use[i] + after - stored;
                if (import >= 0) Try(i + 1, after, total + import, Math.Max(peak, import));
            }
        }
    }
}
