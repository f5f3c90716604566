using NodaTime;

namespace SolarEconomics.Tests;

public class LoadSeriesTests
{
    private static readonly Timeline s_year = Timeline.Year(2025, Duration.FromMinutes(30), Made.Dublin);

    [Fact]
    public void Each_month_adds_up_to_its_figure_whatever_the_profile()
    {
        double[] months = [400, 350, 320, 280, 250, 220, 0, 230, 250, 300, 350, 420];
        var load = LoadSeries.OfMonths(s_year, months, LoadProfile.Workshop);
        var flows = new EnergySystem().Run(new Conditions(load), Control.SelfConsumption);
        Assert.Equal(months, flows.ByMonth().Select(m => Math.Round(m.WantedKwh, 9)).ToArray());
    }

    [Fact]
    public void A_part_of_a_month_gets_its_share_of_the_days()
    {
        var time = Timeline.Of(new IntervalGrid(Instant.FromUtc(2025, 1, 1, 0, 0), Duration.FromHours(1), 24 * 10), Made.Dublin);
        var load = LoadSeries.OfMonths(time, [310, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0], LoadProfile.Flat);
        Assert.Equal(100, load.Kwh.ToArray().Sum(), 9);
    }

    [Fact]
    public void A_block_runs_in_its_local_hours_days_and_months_only()
    {
        // Four summer Saturdays more than winter ones would shift by an hour if the clock were not local.
        var car = new LoadBlock("car", 7, HourSpan.Parse("23:00-01:00")) { Days = [IsoDayOfWeek.Saturday] };
        var kwh = car.On(s_year).Kwh.Span;
        for (var i = 0; i < kwh.Length; i++)
        {
            var local = s_year.LocalStartOf(i);
            Assert.Equal(local.DayOfWeek == IsoDayOfWeek.Saturday && local.Hour is 23 or 0 && local.DayOfWeek == IsoDayOfWeek.Saturday ? 3.5 : 0, kwh[i]);
        }
    }

    [Theory]
    [InlineData("12:00-12:30", 1), InlineData("12:15-12:45", 1), InlineData("12:30-14:15", 3.5), InlineData("23:30-00:30", 2), InlineData("00:00-24:00", 48)]
    public void Of_an_interval_counts_the_part_that_lies_in_the_hours_of_a_block(string hours, double kwhPerDay)
    {
        // 2 kW on whole hours, on quarter hours and on whole days: the same energy whatever the intervals.
        foreach (var (count, length) in new[] { (24, 1.0), (96, 0.25), (1, 24), (8, 3) })
            Assert.Equal(kwhPerDay, new LoadBlock("kettle", 2, HourSpan.Parse(hours)).On(Made.HoursOf(count, length)).Kwh.ToArray().Sum(), 9);
        // 1 January 2025 is a Wednesday: of two days one counts.
        Assert.Equal(kwhPerDay, new LoadBlock("kettle", 2, HourSpan.Parse(hours)) { Days = [IsoDayOfWeek.Thursday] }.On(Made.HoursOf(16, 3)).Kwh.ToArray().Sum(), 9);
    }

    [Fact]
    public void The_real_month_of_a_five_minute_meter_is_a_load()
    {
        var site = Site.At("sample", -33.8, 151.2, "Australia/Sydney", "AUD");
        var readings = Readings.Load(TestFiles.Sample("nem12-5min-solar-month.csv"), site);
        var import = readings.Of(FlowKind.Import)[0];
        var load = LoadSeries.Of(import, site.Zone);
        var sun = Enumerable.Range(0, load.Time.Count).Select(i => 0.3 * Math.Max(0, Math.Sin((load.Time.LocalStartOf(i).Hour - 6) * Math.PI / 12))).ToArray();
        var flows = new EnergySystem { Battery = Battery.Of(10, 0.9, 5) }.Run(new Conditions(load) { Arrays = [ArraySupply.Ac("roof", sun)] }, Control.SelfConsumption);
        Assert.Equal(import.Total.Kwh, flows.Totals.WantedKwh, 9);
        Assert.Equal(import.Total.Kwh, flows.Totals.UseKwh, 9);
        Assert.All(Enumerable.Range(0, load.Time.Count), i => Assert.InRange(flows.ResidualKwh(i), -1e-9, 1e-9));
        Assert.True(flows.Totals.ImportKwh < import.Total.Kwh);
    }
}
