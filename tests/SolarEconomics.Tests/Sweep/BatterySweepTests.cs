using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

public class BatterySweepTests
{
    private const int Hours = 24 * 15;

    private static readonly Gen<Conditions> s_conditions =
        from sun in Gen.Double[0, 6].Array[Hours]
        from use in Gen.Double[0, 4].Array[Hours]
        from prices in Gen.Double[0, 0.5].Array[Hours]
        from sell in Gen.Double[-0.05, 0.2].Array[Hours]
        select new Conditions(LoadSeries.Of(Made.HoursOf(Hours), use)) { Arrays = [ArraySupply.Ac("roof", sun)], ImportPricePerKwh = prices, ExportPricePerKwh = sell };

    private static readonly Gen<BatteryCase> s_case =
        from size in Gen.Select(Gen.Double[0, 15], Gen.Double[0, 6], Gen.Double[0, 6], Gen.Int[0, 3])
        from ways in Gen.Select(Gen.Double[0.6, 1], Gen.Double[0.6, 1], Gen.Double[0, 1])
        from growth in Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.2, 2], Gen.Double[0, 0.05], Gen.Double[-0.02, 0.05])
        from fade in Gen.Select(Gen.Double[0, 0.05], Gen.Double[0, 0.001])
        select new BatteryCase(new Battery
        {
            UsableKwh = size.Item4 == 0 ? 0 : size.Item1, MostChargeKw = size.Item4 == 1 ? double.PositiveInfinity : size.Item2, MostDischargeKw = size.Item3,
            ChargeEfficiency = ways.Item1, DischargeEfficiency = ways.Item2, StoredAtStartKwh = size.Item4 == 0 ? 0 : size.Item1 * ways.Item3, StandbyW = 40 * ways.Item3,
        })
        {
            SunScale = growth.Item1, UseScale = growth.Item2, SunLossPerYear = growth.Item3, UseGrowth = growth.Item4,
            Ageing = new BatteryAgeing { CalendarFade = fade.Item1, CycleFade = fade.Item2 }, Price = 4000, PriceGrowth = 0.03, DiscountRate = 0.05,
        };

    [Fact]
    public void A_converter_s_size_is_the_limit_that_the_flow_model_s_converter_is() =>
        Gen.Select(Gen.Double[0, 4].Array[48], Gen.Double[0, 3].Array[48], Gen.Double[0.1, 3], Gen.Double[0.2, 4]).Sample((sun, use, converterKw, batteryKw) =>
        {
            var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(48), use)) { Arrays = [ArraySupply.Ac("roof", sun)] };
            var battery = Battery.Of(6, 0.9, batteryKw);
            var trace = BatterySweep.OfAnySpan(conditions).Trace(new BatteryCase(battery) { ConverterKw = converterKw });
            var flows = new EnergySystem { Battery = battery, Converter = new Converter { MostToAcKw = converterKw, MostToDcKw = converterKw } }.Run(conditions, Control.SelfConsumption);
            for (var i = 0; i < 48; i++) Assert.Equal(flows.StoredKwh[i + 1], trace.StoredKwh[i], 1e-9);
            var result = BatterySweep.OfAnySpan(conditions).Run([new BatteryCase(battery) { ConverterKw = converterKw }], 1)[0];
            Assert.Equal(flows.Totals.ImportKwh, result.ImportKwh[0], 1e-9);
        }, iter: 200);

    [Fact]
    public void Every_width_of_vectors_gives_the_same_results() =>
        Gen.Select(s_conditions, s_case.Array[1, 19]).Sample((conditions, cases) =>
        {
            var sweep = BatterySweep.OfAnySpan(conditions);
            int[] years = [1, 2, 3];
            var one = sweep.Run<Lanes1>(cases, years, 3, null, default);
            var four = sweep.Run<Lanes4>(cases, years, 3, null, default);
            var eight = sweep.Run<Lanes8>(cases, years, 3, null, default);
            for (var i = 0; i < cases.Length; i++)
            {
                Same(one[i], four[i]);
                Same(one[i], eight[i]);
            }
        }, iter: 60);

    [Fact]
    public void Cases_behind_one_net_flow_give_what_the_plain_loop_gives_in_every_width() =>
        Gen.Select(s_conditions, s_case.Array[2, 19]).Sample((conditions, drawn) =>
        {
            BatteryCase[] alike = [.. drawn.Select(c => drawn[0] with { Battery = c.Battery with { StandbyW = drawn[0].Battery.StandbyW }, Ageing = c.Ageing })];
            var sweep = BatterySweep.OfAnySpan(conditions);
            int[] years = [1, 2, 3];
            var (four, eight) = (sweep.Run<Lanes4>(alike, years, 3, null, default), sweep.Run<Lanes8>(alike, years, 3, null, default));
            for (var i = 0; i < alike.Length; i++)
            {
                var (npv, cost, usable) = NaiveBattery.Years(conditions, alike[i], 3);
                Near(npv, four[i].Npv);
                Near(cost[2], four[i].Cost[2]);
                Near(usable, four[i].UsableAtEndKwh);
                Same(four[i], eight[i]);
            }
        }, iter: 60);

    [Fact]
    public void The_first_year_is_the_one_of_the_full_flow_model() =>
        Gen.Select(s_conditions, s_case).Sample((conditions, c) =>
        {
            var result = BatterySweep.OfAnySpan(conditions).Run([c], 1)[0];
            var scaled = conditions with
            {
                Arrays = [ArraySupply.Ac("roof", conditions.Arrays[0].PotentialKwh.ToArray().Select(kwh => kwh * c.SunScale).ToArray())],
                Load = LoadSeries.Of(conditions.Time, conditions.Load.Kwh.ToArray().Select(kwh => kwh * c.UseScale).ToArray()),
            };
            var flows = new EnergySystem { Battery = c.Battery }.Run(scaled, Control.SelfConsumption);
            var cost = Enumerable.Range(0, Hours).Sum(i => (flows.ImportKwh(i) * conditions.ImportPricePerKwh.Span[i]) - (flows.ExportKwh(i) * conditions.ExportPricePerKwh.Span[i]));
            Near(flows.Totals.ImportKwh, result.ImportKwh[0]);
            Near(flows.Totals.ExportKwh, result.ExportKwh[0]);
            Near(flows.Totals.ThroughputKwh, result.ThroughputKwh[0]);
            Near(cost, result.Cost[0]);
            Near(flows.StoredKwh[^1], result.StoredAtEndKwh);
        }, iter: 300);

    [Fact]
    public void The_trace_is_the_one_of_the_full_flow_model_interval_by_interval() =>
        Gen.Select(s_conditions, s_case).Sample((conditions, c) =>
        {
            var plain = c with { SunScale = 1, UseScale = 1 };
            var trace = BatterySweep.OfAnySpan(conditions).Trace(plain);
            var flows = new EnergySystem { Battery = c.Battery }.Run(conditions, Control.SelfConsumption);
            for (var i = 0; i < Hours; i++)
            {
                Near(flows.ImportKwh(i), trace.ImportKwh[i]);
                Near(flows.ExportKwh(i), trace.ExportKwh[i]);
                Near(flows.StoredKwh[i + 1], trace.StoredKwh[i]);
            }
        }, iter: 300);

    [Fact]
    public void Years_fade_grow_and_are_discounted_as_the_plain_loop_does() =>
        Gen.Select(s_conditions, s_case).Sample((conditions, c) =>
        {
            var result = BatterySweep.OfAnySpan(conditions).Run([c], 4)[0];
            var (npv, cost, usable) = NaiveBattery.Years(conditions, c, 4);
            Near(npv, result.Npv);
            Near(usable, result.UsableAtEndKwh);
            for (var year = 0; year < 4; year++) Near(cost[year], result.Cost[year]);
        }, iter: 100);

    [Fact]
    public void A_preview_is_marked_and_right_in_the_years_that_it_worked_out()
    {
        var sun = Enumerable.Range(0, Hours).Select(i => Math.Max(0, 4 * Math.Sin(((i % 24) - 6) * Math.PI / 12))).ToArray();
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(Hours), Enumerable.Repeat(0.9, Hours).ToArray()))
        {
            Arrays = [ArraySupply.Ac("roof", sun)], ImportPricePerKwh = Enumerable.Repeat(0.3, Hours).ToArray(), ExportPricePerKwh = Enumerable.Repeat(0.05, Hours).ToArray(),
        };
        var c = new BatteryCase(Battery.Of(8, 0.9, 3)) { SunLossPerYear = 0.005, PriceGrowth = 0.03, Ageing = new BatteryAgeing { CalendarFade = 0.01 } };
        var sweep = BatterySweep.OfAnySpan(conditions);
        var (preview, full) = (sweep.Preview([c], 25)[0], sweep.Run([c], 25)[0]);
        Assert.True(preview.IsPreview && !full.IsPreview);
        Near(full.Cost[0], preview.Cost[0]);
        Near(full.ImportKwh[24], preview.ImportKwh[24], 0.01);
        Near(full.Npv, preview.Npv, 0.01);
    }

    [Fact]
    public void What_a_sweep_does_not_know_is_refused_by_name()
    {
        var conditions = s_conditions.Single();
        Assert.Contains("Found Taper in a sweep", Assert.Throws<ArgumentException>(() =>
            BatterySweep.OfAnySpan(conditions).Run([new BatteryCase(Battery.Of(5, 0.9) with { Taper = new ChargeTaper(0.8, 0.1) })], 1)).Message, StringComparison.Ordinal);
        Assert.Contains("Found GridIsOut in a sweep", Assert.Throws<ArgumentException>(() =>
            BatterySweep.OfAnySpan(conditions with { GridIsOut = new bool[Hours] })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_sweep_shows_progress_and_stops_when_asked()
    {
        using var stop = new CancellationTokenSource();
        var seen = new List<double>();
        var progress = new Heard(done =>
        {
            seen.Add(done);
            if (seen.Count == 3) stop.Cancel();
        });
        var cases = Enumerable.Repeat(new BatteryCase(Battery.Of(5, 0.9)), 1000).ToList();
        Assert.Throws<OperationCanceledException>(() => BatterySweep.OfAnySpan(s_conditions.Single()).Run(cases, 2, progress, stop.Token));
        Assert.Equal(3, seen.Count);
    }

    [Fact]
    public void A_sweep_of_a_hundred_years_stops_in_the_year_in_which_it_is_asked()
    {
        using var stop = new CancellationTokenSource();
        var cases = new Looked([new BatteryCase(Battery.Of(5, 0.9))], looks =>
        {
            if (looks == 40) stop.Cancel();
        });
        Assert.Throws<OperationCanceledException>(() => BatterySweep.OfAnySpan(s_conditions.Single()).Run(cases, 100, null, stop.Token));
        Assert.InRange(cases.Looks, 40, 50);
    }

    /// <summary>Counts how often a case is looked at, which each year of a sweep does some times.</summary>
    private sealed class Looked(IReadOnlyList<BatteryCase> cases, Action<int> hear) : IReadOnlyList<BatteryCase>
    {
        internal int Looks { get; private set; }

        public int Count => cases.Count;

        public BatteryCase this[int index]
        {
            get
            {
                hear(++Looks);
                return cases[index];
            }
        }

        public IEnumerator<BatteryCase> GetEnumerator() => cases.GetEnumerator();

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }

    private sealed class Heard(Action<double> hear) : IProgress<double>
    {
        public void Report(double value) => hear(value);
    }

    private static void Same(BatteryCaseResult a, BatteryCaseResult b)
    {
        Near(a.Npv, b.Npv);
        foreach (var (x, y) in a.Cost.Zip(b.Cost)) Near(x, y);
        foreach (var (x, y) in a.ImportKwh.Zip(b.ImportKwh)) Near(x, y);
        foreach (var (x, y) in a.ExportKwh.Zip(b.ExportKwh)) Near(x, y);
        Near(a.UsableAtEndKwh, b.UsableAtEndKwh);
    }

    private static void Near(double expected, double found, double tolerance = 1e-9) =>
        Assert.True(Math.Abs(expected - found) <= tolerance * Math.Max(1, Math.Abs(expected)), $"Expected {expected:R}, found {found:R}, apart by {found - expected:E2}.");
}
