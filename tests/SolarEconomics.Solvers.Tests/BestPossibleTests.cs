using System.Globalization;
using CsCheck;
using SolarEconomics.Tests;

namespace SolarEconomics.Solvers.Tests;

/// <summary>By hand, by closed form, by dynamic programming as the naive twin, and as a property over random plants. No published optimum of a year is at hand.</summary>
public class BestPossibleTests
{
    private const int Hours = 24;

    [Fact]
    public void Two_hours_of_use_are_bought_in_the_cheap_one()
    {
        // By hand: 1 kWh used in each hour, 0.10 and 0.50 a kWh, a lossless battery of 1 kWh: 2 · 0.10.
        var run = Run(new Battery { UsableKwh = 1 }, [0, 0], [1, 1], [0.10, 0.50], [0, 0]);
        var cost = BestPossible.Of(run);
        Assert.Equal(0.60, cost.Cost, 9);
        Assert.Equal(0.20, cost.LeastCost, 6);
        Assert.Equal(0.40, cost.Gap, 6);
    }

    [Fact]
    public void Losses_decide_whether_an_hour_is_worth_shifting()
    {
        // By hand: of 1 kWh bought at 0.10 half comes back, so a kWh moved costs 0.20: worth it against 0.50, not against 0.15.
        var battery = Battery.Of(10, 0.5);
        Assert.Equal(0.10 + 0.20, BestPossible.Of(Run(battery, [0, 0], [1, 1], [0.10, 0.50], [0, 0])).LeastCost, 6);
        Assert.Equal(0.10 + 0.15, BestPossible.Of(Run(battery, [0, 0], [1, 1], [0.10, 0.15], [0, 0])).LeastCost, 6);
    }

    [Fact]
    public void A_battery_without_limits_or_losses_buys_every_kWh_at_the_lowest_price_so_far() =>
        Gen.Select(Gen.Double[0, 3].Array[Hours], Gen.Double[0.05, 0.6].Array[Hours]).Sample((use, prices) =>
        {
            var run = Run(new Battery { UsableKwh = 1000 }, new double[Hours], use, prices, new double[Hours]);
            var expected = use.Select((kwh, i) => kwh * prices.Take(i + 1).Min()).Sum();
            // The solver meets its optimum to about a millionth of its size.
            Assert.Equal(expected, BestPossible.Of(run).LeastCost, 1e-5 * (1 + expected));
        }, iter: 50, threads: 1);

    [Fact]
    public void Whole_numbers_give_the_optimum_of_dynamic_programming() =>
        Gen.Select(Gen.Int[0, 4].Array[12], Gen.Int[0, 4].Array[12], Gen.Int[5, 60].Array[12], Gen.Int[0, 5].Array[12], Gen.Int[0, 6], Gen.Int[1, 3]).Sample((sun, use, import, export, usable, power) =>
        {
            var battery = new Battery { UsableKwh = usable, MostChargeKw = power, MostDischargeKw = power };
            var run = Run(battery, ToKwh(sun), ToKwh(use), [.. import.Select(p => p / 100.0)], [.. export.Select(p => p / 100.0)]);
            var end = (int)Math.Round(run.StoredKwh[12]);
            Assert.Equal(Naive(sun, use, import, export, usable, power, end) / 100.0, BestPossible.Of(run).LeastCost, 1e-5);
        }, iter: 200, threads: 1);

    [Theory]
    [InlineData(null)]
    [InlineData(0.7)]
    public void The_bound_is_never_beaten_by_any_control_on_random_plants(double? unservedPrice) =>
        Priced.Sample(plant =>
        {
            var options = new BestPossibleOptions { UnservedPricePerKwh = unservedPrice };
            foreach (var control in new[] { plant.Control, Control.SelfConsumption, Control.Of("rest", _ => Order.Rest), new TimeShift(), new FeedInFirst(), new GeneratorStart() })
            {
                var cost = BestPossible.Of(plant.System.Run(plant.Conditions, control), options);
                Assert.True(cost.LeastCost <= cost.Cost + (1e-5 * (1 + Math.Abs(cost.Cost))), $"{control.Name}: cost {cost.Cost}, bound {cost.LeastCost}");
            }
        }, iter: 1000, threads: 1);

