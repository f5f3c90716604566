using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

public class LogsTests
{
    private static BatteryNote Test(int year, double kwh) => new(new LocalDate(year, 6, 1)) { TestedKwh = kwh, CellC = 20, CellSpreadMv = 10 * (year - 2019) };

    [Fact]
    public void A_straight_fall_of_the_tests_is_the_fade()
    {
        var fade = new BatteryLog([Test(2022, 9.4), Test(2020, 10), Test(2024, 8.8), Test(2021, 9.7)]).Fade();
        Assert.Equal(0.03, fade.FadePerYear, 4);
        Assert.Equal(10, fade.StartKwh, 2);
        Assert.True(fade.IsSure);
        Assert.Equal(50, fade.HighestCellSpreadMv);
        Assert.Equal(fade.FadePerYear, fade.AsAgeing().CalendarFade);
    }

    [Fact]
    public void Scattered_tests_say_that_they_cannot_tell()
    {
        var fade = new BatteryLog([Test(2020, 10), Test(2021, 9), Test(2022, 10.2), Test(2023, 9.4)]).Fade();
        Assert.False(fade.IsSure);
        Assert.Contains("cannot tell it from none", fade.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tests_tell_no_fade() =>
        Assert.Contains("Found 2 capacity tests", Assert.Throws<InvalidOperationException>(() => new BatteryLog([Test(2020, 10), Test(2021, 9)]).Fade()).Message, StringComparison.Ordinal);

    [Fact]
    public void Litres_and_hours_bound_what_a_generator_gave()
    {
        var log = new GeneratorLog(5, [new GeneratorNote(new LocalDate(2024, 1, 5), 9, 10), new GeneratorNote(new LocalDate(2024, 2, 5), 16, 10)]);
        var range = log.Given(thirsty: new FuelLine(0.10, 0.30), sparing: new FuelLine(0.08, 0.25));
        // By hand: (9 − 5)/0.3 and (16 − 5)/0.3; (9 − 4)/0.25 and (16 − 4)/0.25, both below 50 kWh of full power.
        Assert.Equal((4 / 0.3) + (11 / 0.3), range.LowKwh, 9);
        Assert.Equal(20 + 48, range.HighKwh, 9);
        Assert.Contains("Check litres, hours and the rated power", Assert.Throws<ArgumentException>(() =>
            new GeneratorLog(5, [new GeneratorNote(new LocalDate(2024, 1, 5), 1, 10)]).Given(new FuelLine(0.10, 0.30), new FuelLine(0.08, 0.25))).Message, StringComparison.Ordinal);
    }
}
