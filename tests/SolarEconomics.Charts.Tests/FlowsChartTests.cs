using NodaTime;

namespace SolarEconomics.Charts.Tests;

public sealed class FlowsChartTests
{
    [Fact]
    public void The_stack_of_a_month_is_all_that_could_have_been_made()
    {
        var flows = FlowSamples.Home();
        var july = flows.ByMonth()[6];
        var bars = Figures.Traces(flows.Chart(), "bar").ToList();
        Assert.Equal(["used directly", "into the battery", "exported", "curtailed", "standby and converter"], bars.Select(b => (string?)b["name"]));
        Assert.Equal(july.PotentialKwh, bars.Sum(b => (double)b["y"]![6]!), 0.03);
    }

    [Fact]
    public void The_stack_of_use_is_all_that_was_wanted()
    {
        var flows = FlowSamples.Island();
        var bars = Figures.Traces(flows.Chart(new FlowsChartOptions { Side = FlowSide.Use }), "bar").ToList();
        Assert.Equal(["from the arrays", "out of the battery", "from the generator", "not served"], bars.Select(b => (string?)b["name"]));
        for (var month = 0; month < 12; month++) Assert.Equal(flows.ByMonth()[month].WantedKwh, bars.Sum(b => (double)b["y"]![month]!), 0.03);
    }

    [Fact]
    public void By_year_there_is_one_bar_a_year()
    {
        var chart = FlowSamples.Home().Chart(new FlowsChartOptions { ByYear = true });
        Assert.Single(chart.Table.Rows);
        Assert.Equal("2025", chart.Table.Rows[0][0]);
    }

    [Fact]
    public void The_words_say_how_much_and_where_it_went_and_the_run_s_cautions_stand_on_it()
    {
        var chart = FlowSamples.Home().Chart();
        Assert.Equal("5,322 kWh could have been made from 1 Jan 2025 to 31 Dec 2025: 19 % used directly, 37 % into the battery, 32 % exported, 11 % curtailed and 1 % standby and converter.", chart.Words);
        Assert.NotEmpty(chart.Finding.Cautions);
    }

    [Fact]
    public void A_battery_s_line_is_its_charge_and_its_bars_balance_it()
    {
        var flows = FlowSamples.Home();
        var chart = flows.ChartBattery(new BatteryChartOptions { From = new LocalDate(2025, 6, 10), Days = 2 });
        var line = Figures.Traces(chart, "scatter").Single()["y"]!.AsArray().Select(y => (double)y!).ToList();
        var start = Enumerable.Range(0, flows.Time.Count).First(i => flows.Time.LocalStartOf(i).Date == new LocalDate(2025, 6, 10));
        Assert.Equal(49, line.Count);
        Assert.All(Enumerable.Range(0, 49), k => Assert.Equal(flows.StoredKwh[start + k], line[k], 0.006));
        Assert.Equal(48, chart.Table.Rows.Count);
    }

    [Fact]
    public void Beyond_two_weeks_each_day_is_a_bar_from_its_lowest_to_its_highest_charge()
    {
        var flows = FlowSamples.Home();
        var chart = flows.ChartBattery(new BatteryChartOptions { From = new LocalDate(2025, 6, 1), Days = 15 });
        Assert.Equal(15, chart.Table.Rows.Count);
        var bar = Figures.Traces(chart, "bar").Single();
        var start = Enumerable.Range(0, flows.Time.Count).First(i => flows.Time.LocalStartOf(i).Date == new LocalDate(2025, 6, 1));
        Assert.Equal(flows.StoredKwh[start..(start + 25)].ToArray().Min(), (double)bar["base"]![0]!, 0.006);
    }

    [Theory]
    [InlineData(365, 365)]
    [InlineData(364, 364)]
    [InlineData(400, 365)]
    public void A_year_is_drawn_whole_wherever_the_battery_was_busiest(int days, int drawn) =>
        Assert.Equal(drawn, FlowSamples.Home().ChartBattery(new BatteryChartOptions { Days = days }).Table.Rows.Count);

    [Fact]
    public void Without_a_battery_or_the_days_the_chart_is_refused_in_words()
    {
        var flows = FlowSamples.Home();
        Assert.StartsWith("Found 0 intervals from 2031-01-01 to 2031-01-03, expected at least 1.", Assert.Throws<ArgumentException>(() =>
            flows.ChartBattery(new BatteryChartOptions { From = new LocalDate(2031, 1, 1) })).Message, StringComparison.Ordinal);
        var bare = new EnergySystem().Run(flows.Conditions, Control.SelfConsumption);
        Assert.StartsWith("Found a plant without a battery", Assert.Throws<ArgumentException>(() => bare.ChartBattery()).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new BatteryChartOptions { Days = 0 });
    }
}