    [Fact]
    public void Sizes_of_next_to_nothing_break_neither_the_solver_nor_the_bound() =>
        Gen.Select(Priced, Gen.Double[-11, -6].Array[6]).Sample((plant, exponents) =>
        {
            // Four such plants in 60,000 made the solver break off: limits, capacities and prices of about what it can tell apart.
            double Tiny(int k) => Math.Pow(10, exponents[k]);
            var battery = plant.System.Battery is { } b ? exponents[5] > -8.5
                ? b with { UsableKwh = Tiny(0), StoredAtStartKwh = Tiny(0) * 0.98, ReserveKwh = 0 }
                : b with { MostChargeKw = Tiny(1) } : null;
            var system = plant.System with
            {
                Battery = battery, Grid = exponents[4] > -8.5 ? plant.System.Grid : plant.System.Grid with { MostImportKw = Tiny(2) },
                Generator = plant.System.Generator is { } g ? g with { FuelPricePerLitre = Tiny(3), MaintenancePerHour = Tiny(3) / 2 } : null,
            };
            foreach (var control in new[] { Control.SelfConsumption, new TimeShift(), new FeedInFirst(), new GeneratorStart() })
            {
                var cost = BestPossible.Of(system.Run(plant.Conditions, control));
                Assert.True(cost.LeastCost <= cost.Cost + (1e-5 * (1 + Math.Abs(cost.Cost))), $"{control.Name}: cost {cost.Cost}, bound {cost.LeastCost}");
            }
        }, iter: 500, threads: 1);

    [Fact]
    public void A_year_s_controls_are_judged_first_by_some_weeks_marked_as_a_preview()
    {
        var time = Timeline.Year(2025, NodaTime.Duration.FromHours(1), Made.Dublin);
        double[] Hourly(Func<int, double> of) => [.. Enumerable.Range(0, time.Count).Select(of)];
        var conditions = new Conditions(LoadSeries.Of(time, Hourly(i => 0.4 + (0.6 * ((i * 7) % 24) / 24))))
        {
            Arrays = [ArraySupply.Ac("roof", Hourly(i => Math.Max(0, 3 * Math.Sin(((i % 24) - 6) * Math.PI / 12)) * (0.6 + (0.4 * Math.Sin((i - 2000) * 2 * Math.PI / time.Count)))))],
            ImportPricePerKwh = Hourly(i => i % 24 is > 16 and < 20 ? 0.45 : i % 24 < 6 ? 0.15 : 0.28), ExportPricePerKwh = Hourly(_ => 0.1),
        };
        var system = new EnergySystem { Battery = Battery.Of(8, 0.9, 3) };
        var told = new List<IFinding>();
        JudgedControls full;
        using (WorkProgress.Around(new WorkListener(null) { Preview = told.Add })) full = BestPossible.Judge(system, conditions, [Control.SelfConsumption]);
        var preview = Assert.IsType<JudgedControls>(Assert.Single(told));
        Assert.True(preview.IsPreview && !full.IsPreview);
        Assert.Equal(full.Controls[0].Best.Cost, preview.Controls[0].Best.Cost, 9);
        // Weeks keep the control's charge at their ends, so they miss what is moved over them; the rest lies within three standard errors.
        Assert.InRange(preview.Controls[0].Best.LeastCost, full.Controls[0].Best.LeastCost - (3 * preview.PreviewOff), full.Controls[0].Best.LeastCost + (3 * preview.PreviewOff) + (53 * 8 * 0.1));
        Assert.StartsWith("is a preview from 8 weeks", preview.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Windows_keep_the_bound_and_loosen_it_by_a_full_battery_at_most() =>
        Gen.Select(Gen.Double[0, 4].Array[Hours], Gen.Double[0, 3].Array[Hours], Gen.Double[0.05, 0.6].Array[Hours], Gen.Int[1, 23]).Sample((sun, use, prices, length) =>
        {
            var run = Run(Battery.Of(5, 0.9, 3), sun, use, prices, new double[Hours]);
            var (whole, parts) = (BestPossible.Of(run), BestPossible.Of(run, new BestPossibleOptions { MostIntervals = length }));
            Assert.Equal((Hours + length - 1) / length, parts.Windows);
            Assert.True(parts.LeastCost <= whole.LeastCost + 1e-5);
            Assert.True(parts.LeastCost >= whole.LeastCost - (5 * 0.6 * (parts.Windows - 1)) - 1e-5);
        }, iter: 60, threads: 1);

    [Fact]
    public void A_load_that_may_wait_runs_when_it_is_cheapest_and_still_by_its_deadline()
    {
        // 2 kWh between 10:00 and 16:00 at 1 kW: the two cheapest of these hours cost 0.10 and 0.11.
        var prices = Enumerable.Range(0, Hours).Select(h => h is 13 ? 0.10 : h is 11 ? 0.11 : h < 10 ? 0.01 : 0.30).ToArray();
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(Hours), new double[Hours]))
        {
            ImportPricePerKwh = prices,
            Deferrable = [new DeferrableLoad("water", 2, 1, HourSpan.Parse("10:00-16:00"))],
        };
        Assert.Equal(0.21, BestPossible.Of(new EnergySystem().Run(conditions, Control.SelfConsumption)).LeastCost, 6);
    }

