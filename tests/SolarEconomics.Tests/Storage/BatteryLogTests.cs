using System.Globalization;
using SolarEconomics.Tests.Demo;

namespace SolarEconomics.Tests;

/// <summary>By hand and against the demo's hidden truth; the line fit itself is held by its published rows.</summary>
public class BatteryLogTests
{
    [Fact]
    public void A_battery_that_loses_evenly_loses_that_share_a_year()
    {
        // By hand: 10.0, 9.8, 9.6 kWh, 365 days apart: 2 % of the first capacity in 365 of 365.25 days.
        var trend = Log("2022-01-01,capacity test,10.0,kWh,25", "2023-01-01,capacity test,9800,Wh,25", "2024-01-01,capacity test,9.6,kWh,25").Capacity();
        Assert.Equal(0.02 * 365.25 / 365, trend.LostPerYear, 9);
        Assert.Equal(0, trend.LostPerYearInterval.HalfWidth, 9);
    }

    [Fact]
    public void A_cold_test_is_brought_to_25_degrees()
    {
        // By hand: 9 kWh at 10 °C, 0.6 % a degree: 9 / (1 - 0.09) = 9.890.
        var trend = Log("2022-01-01,capacity test,9,kWh,10", "2023-01-01,capacity test,9,kWh,25", "2024-01-01,capacity test,9,kWh,").Capacity();
        Assert.Equal([9 / 0.91, 9, 9], trend.TestedKwh);
        Assert.Equal(1, trend.Untempered);
        Assert.Contains("1 tests have no temperature and stand as they are.", trend.Say(CultureInfo.InvariantCulture).Notes);
    }

    [Fact]
    public void The_refuge_s_battery_loses_what_it_truly_lost_within_what_its_tests_allow()
    {
        var trend = BatteryLog.Load(Path.Combine(DemoScenario.Folder, "refuge-battery.csv")).Capacity();
        Assert.True(trend.LostPerYearInterval.Contains(0.028), trend.LostPerYearInterval.ToString());
        Assert.InRange(trend.Line.Intercept, 33.6 * 0.98, 33.6 * 1.02);
        Assert.Equal(6, trend.TestedKwh.Count);
        Assert.InRange(trend.Cycles!.Value, 100, 200);
        Assert.True(trend.CellSpreadV!.Value.Last > trend.CellSpreadV.Value.First);
        var said = trend.Say(CultureInfo.InvariantCulture);
        Assert.Contains("of its capacity is what the battery lost, from 6 tests between 10 Apr 2022 and 10 Oct 2024", said.Words, StringComparison.Ordinal);
        Assert.Contains(said.Cautions, c => c.Contains("ventilation", StringComparison.Ordinal));
    }

    [Fact]
    public void Units_are_those_of_the_kind_and_others_are_named()
    {
        var log = Log("2022-01-01,cell spread,21,mV,", "2022-01-02,Water,1.5,L,", "2022-01-03,cycles,40,cycles,", "2022-01-04,equalising,3,h,");
        Assert.Equal([0.021, 1.5, 40, 3], log.Entries.Select(e => e.Value));
        Assert.Contains("found \"Ah\" as unit, expected one of Wh, kWh",
            Assert.Throws<RecordException>(() => Log("2022-01-01,capacity test,600,Ah,20")).Message, StringComparison.Ordinal);
        Assert.Contains("found \"spread\" as kind", Assert.Throws<RecordException>(() => Log("2022-01-01,spread,6,mV,")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tests_are_no_trend() =>
        Assert.Contains("Found 2 rows that count in the battery log as capacity tests, expected at least 3",
            Assert.Throws<RecordException>(() => Log("2022-01-01,capacity test,9,kWh,10", "2023-01-01,capacity test,9,kWh,25").Capacity()).Message, StringComparison.Ordinal);

    private static BatteryLog Log(params string[] rows) =>
        BatteryLog.Read(new StringReader("date,kind,value,unit,cell °C\n" + string.Join('\n', rows) + "\n"), "log.csv");
}
