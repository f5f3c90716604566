using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class SpecificYieldTests
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private static readonly Device South = new("south roof", MeasurementPoint.InverterAcOut) { RatedKwp = 4 };

    /// <summary>Half hours of so much energy each, by local date.</summary>
    private static Channel Record(LocalDate from, LocalDate to, Func<LocalDate, double> kwhPerDay, Func<LocalDate, Quality>? quality = null)
    {
        var (start, end) = (from.AtStartOfDayInZone(Place.Zone).ToInstant(), to.AtStartOfDayInZone(Place.Zone).ToInstant());
        var count = (int)((end - start).TotalMinutes / 30);
        Instant[] starts = [.. Enumerable.Range(0, count).Select(i => start + Duration.FromMinutes(30 * i))];
        LocalDate[] dates = [.. starts.Select(s => s.InZone(Place.Zone).Date)];
        double[] kwh = [.. dates.Select(d => kwhPerDay(d) / 48)];
        return new Channel("gen", FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromMinutes(30))], kwh, [.. dates.Select(d => quality?.Invoke(d) ?? Quality.Good)]);
    }

    [Fact]
    public void Two_even_years_give_their_daily_yield_times_the_days_of_each_month()
    {
        // By hand: 8 kWh a day on 4 kWp are 2 kWh/kWp a day; the days of 46 and 50 half hours cancel only nearly.
        var yield = SpecificYield.From(Record(new(2022, 1, 1), new(2024, 1, 1), _ => 8), South, Place);
        Assert.True(yield.IsWholeYear);
        Assert.Equal(62, yield.Months[0].MeanKwhPerKwp, 1e-9);
        Assert.Equal(730, yield.YearKwhPerKwp!.Value, 0.2);
        Assert.Equal(730, yield.DaysUsed);
        Assert.Equal(0, yield.YearlySpread!.Value, 1e-3);
        Assert.Equal(62 * 5, yield.For(5)[0].MeanKwh, 1e-9);
    }

    [Fact]
    public void The_spread_across_years_is_that_of_whole_years()
    {
        var yield = SpecificYield.From(Record(new(2022, 1, 1), new(2024, 6, 1), d => d.Year == 2022 ? 7 : d.Year == 2023 ? 9 : 100), South, Place);
        Assert.Equal(Math.Sqrt(2) / 8, yield.YearlySpread!.Value, 1e-3); // by hand: sd of 7 and 9 is √2, mean 8; 2024 is no whole year
        Assert.Equal(3, yield.Months[0].Years);
        Assert.Equal(2, yield.Months[6].Years);
    }

    [Fact]
    public void Censored_and_incomplete_days_are_left_out_counted_and_make_it_a_lower_bound()
    {
        var yield = SpecificYield.From(Record(new(2022, 1, 1), new(2023, 1, 1), d => d.Day % 5 == 0 ? 3 : 8, d => d.Day % 5 == 0 ? Quality.Censored : d.Day == 7 ? Quality.Missing : Quality.Good), South, Place);
        Assert.Equal(62, yield.Months[0].MeanKwhPerKwp, 1e-9);
        Assert.Equal(12, yield.DaysIncomplete);
        Assert.InRange(yield.DaysCensored, 60, 75);
        Assert.True(yield.IsLowerBound);
        Assert.StartsWith("at least", yield.Say(CultureInfo.InvariantCulture).Figure, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rating_of_the_day_counts_when_modules_were_added()
    {
        var staged = South with { Stages = [new DeviceStage(new(2022, 1, 1), 2), new DeviceStage(new(2022, 7, 1), 4)] };
        var yield = SpecificYield.From(Record(new(2022, 1, 1), new(2023, 1, 1), d => d.Month < 7 ? 4 : 8), staged, Place);
        Assert.Equal(730, yield.YearKwhPerKwp!.Value, 0.2);
    }

    [Fact]
    public void Brought_to_its_own_plane_a_yield_stays_and_it_falls_towards_east_and_further_towards_north()
    {
        var weather = Weather.Clear(Place, new IntervalGrid(Instant.FromUtc(2022, 1, 1, 0, 0), Duration.FromHours(1), 8760));
        var yield = SpecificYield.From(Record(new(2022, 1, 1), new(2023, 1, 1), _ => 8), South, Place);
        var plane = new Plane(35, 180);
        Assert.Equal(yield.YearKwhPerKwp!.Value, yield.OnPlane(Place, weather, plane, plane).YearKwhPerKwp!.Value, 1e-9);
        double Facing(double azimuth) => yield.OnPlane(Place, weather, plane, new Plane(35, azimuth)).YearKwhPerKwp!.Value;
        Assert.True(Facing(180) > Facing(90) && Facing(90) > Facing(0) && Facing(0) > 0);
    }

    [Fact]
    public void Import_is_no_yield_and_a_device_without_kwp_is_named()
    {
        var record = Record(new(2022, 1, 1), new(2022, 3, 1), _ => 8);
        Assert.Equal("Found no rated kWp of device \"south roof\" on any of 59 days, expected one above 0. Write ratedKwp of the device in the plant's description.",
            Assert.Throws<ArgumentException>(() => SpecificYield.From(record, South with { RatedKwp = 0 }, Place)).Message);
        var import = new Channel("grid", FlowKind.Import, [], [], [], []);
        Assert.Equal("Found channel \"grid\" of Import, expected generation: a specific yield is what modules make.",
            Assert.Throws<ArgumentException>(() => SpecificYield.From(import, South, Place)).Message);
    }
}
