using AlderWeir;

namespace SolarEconomics.Tests.Demo;

public class TrueFlowsTests
{
    private const double OpenKwh = 1e-9;

    private static TrueFlows Truth => DemoScenario.Truth;

    [Fact]
    public void The_board_balances_in_every_half_hour() => ForAll(i =>
        Generation(i) + Truth.Delivered[i] + Truth.Imported[i]
        - Truth.Wanted[i] - Truth.Standby[i] - Truth.Stored[i] - Truth.Exported[i]);

    [Fact]
    public void Every_generated_kWh_has_one_destination() => ForAll(i =>
        Generation(i) - Truth.UsedDirectly[i] - Truth.GenerationToStandby[i] - Truth.Stored[i] - Truth.Exported[i]);

    [Fact]
    public void The_battery_gives_back_what_it_took_less_loss_and_stock() => ForAll(i =>
        Truth.Stored[i] - Truth.Delivered[i] - Truth.BatteryLoss[i] - (Truth.Stock[i] - (i == 0 ? 0 : Truth.Stock[i - 1])));

    [Fact]
    public void No_flow_is_below_zero()
    {
        double[][] flows = [.. Truth.Generation, .. Truth.Curtailed, Truth.Wanted, Truth.Standby, Truth.UsedDirectly, Truth.GenerationToStandby,
            Truth.Stored, Truth.Delivered, Truth.UsedFromStorage, Truth.Imported, Truth.Exported, Truth.BatteryLoss, Truth.Stock];
        Assert.All(flows, flow => Assert.True(flow.Min() >= 0, $"lowest {flow.Min()}"));
    }

    [Fact]
    public void Sun_is_thrown_away_only_while_the_battery_stands_full()
    {
        Assert.DoesNotContain(Intervals, i => Curtailed(i) > 0 && !Truth.BatteryFull[i]);
        Assert.True(Intervals.Sum(Curtailed) > 100, "the demo needs some curtailed energy");
    }

    [Fact]
    public void Import_and_export_run_in_the_same_half_hour_at_times() =>
        Assert.True(Intervals.Count(i => Truth.Imported[i] > 0.01 && Truth.Exported[i] > 0.01) > 300);

    [Fact]
    public void Standby_of_45_W_is_394_kWh_in_a_year_without_a_fault() =>    // common practice, no source: 45 W × 8,760 h
        Assert.Equal(394.2, Year(2024).Sum(i => Truth.Standby[i]), 1);

    [Theory]
    [InlineData("south roof", 3.78, 820, 980)]
    [InlineData("west roof", 3.24, 700, 850)]
    [InlineData("ground array", 4.92, 820, 980)]
    public void The_last_year_s_yield_per_kWp_fits_the_west_of_Ireland(string array, double kwp, double low, double high)
    {
        var kwh = Truth.Generation[Truth.ArrayNames.ToList().IndexOf(array)];
        Assert.InRange(Year(2024).Sum(i => kwh[i]) / kwp, low, high);
    }

    [Theory]
    [InlineData(2022)]
    [InlineData(2023)]
    [InlineData(2024)]
    public void House_and_workshop_want_9_to_11_MWh_a_year(int year) => Assert.InRange(Year(year).Sum(i => Truth.Wanted[i]), 9_000, 11_000);

    [Fact]
    public void The_load_does_not_depend_on_the_sun()
    {
        // Same half hours of the day in the same months: the sunniest days may use at most a little more or less than the dullest.
        var days = Enumerable.Range(0, Truth.Count / 48 - 1).Select(d => Enumerable.Range(d * 48, 48).ToArray())
            .Where(d => Truth.Start.Plus(NodaTime.Duration.FromMinutes(30 * d[0])).InUtc().Month is 4 or 5)
            .OrderBy(d => d.Sum(Generation)).Select(d => d.Sum(i => Truth.Wanted[i])).ToArray();
        var third = days.Length / 3;
        Assert.InRange(days[..third].Average() / days[^third..].Average(), 0.9, 1.1);
    }

    private static IEnumerable<int> Intervals => Enumerable.Range(0, Truth.Count);

    /// <summary>The year from 1 March, in half hours.</summary>
    private static IEnumerable<int> Year(int from)
    {
        var zone = NodaTime.DateTimeZoneProviders.Tzdb["Europe/Dublin"];
        int Index(int year) => (int)((new NodaTime.LocalDate(year, 3, 1).AtStartOfDayInZone(zone).ToInstant() - Truth.Start).TotalMinutes / 30);
        return Enumerable.Range(Index(from), Index(from + 1) - Index(from));
    }

    private static double Generation(int i) => Truth.Generation.Sum(g => g[i]);

    private static double Curtailed(int i) => Truth.Curtailed.Sum(g => g[i]);

    private static void ForAll(Func<int, double> open)
    {
        var worst = Intervals.MaxBy(i => Math.Abs(open(i)));
        Assert.True(Math.Abs(open(worst)) < OpenKwh, $"half hour {worst} is open by {open(worst)} kWh");
    }
}
