using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>Both ends of every rung are flows: they keep to the records of that rung, are billed, and no flows with the same records lie outside.</summary>
public class LadderEndsTests
{
    private static readonly Device Roof = new("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 5, InService = SmallSite.Day };
    private static readonly Device Battery = new("battery", MeasurementPoint.InverterAcOut) { UsableKwh = 3, InService = SmallSite.Day };

    private static readonly TariffHistory Tariffs = TariffHistory.Of(Tariff.Named("by the hour", "EUR", new NodaTime.LocalDate(2020, 1, 1))
        .With(new EnergyPart("import", EnergySide.Import,
        [
            new EnergyRate("noon", 0.20m, [new RateWindow(null, TariffDays.EveryDay, [HourSpan.Parse("11:00-13:00")])]),
            new EnergyRate("evening", 0.40m, [new RateWindow(null, TariffDays.EveryDay, [HourSpan.Parse("17:00-21:00")])]),
            EnergyRate.Flat("other hours", 0.30m),
        ]))
        .With(new EnergyPart("export", EnergySide.Export, [EnergyRate.Flat("feed-in", 0.10m)])));

    /// <summary>Five hours of a day: made, into and out of the battery, exported, imported.</summary>
    private static Readings Day(int[] hours, double[] made, double[] charge, double[] discharge, double[] export, double[] import, bool withBattery)
    {
        (int, double)[] Of(double[] kwh) => [.. hours.Zip(kwh)];
        var channels = new List<Channel>
        {
            SmallSite.Hours("roof", FlowKind.Generation, Of(made)), SmallSite.Hours("export", FlowKind.Export, Of(export)), SmallSite.Hours("import", FlowKind.Import, Of(import)),
        };
        if (withBattery) channels.AddRange([SmallSite.Hours("charge", FlowKind.BatteryCharge, Of(charge)), SmallSite.Hours("discharge", FlowKind.BatteryDischarge, Of(discharge))]);
        return SmallSite.Of([.. channels]);
    }

    [Fact]
    public void An_export_of_2_kWh_by_month_leaves_30_cents_open_at_three_prices() // by hand
    {
        // 2 kWh an hour at 10:00 (0.30), 12:00 (0.20) and 17:00 (0.40); used they are worth 1.80, and exporting takes 0.20, 0.10 or 0.30 from a kWh.
        var worth = Worth.ToDate(SmallSite.Site(Roof), Day([10, 12, 17], [2, 2, 2], [], [], [1, 1, 0], [0, 0, 0], withBattery: false), Tariffs);
        var step = worth.Ladder.Single(s => s.Rung == EvidenceRung.IntervalGeneration);
        Assert.Equal((1.80m - 0.60m, 1.80m - 0.20m), (step.Range.Low.Amount, step.Range.High!.Value.Amount));
        Assert.Equal([0, 0, 2.0], new[] { 10, 12, 17 }.Select(h => Math.Round(step.LowFlows!.ExportKwh[h], 9)));
        Assert.Equal([0, 2.0, 0], new[] { 10, 12, 17 }.Select(h => Math.Round(step.HighFlows!.ExportKwh[h], 9)));
        // The hours were read: one kWh at 10:00 and one at 12:00 went out.
        Assert.Equal(MoneyRange.Exactly(Money.Nominal(1.50m, Currency.Of("EUR"))), worth.Range);
    }

    [Fact]
    public void The_flows_that_were_read_lie_inside_every_rung_and_its_flows_keep_to_its_records() =>
        Gen.Select(Gen.Double[0, 2].Array[25], Gen.Bool).Sample((kwh, withBattery) =>
        {
            int[] hours = [8, 10, 12, 15, 18];
            double[] Part(int n) => kwh[(5 * n)..(5 * (n + 1))];
            var (made, charge, discharge, export, import) = (Part(0), Part(1), Part(2), Part(3), Part(4));
            // Nothing by night, and something by day: a channel that never made anything tells nothing of generation.
            (made[1], made[4]) = (made[1] + 0.1, 0);
            for (var i = 0; i < 5; i++)
            {
                if (!withBattery) (charge[i], discharge[i]) = (0, 0);
                export[i] = Math.Min(export[i], made[i] + discharge[i]);
                charge[i] = Math.Min(charge[i], Math.Min(made[i] + import[i], made[i] + discharge[i] + import[i] - export[i]));
            }
            var worth = Worth.ToDate(withBattery ? SmallSite.Site(Roof, Battery) : SmallSite.Site(Roof), Day(hours, made, charge, discharge, export, import, withBattery), Tariffs);
            Assert.Equal(4, worth.Ladder.Count);
            foreach (var step in worth.Ladder)
            {
                Assert.True(step.IsAttained && step.Range.Contains(worth.Value!.Value), $"{step.Words}: {worth.Value} is not in {step.Range}.");
                foreach (var flows in (EndFlows[])[step.LowFlows!, step.HighFlows!])
                {
                    CheckBalances(flows);
                    if (step.Rung == EvidenceRung.Counters) continue;
                    Same(made, flows.GenerationKwh);
                    Same(export, flows.ExportKwh);
                    Same(import, flows.ImportKwh);
                    Same(charge, flows.ChargeKwh);
                    Same(discharge, flows.DischargeKwh);
                }
                Assert.Equal((step.Range.Low, step.Range.High), (step.LowFlows!.Value, step.HighFlows!.Value));
            }
        }, iter: 200);

    private static void Same(double[] recorded, IReadOnlyList<double> flows) => Assert.Equal(recorded.Sum(), flows.Sum(), 1e-6);

    internal static void CheckBalances(EndFlows flows)
    {
        const double dust = 1e-9;
        for (var i = 0; i < flows.UseKwh.Count; i++)
        {
            var (made, import, export, charge, discharge) = (flows.GenerationKwh[i], flows.ImportKwh[i], flows.ExportKwh[i], flows.ChargeKwh[i], flows.DischargeKwh[i]);
            Assert.True(Math.Min(Math.Min(made, import), Math.Min(Math.Min(export, charge), discharge)) >= -dust);
            Assert.True(export <= made + discharge + dust && charge <= made + import + dust && flows.UseKwh[i] >= -dust, $"Interval {i} does not balance.");
            Assert.Equal(made + import + discharge, flows.UseKwh[i] + export + charge, 1e-9);
        }
    }

    [Fact]
    public void A_battery_that_nobody_read_leaves_bounds_above_counters_and_the_result_says_so()
    {
        var worth = Worth.ToDate(SmallSite.Site(Roof, Battery), Day([10, 12, 17], [2, 2, 2], [], [], [1, 1, 0], [0, 0, 0], withBattery: false), Tariffs);
        Assert.Equal([true, false, false, false], worth.Ladder.Select(s => s.IsAttained));
        Assert.Contains(worth.Notes, n => n.StartsWith("From monthly totals, interval generation, interval import, export and generation: bounds", StringComparison.Ordinal));
        // By hand: 1.50 with the battery idle; two cycles of 3 kWh between 0.20 and 0.40 at best, and at worst a quarter of what comes out at 0.20 lost besides.
        Assert.Equal((1.50m + 1.20m, 1.50m - 1.50m), (worth.Range.High!.Value.Amount - 0.06m, worth.Range.Low.Amount + 0.06m));
        Assert.Equal(["flows", "bounds", "bounds", "bounds"], worth.Say(System.Globalization.CultureInfo.InvariantCulture).Tables.Single(t => t.Columns.Contains("Ends")).Rows.Select(r => r[3]));
    }

    [Fact]
    public void A_battery_that_was_not_read_for_an_hour_may_have_done_anything_in_it()
    {
        // By hand: at 17:00, with 2 kWh made and nothing imported, up to 2 kWh may have gone into the battery, or up to 3 come out, at 0.40 each.
        var readings = Day([10, 12, 17], [2, 2, 2], [0, 0, double.NaN], [0, 0, double.NaN], [1, 1, 0], [0, 0, 0], withBattery: true);
        var worth = Worth.ToDate(SmallSite.Site(Roof, Battery), readings, Tariffs);
        Assert.Equal((1.50m - 0.80m, 1.50m + 1.20m), (worth.Range.Low.Amount, worth.Range.High!.Value.Amount));
        Assert.True(worth.Ladder[^1].IsAttained);
    }

    [Fact]
    public void Parts_that_are_no_price_of_an_hour_are_billed_but_do_not_choose_the_flows_and_the_result_says_so()
    {
        var readings = Day([10, 12, 17], [2, 2, 2], [], [], [1, 1, 0], [0, 0, 0], withBattery: false);
        Assert.DoesNotContain(Worth.ToDate(SmallSite.Site(Roof), readings, Tariffs).Notes, n => n.Contains("no price of an hour", StringComparison.Ordinal));
        var least = TariffHistory.Of(Tariffs.Latest.With(new MinimumBill("least", 5m)));
        Assert.Contains(Worth.ToDate(SmallSite.Site(Roof), readings, least).Notes, n => n.Contains("no price of an hour", StringComparison.Ordinal));
    }

    [Fact]
    public void The_flows_at_an_end_say_what_must_have_happened()
    {
        var worth = Worth.ToDate(SmallSite.Site(Roof), Day([10, 12, 17], [2, 2, 2], [], [], [1, 1, 0], [0, 0, 0], withBattery: false), Tariffs);
        var said = worth.Ladder[2].LowFlows!.Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(("€1", "is what the plant was worth if 6 kWh were made and 2 kWh of them exported at the hours of these flows."), (said.Figure, said.Words));
        Assert.Equal(["Jun 2024", "6", "0", "2", "0", "0", "4"], Assert.Single(Assert.Single(said.Tables).Rows));
        Assert.Equal((EvidenceRung.IntervalGeneration, NodaTime.Duration.FromHours(1)), (worth.Ladder[2].LowFlows!.Rung, worth.Ladder[2].LowFlows!.Interval));
        Assert.Equal(SmallSite.Day, worth.Ladder[2].LowFlows!.Start.InUtc().Date);
    }
}
