using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>By hand: a log that loses 2 % of 10 kWh in each of two years of 365 days, and counts 200 cycles in them.</summary>
public class MeasuredAgeingTests
{
    private const double LostPerYear = 0.02 * 365.25 / 365;
    private static readonly string[] s_rows =
    [
        "2022-01-01,capacity test,10.0,kWh,25", "2023-01-01,capacity test,9.8,kWh,25", "2024-01-01,capacity test,9.6,kWh,25", "2022-01-01,cycles,40,cycles,", "2024-01-01,cycles,240,cycles,",
    ];

    [Fact]
    public void All_of_the_measured_loss_is_the_calendar_s_where_nothing_is_stated_of_cycles()
    {
        var ageing = Log(s_rows).Ageing();
        Assert.Equal(LostPerYear, ageing.CalendarFade, 9);
        Assert.Equal(0, ageing.CycleFade);
        Assert.Equal("measured by 3 capacity tests from 1 Jan 2022 to 1 Jan 2024: 2.00 % a year by the calendar, nothing laid on work", ageing.Origin);
    }

    [Fact]
    public void A_stated_fade_per_cycle_takes_its_part_by_the_cycles_of_the_log()
    {
        var ageing = Log(s_rows).Ageing(cycleFade: 0.00005);
        Assert.Equal(LostPerYear - (0.00005 * 200 / 730 * 365.25), ageing.CalendarFade, 9);
        Assert.Equal(0.00005, ageing.CycleFade);
        Assert.EndsWith("1.50 % a year by the calendar, 0.50 % by work as its maker states", ageing.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void A_battery_that_was_not_new_at_the_first_test_fades_by_its_capacity_when_new() =>
        Assert.Equal(LostPerYear * 10 / 12.5, Log(s_rows).Ageing(newKwh: 12.5).CalendarFade, 9);

    [Fact]
    public void The_measured_fade_feeds_the_years_and_the_result_says_so()
    {
        var time = Timeline.Year(2025, Duration.FromHours(1), Made.Dublin);
        var years = new EnergySystem { Battery = new Battery { UsableKwh = 10 } }.RunYears(
            new Conditions(LoadSeries.Of(time, new double[time.Count])), Control.SelfConsumption, new YearsAhead(3) { Battery = Log(s_rows).Ageing() });
        Assert.Equal([10, 10 * (1 - LostPerYear), 10 * (1 - (2 * LostPerYear))], years.Years.Select(y => y.UsableKwh), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Contains(years.Say(CultureInfo.InvariantCulture).Notes, n => n.StartsWith("Battery ageing: measured by 3 capacity tests", StringComparison.Ordinal));
    }

    [Fact]
    public void Tests_that_grow_and_cycles_that_take_more_than_was_lost_are_refused()
    {
        Assert.Contains("% a year left for the calendar from 3 capacity tests", Assert.Throws<RecordException>(() => Log(
            "2022-01-01,capacity test,9,kWh,25", "2023-01-01,capacity test,9.2,kWh,25", "2024-01-01,capacity test,9.4,kWh,25").Ageing()).Message, StringComparison.Ordinal);
        Assert.Contains("5 % a year is laid on cycles", Assert.Throws<RecordException>(() => Log(s_rows).Ageing(cycleFade: 0.0005)).Message, StringComparison.Ordinal);
        Assert.Contains("battery log as cycles", Assert.Throws<RecordException>(() => Log(s_rows[..3]).Ageing(cycleFade: 0.00005)).Message, StringComparison.Ordinal);
    }

    private static BatteryLog Log(params string[] rows) =>
        BatteryLog.Read(new StringReader("date,kind,value,unit,cell °C\n" + string.Join('\n', rows) + "\n"), "log.csv");
}
