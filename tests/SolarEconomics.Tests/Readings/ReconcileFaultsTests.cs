using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Over many seeds, flows and grids: no fault is named on clean data, and each fault that is put in is named.</summary>
public sealed class ReconcileFaultsTests
{
    private const int Seeds = 500;
    private const int Days = 14;
    private static readonly Instant Start = Instant.FromUtc(2024, 6, 1, 0, 0);
    private static readonly FlowKind[] Flows = [FlowKind.Generation, FlowKind.Import, FlowKind.Export, FlowKind.Use];

    /// <summary>Energy of each five minutes of an invented home: sun with clouds that pass in half an hour, or use with a peak in the evening.</summary>
    private static double[] FiveMinutes(int seed, FlowKind flow, double kwhPerHour)
    {
        var random = new Random(seed);
        var cloud = 1.0;
        return [.. Enumerable.Range(0, Days * 288).Select(i =>
        {
            if (i % 6 == 0) cloud = 0.2 + (0.8 * random.NextDouble());
            var sun = Math.Max(0, Math.Sin((i % 288 - 72) / 144.0 * Math.PI));
            var evening = 0.15 + Math.Exp(-Math.Pow((i % 288 - 228) / 24.0, 2));
            return (flow is FlowKind.Generation or FlowKind.Export ? sun : evening) * cloud * kwhPerHour / 12;
        })];
    }

