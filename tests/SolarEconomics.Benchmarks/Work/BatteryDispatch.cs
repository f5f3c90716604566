using System.Globalization;
using System.Runtime.InteropServices;
using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>A battery under self-consumption: one scenario, a thousand side by side, and 25 years with fade, time-of-use cost and present value.</summary>
internal static class BatteryDispatch
{
    private const int Hours = 8760;
    private const int Repeats = 20;
    private const int Years = 25;

    internal static Comparison OneScenario()
    {
        var (sweep, folder) = Make(1);
        var battery = new BatteryCase(Sized(10, 4));
        var trace = new BatteryTrace(new double[Hours], new double[Hours], new double[Hours]);
        return new Comparison("battery, one scenario", "step", Hours * Repeats,
            new InProcess<BatteryTrace>("ours", () => Traced(sweep, battery, trace), Checksum),
            [new Rival(new CompiledPeer("C++ -O3, branch-free", "battery_loop.cpp", "-O3", folder), 1 / 1.5)])
        {
            HoursOfData = Hours * Repeats,
        };
    }

    internal static Comparison SideBySide(int count)
    {
        var (sweep, folder) = Make(count);
        var cases = Cases(count).ToList();
        PythonPeer Peer(string name, string way) => new(name, "battery_lanes.py", folder, Text(count), way);
        return new Comparison($"battery, {Words.Count(count)} scenarios", "scenario-step", (long)Hours * count,
            new InProcess<IReadOnlyList<BatteryCaseResult>>("ours", () => sweep.Run(cases, 1), Totals),
            [new Rival(Peer("numpy across scenarios, tuned", "tuned"), 25), new Rival(Peer("numpy across scenarios, plain", "plain"), 40)])
        {
            HoursOfData = (double)Hours * count, TargetVectorBits = 512,
        };
    }

    internal static Comparison ManyYears(int count)
    {
        var (sweep, folder) = Make(count);
        var cases = Cases(count).Select(c => c with { SunLossPerYear = 0.005, Ageing = new BatteryAgeing { CalendarFade = 0.01, CycleFade = 0.00004 }, PriceGrowth = 0.03, DiscountRate = 0.05 }).ToList();
        return new Comparison($"battery, {Words.Count(count)} scenarios of 25 years", "scenario", count,
            new InProcess<IReadOnlyList<BatteryCaseResult>>("ours", () => sweep.Run(cases, Years), all => [all.Sum(r => r.Npv), all.Sum(r => r.ImportKwh.Sum())]),
            [new Rival(new CompiledPeer("C++ -O3 -ffast-math for this processor, 16 side by side", "battery_years.cpp", "-O3 -march=native -ffast-math", folder, Text(count)), null)])
        {
            HoursOfData = (double)Hours * Years * count, PerSecondTarget = 6000,
        };
    }

    private static BatteryTrace Traced(BatterySweep sweep, BatteryCase battery, BatteryTrace into)
    {
        for (var repeat = 0; repeat < Repeats; repeat++) sweep.Trace(battery, into);
        return into;
    }

    private static double[] Checksum(BatteryTrace trace) => [Sum(trace.ImportKwh), Sum(trace.ExportKwh), Sum(trace.StoredKwh)];

    private static double[] Totals(IReadOnlyList<BatteryCaseResult> all) =>
        [all.Sum(r => r.Cost[0]), all.Sum(r => r.ImportKwh[0]), all.Sum(r => r.StoredAtEndKwh)];

    private static double Sum(double[] values) => values.Sum();

    private static IEnumerable<BatteryCase> Cases(int count)
    {
        foreach (var (usable, power) in Sizes(count)) yield return new BatteryCase(Sized(usable, power));
    }

    private static Battery Sized(double usableKwh, double powerKw) =>
        new() { UsableKwh = usableKwh, ChargeEfficiency = 0.95, DischargeEfficiency = 0.95, MostChargeKw = powerKw, MostDischargeKw = powerKw };

    private static IEnumerable<(double Usable, double Power)> Sizes(int count)
    {
        var random = new Random(20_260_401);
        for (var i = 0; i < count; i++) yield return (2 + (18 * random.NextDouble()), 1 + (5 * random.NextDouble()));
    }

    private static (BatterySweep Sweep, string Folder) Make(int count)
    {
        var random = new Random(20_260_402);
        var time = Timeline.Year(2025, Duration.FromHours(1), MadeTable.Site.Zone);
        var sun = Enumerable.Range(0, Hours).Select(i => Math.Max(0, Math.Sin(((i % 24) - 6) * Math.PI / 12)) * (1 + (4 * random.NextDouble()))).ToArray();
        var use = Enumerable.Range(0, Hours).Select(i => 0.2 + (1.6 * random.NextDouble()) + (i % 24 is >= 17 and < 22 ? 0.8 : 0)).ToArray();
        var buy = Enumerable.Range(0, Hours).Select(i => i % 24 is >= 17 and < 19 ? 0.42 : i % 24 is < 8 or 23 ? 0.16 : 0.29).ToArray();
        var sell = Enumerable.Repeat(0.12, Hours).ToArray();
        var conditions = new Conditions(LoadSeries.Of(time, use)) { Arrays = [ArraySupply.Ac("roof", sun)], ImportPricePerKwh = buy, ExportPricePerKwh = sell };
        var folder = Directory.CreateDirectory(Places.Made("battery-" + Text(count))).FullName;
        void Write(string name, double[] values) => File.WriteAllBytes(Path.Combine(folder, name + ".f64"), MemoryMarshal.AsBytes(values.AsSpan()));
        Write("sun", sun);
        Write("use", use);
        Write("buy", buy);
        Write("sell", sell);
        Write("usable", [.. Sizes(count).Select(s => s.Usable)]);
        Write("power", [.. Sizes(count).Select(s => s.Power)]);
        return (BatterySweep.Of(conditions), folder);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