    [Fact]
    public void Every_control_is_told_how_much_of_the_reachable_saving_it_got()
    {
        // By hand: at rest 0.60, reachable 0.40; the charger gets half of it by buying half a kWh ahead.
        var conditions = Conditions([0, 0], [1, 1], [0.10, 0.50], [0, 0]);
        var half = Control.Of("half ahead", now => now.Interval == 0 ? Order.Charge(0.5) : now.Cover());
        var judged = BestPossible.Judge(new EnergySystem { Battery = new Battery { UsableKwh = 1 } }, conditions, [Control.SelfConsumption, half]);
        Assert.Equal(0, judged.Controls[0].Share!.Value, 6);
        Assert.Equal(0.5, judged.Controls[1].Share!.Value, 6);
        var said = judged.Say(CultureInfo.InvariantCulture);
        Assert.Equal("50.0 %", said.Figure);
        Assert.Equal("of the reachable saving is what \"half ahead\" got: 0.20 of at most 0.40, in the currency of the prices. " +
            "No control can save more than that, as it would have to know sun, use and prices ahead.", said.Words);
        Assert.Equal(["half ahead", "0.40", "0.60", "0.20", "50.0 %"], said.Tables[0].Rows[1]);
        Assert.Contains(said.Cautions, c => c.Contains("rated for direct current", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nothing_was_to_be_had_there_is_no_share()
    {
        var judged = BestPossible.Judge(new EnergySystem(), Conditions([0, 0], [1, 1], [0.1, 0.5], [0, 0]), [Control.SelfConsumption]);
        Assert.Null(judged.Controls[0].Share);
        Assert.Equal("no share", judged.Say(CultureInfo.InvariantCulture).Figure);
    }

    [Fact]
    public void Without_prices_or_controls_or_after_a_stop_there_is_no_answer()
    {
        var run = Made.Run(new EnergySystem(), [1], [1]);
        Assert.StartsWith("Found no price of import and no generator", Assert.Throws<ArgumentException>(() => BestPossible.Of(run)).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found no control", Assert.Throws<ArgumentException>(() => BestPossible.Judge(run.System, run.Conditions, [])).Message, StringComparison.Ordinal);
        Assert.ThrowsAny<OperationCanceledException>(() => BestPossible.Of(Run(new Battery { UsableKwh = 1 }, [0], [1], [1], [0]), null, null, new CancellationToken(canceled: true)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BestPossibleOptions { MostIntervals = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new BestPossibleOptions { UnservedPricePerKwh = double.NaN });
    }

    // Prices below 0 and feed-in above import included: what pays for burning or for sending on must not break the bound.
    private static readonly Gen<RandomPlant> Priced =
        Gen.Select(RandomPlant.Any, Gen.Double[-0.1, 0.6].Array[Hours], Gen.Double[-0.1, 0.7].Array[Hours], Gen.Double[0, 2])
            .Select((plant, import, export, fuel) => plant with
            {
                System = plant.System with { Generator = plant.System.Generator is { } g ? g with { FuelPricePerLitre = fuel, MaintenancePerHour = fuel / 2 } : null },
                Conditions = plant.Conditions with { ImportPricePerKwh = import, ExportPricePerKwh = export },
            });

    /// <summary>Least cost in cents over whole kWh of charge, by trying every charge before every hour. Import is dearer than export, so neither pays for the other.</summary>
    private static int Naive(int[] sun, int[] use, int[] import, int[] export, int usable, int power, int end)
    {
        const int Never = 1_000_000;
        var best = Enumerable.Range(0, usable + 1).Select(s => s == 0 ? 0 : Never).ToArray();
        for (var i = 0; i < sun.Length; i++)
        {
            var next = Enumerable.Repeat(Never, usable + 1).ToArray();
            for (var before = 0; before <= usable; before++)
            {
                for (var after = Math.Max(0, before - power); after <= Math.Min(usable, before + power); after++)
                {
                    var needed = use[i] - sun[i] + after - before;
                    next[after] = Math.Min(next[after], best[before] + (needed > 0 ? needed * import[i] : needed * export[i]));
                }
            }
            best = next;
        }
        return best[end..].Min();
    }

    private static EnergyFlows Run(Battery battery, double[] sun, double[] use, double[] import, double[] export) =>
        new EnergySystem { Battery = battery }.Run(Conditions(sun, use, import, export), Control.SelfConsumption);

    private static Conditions Conditions(double[] sun, double[] use, double[] import, double[] export) =>
        new(LoadSeries.Of(Made.HoursOf(use.Length), use)) { Arrays = [ArraySupply.Ac("roof", sun)], ImportPricePerKwh = import, ExportPricePerKwh = export };

    private static double[] ToKwh(int[] kwh) => [.. kwh.Select(k => (double)k)];
}