    /// <summary>The same energy by a meter of its own step, which begins some minutes in and is within one percent.</summary>
    private static Channel Metered(string name, FlowKind flow, double[] five, int minutes, int offsetMinutes, int noiseSeed, double factor = 1, int clockMinutes = 0)
    {
        var (random, per, skip) = (new Random(noiseSeed), minutes / 5, offsetMinutes / 5);
        var count = (five.Length - skip) / per;
        var starts = Enumerable.Range(0, count).Select(i => Start + Duration.FromMinutes(offsetMinutes + clockMinutes + (i * minutes))).ToArray();
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromMinutes(minutes))],
            [.. Enumerable.Range(0, count).Select(i => five.AsSpan(skip + (i * per), per).ToArray().Sum() * factor * (0.995 + (0.01 * random.NextDouble())))], new Quality[count]);
    }

    private static void ForEachSeed(Action<int, FlowKind, double[]> check)
    {
        for (var seed = 0; seed < Seeds; seed++) check(seed, Flows[seed % 4], FiveMinutes(seed, Flows[seed % 4], 1 + (seed % 5)));
    }

    [Theory]
    [InlineData(30, 30, 0)]
    [InlineData(30, 30, 10)]
    [InlineData(30, 5, 0)]
    [InlineData(5, 30, 15)]
    [InlineData(60, 15, 10)]
    public void Clean_data_names_no_fault_on_grids_that_meet_or_not(int first, int second, int offset) => ForEachSeed((seed, flow, five) =>
    {
        var other = Metered("barn", flow, FiveMinutes(seed + 10_000, flow, 1), 30, 0, seed + 3);
        var comparison = Reconcile.Compare(Metered("a", flow, five, first, 0, seed + 1), Metered("b", flow, five, second, offset, seed + 2), other);
        Assert.True(comparison.Reasons.Count == 0, $"Seed {seed}: {string.Join("; ", comparison.Reasons)}");
        Assert.InRange(comparison.FirstKwh / comparison.SecondKwh, 0.99, 1.01);
    });

    /// <summary>A day and single intervals that are missing, and numbers of two decimals, are no wrong clock.</summary>
    [Fact]
    public void Holes_and_coarse_numbers_name_no_clock() => ForEachSeed((seed, flow, five) =>
    {
        var (whole, random) = (Metered("b", flow, five, 30, 0, seed + 2), new Random(seed));
        var kept = Enumerable.Range(0, whole.Count).Where(i => i / 48 != seed % Days && random.Next(20) > 0).ToArray();
        var holed = new Channel("b", flow, [.. kept.Select(i => whole.Starts[i])], [.. kept.Select(i => whole.Ends[i])], [.. kept.Select(i => Math.Round(whole.Kwh[i], 2))], new Quality[kept.Length]);
        var comparison = Reconcile.Compare(Metered("a", flow, five, 30, 0, seed + 1), holed);
        Assert.True(comparison.Reasons.Count == 0, $"Seed {seed}: {string.Join("; ", comparison.Reasons)}");
    });

    [Fact]
    public void A_shifted_clock_is_named_with_its_minutes() => ForEachSeed((seed, flow, five) =>
    {
        var minutes = 30 * (1 + (seed % 24)) * (seed % 2 == 0 ? 1 : -1);
        var reason = Assert.Single(Reconcile.Compare(Metered("a", flow, five, 30, 0, seed + 1), Metered("b", flow, five, 30, 0, seed + 2, clockMinutes: minutes)).Reasons);
        Assert.Equal(DisagreementKind.ClockShift, reason.Kind);
        Assert.Equal($"the clock of \"{(minutes > 0 ? "b" : "a")}\" is {Math.Abs(minutes)} minutes ahead of the other", reason.Words);
    });

    /// <summary>A record whose clock is wrong from one day on, up to one day, or in between: stamps that would stand twice are left out, as a log that overwrites does.</summary>
    private static Channel WrongOn(Channel right, Channel wrong, int fromDay, int toDay)
    {
        var (from, to) = (Start + Duration.FromDays(fromDay), Start + Duration.FromDays(toDay));
        var rows = new SortedDictionary<Instant, (Instant End, double Kwh)>();
        for (var i = 0; i < right.Count; i++)
        {
            var isWrong = right.Starts[i] >= from && right.Starts[i] < to;
            var source = isWrong ? wrong : right;
            rows[source.Starts[i]] = (source.Ends[i], source.Kwh[i]);
        }
        return new Channel(right.Name, right.Flow, [.. rows.Keys], [.. rows.Values.Select(v => v.End)], [.. rows.Values.Select(v => v.Kwh)], new Quality[rows.Count]);
    }

    [Theory]
    [InlineData(5, 14, "from 2024-06-06 on")]
    [InlineData(11, 14, "from 2024-06-12 on")]
    [InlineData(0, 4, "up to 2024-06-04")]
    [InlineData(3, 9, "from 2024-06-04 to 2024-06-09")]
    public void A_clock_that_is_wrong_on_some_days_is_named_with_them(int fromDay, int toDay, string when) => ForEachSeed((seed, flow, five) =>
    {
        var minutes = 30 * (1 + (seed % 8)) * (seed % 2 == 0 ? 1 : -1);
        var wrong = WrongOn(Metered("b", flow, five, 30, 0, seed + 2), Metered("b", flow, five, 30, 0, seed + 2, clockMinutes: minutes), fromDay, toDay);
        var reason = Assert.Single(Reconcile.Compare(Metered("a", flow, five, 30, 0, seed + 1), wrong).Reasons);
        Assert.Equal((DisagreementKind.ClockShift, $"the clock of \"{(minutes > 0 ? "b" : "a")}\" is {Math.Abs(minutes)} minutes ahead of the other {when} (days in UTC), and right on the other days"), (reason.Kind, reason.Words));
    });

    [Theory]
    [InlineData(1000, DisagreementKind.UnitFactor)]
    [InlineData(0.001, DisagreementKind.UnitFactor)]
    [InlineData(-1, DisagreementKind.Sign)]
    public void A_wrong_unit_or_sign_is_named(double factor, DisagreementKind kind) => ForEachSeed((seed, flow, five) =>
        Assert.Equal(kind, Assert.Single(Reconcile.Compare(Metered("a", flow, five, 30, 0, seed + 1), Metered("b", flow, five, 15, 0, seed + 2, factor)).Reasons).Kind));

    [Fact]
    public void A_missing_device_is_named() => ForEachSeed((seed, flow, five) =>
    {
        var barn = FiveMinutes(seed + 10_000, flow, 2);
        var reason = Assert.Single(Reconcile.Compare(Metered("meter", flow, [.. five.Zip(barn, (a, b) => a + b)], 30, 0, seed + 1), Metered("roof", flow, five, 15, 0, seed + 2),
            Metered("barn", flow, barn, 5, 0, seed + 3), Metered("shed", flow, FiveMinutes(seed + 20_000, flow, 1), 30, 0, seed + 4)).Reasons);
        Assert.Equal("\"roof\" lacks what \"barn\" counts", reason.Words);
    });

    [Fact]
    public void A_balance_leaves_just_the_losses()
    {
        for (var seed = 0; seed < Seeds; seed++)
        {
            var random = new Random(seed);
            var (made, bought, sold, into, outOf, lost) = (random.NextDouble() * 10, random.NextDouble() * 10, random.NextDouble() * 4, random.NextDouble() * 3, random.NextDouble() * 2, random.NextDouble());
            Channel Of(FlowKind flow, double kwh) => new(flow.ToString(), flow, [Start], [Start + Duration.FromHours(1)], [kwh], [Quality.Good]);
            var balance = EnergyBalance.Of(new Readings([Of(FlowKind.Generation, made), Of(FlowKind.Import, bought), Of(FlowKind.Export, sold), Of(FlowKind.BatteryCharge, into), Of(FlowKind.BatteryDischarge, outOf),
                Of(FlowKind.Use, made + bought + outOf - sold - into - lost)], [], []));
            // Generation + import = use + export + storage change + losses.
            Assert.Equal(lost, balance.Residual!.Value.LowKwh, 5e-10);
            Assert.Equal(lost, balance.Residual.Value.HighKwh, 5e-10);
        }
    }

    [Theory]
    [InlineData(FlowKind.Import)]
    [InlineData(FlowKind.Export)]
    [InlineData(FlowKind.Use)]
    public void A_typed_counter_of_any_flow_is_compared_with_the_channel_of_its_name(FlowKind flow)
    {
        var five = FiveMinutes(1, flow, 2);
        var channel = Metered("main meter", flow, five, 30, 0, 2);
        // Read at midnight of the first and of the eighth day: seven days of the same energy, a thousand times too large.
        var counter = new Counter("Main meter", MeasurementPoint.Unknown, [new(new LocalDate(2024, 6, 1), 0), new(new LocalDate(2024, 6, 8), 1000 * five[..(7 * 288)].Sum())]);
        var comparison = Assert.Single(Reconcile.Counters(new Readings([channel], [counter], []) { Zone = DateTimeZone.Utc }));
        Assert.Equal(DisagreementKind.UnitFactor, Assert.Single(comparison.Reasons).Kind);
    }
}
