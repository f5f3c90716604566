using NodaTime;
using SolarEconomics.Tests.Demo;

namespace SolarEconomics.Tests.PlantRoom;

public class DeviceDaysTests
{
    private static readonly Plant Demo = Plant.Load(Path.Combine(DemoScenario.Folder, "plant.json"));

    [Theory]   // common practice, no source: 14 × 270 W = 3.78 kWp, 18 × 270 W = 4.86 kWp; the rest by hand from data-demo/README.md
    [InlineData("2022-02-28", 0)]
    [InlineData("2022-03-01", 3.78)]
    [InlineData("2022-04-20", 3.78 + 4.86)]
    [InlineData("2022-09-10", 3.78 + 4.86 + 3.30)]
    [InlineData("2023-06-05", 3.78 + 3.30)]                   // the west roof's inverter is dead
    [InlineData("2023-06-27", 3.78 + 4.86 + 3.30)]
    [InlineData("2023-08-19", 3.78 + 3.24 + 4.92)]            // a string of 6 × 270 W has moved: the sum stays
    public void Rated_power_follows_stages_and_service(string day, double kwp) =>
        Assert.Equal(kwp, Demo.RatedKwpOn(Day(day)), 12);

    [Theory]
    [InlineData("2022-03-01", 8)]
    [InlineData("2022-04-14", 8 + 17)]
    [InlineData("2023-01-01", 8 + 17 + 9 + 11)]
    [InlineData("2023-06-05", 8 + 17 + 11)]
    [InlineData("2024-01-01", 45)]
    public void Standby_counts_the_devices_in_service(string day, double watts) => Assert.Equal(watts, Demo.StandbyWOn(Day(day)));

    [Fact]
    public void Stated_standby_is_the_true_standby_of_every_whole_day()
    {
        var truth = DemoScenario.Truth;
        var zone = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
        for (var i = 0; i < truth.Count; i += 97)
        {
            var day = (truth.Start + Duration.FromMinutes(30L * i)).InZone(zone).Date;
            Assert.Equal(Demo.StandbyWOn(day) / 2000, truth.Standby[i], 12);
        }
    }

    [Fact]
    public void A_replaced_device_stands_before_the_one_that_took_its_place()
    {
        Assert.Equal(["west roof first inverter", "west roof"], Demo.LineOf("west roof").Select(d => d.Name));
        Assert.Equal(["south roof"], Demo.LineOf("south roof").Select(d => d.Name));
        Assert.Empty(Demo.LineOf("East roof"));
    }

    [Fact]
    public void A_device_is_in_service_from_its_first_day_until_the_day_that_it_left()
    {
        var device = new Device("roof", MeasurementPoint.InverterAcOut) { InService = new LocalDate(2022, 3, 1), OutOfService = new LocalDate(2022, 3, 3) };
        Assert.Equal([false, true, true, false], new[] { "2022-02-28", "2022-03-01", "2022-03-02", "2022-03-03" }.Select(d => device.InServiceOn(Day(d))));
        Assert.True(new Device("roof", MeasurementPoint.Meter).InServiceOn(Day("1999-01-01")));
    }

    [Fact]
    public void Eighteen_modules_of_270_W_on_5_kW_have_a_ratio_of_0_972()   // common practice, no source
    {
        var device = new Device("west", MeasurementPoint.InverterAcOut) { RatedKwp = 18 * 0.270, RatedAcKw = 5 };
        Assert.Equal(0.972, device.DcAcRatio!.Value, 12);
        Assert.Null((device with { RatedAcKw = 0 }).DcAcRatio);
    }

    private static LocalDate Day(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;
}
