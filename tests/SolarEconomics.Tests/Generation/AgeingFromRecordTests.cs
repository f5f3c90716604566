using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>Ageing from readings in one call: by hand on invented records whose rate is known, on the demo, and on records too short to tell.</summary>
public sealed class AgeingFromRecordTests(AlderWeirSite demo) : IClassFixture<AlderWeirSite>
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR") with
    {
        Plant = new Plant([new Device("roof", MeasurementPoint.InverterAcOut) { RatedAcKw = 4, InService = new(2018, 1, 1) }])
            .With(new Placement(new ModuleArray("a", new ModuleType("m", 400), 10, 1, new Plane(35, 180)), "roof") { From = new(2018, 1, 1), MadeOn = new(2018, 1, 1) }),
    };

    private static Readings Days(int years, double lossPerYear, Func<LocalDate, double> weather, Func<LocalDate, bool>? held = null)
    {
        var (starts, ends, kwh, quality) = (new List<Instant>(), new List<Instant>(), new List<double>(), new List<Quality>());
        var first = new LocalDate(2018, 1, 1);
        for (var day = first; day < first.PlusYears(years); day = day.PlusDays(1))
        {
            // Hours of the day's clock, two thirds of the energy of a plain season at noon; a held-back day shows half.
            var (start, end) = (day.AtStartOfDayInZone(Place.Zone).ToInstant(), day.PlusDays(1).AtStartOfDayInZone(Place.Zone).ToInstant());
            for (var at = start; at < end; at += Duration.FromHours(1))
            {
                starts.Add(at);
                ends.Add(at + Duration.FromHours(1));
                var isNoon = at.InZone(Place.Zone).Hour == 13;
                var season = 10 - (6 * Math.Cos(2 * Math.PI * day.DayOfYear / 365.25));
                kwh.Add(isNoon ? season / 10 * (1 - (lossPerYear * (day.Year - 2018))) * weather(day) * (held?.Invoke(day) == true ? 0.5 : 1) : 0);
                quality.Add(isNoon && held?.Invoke(day) == true ? Quality.Censored : Quality.Good);
            }
        }
        return new Readings([new Channel("generation roof", FlowKind.Generation, [.. starts], [.. ends], [.. kwh], [.. quality]) { Device = "roof" }], [], []);
    }

    [Fact]
    public void A_clean_record_tells_its_rate_and_held_back_days_are_left_out()
    {
        var found = AgeingEstimate.Of(Place, Days(6, 0.01, _ => 1, day => day.Month is 6 && day.Day % 3 == 0), "roof");
        // By hand: 1 % of the initial power a year is a median of −1 % over 0.97 of it in the middle year.
        Assert.Equal(-0.0102, found.RecordRate, 2e-4);
        Assert.Equal((6, "none"), (found.Years, found.WeatherCorrection));
    }

    [Fact]
    public void A_line_through_whole_years_tells_the_same_rate_and_leaves_out_a_year_that_was_held_back()
    {
        // By hand: yearly means of 1, 0.99, 0.98 … lie on a line of −1 % of its start. In 2020 half of June was held back.
        Assert.Equal(-0.01, AgeingEstimate.OfYears(Place, Days(6, 0.01, _ => 1), "roof").RecordRate, 1e-4);
        var held = AgeingEstimate.OfYears(Place, Days(6, 0.01, _ => 1, day => day is { Year: 2020, Month: 6, Day: <= 20 }), "roof");
        Assert.Equal(5, held.Years);
        Assert.Equal(-0.01, held.RecordRate, 1e-4);
        Assert.Contains("too short to tell", AgeingEstimate.OfYears(Place, Days(3, 0.01, _ => 1, day => day is { Year: 2019, Month: 6 }), "roof").Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Weather_that_is_given_is_taken_off_and_named()
    {
        // Every year has another sky. Without correction the record scatters; beside the model through that sky the rate comes out.
        var grid = new IntervalGrid(Instant.FromUtc(2018, 1, 1, 0, 0), Duration.FromHours(1), ((6 * 365) + 1) * 24);
        var clear = Weather.Clear(Place, grid);
        double Open(int year) => 0.6 + (0.06 * (year * 7 % 5));
        double[] global = [.. clear.GlobalWm2.ToArray().Select((g, i) => g * Open(grid.StartOf(i).InUtc().Year))];
        var weather = Weather.OfGlobal(grid, global, clear.AirC.ToArray(), clear.WindMs.ToArray(), "invented sky");
        var made = PlantOutput.Of(Place, new(2018, 1, 2), weather, new() { Ageing = Ageing.None }).AcW.ToArray();
        var (starts, ends) = (Enumerable.Range(0, grid.Count).Select(grid.StartOf).ToArray(), Enumerable.Range(1, grid.Count).Select(grid.StartOf).ToArray());
        double[] kwh = [.. made.Select((w, i) => w / 1000 * (1 - (0.01 * (grid.StartOf(i).InUtc().Year - 2018))))];
        var record = new Readings([new Channel("generation roof", FlowKind.Generation, starts, ends, kwh, new Quality[grid.Count]) { Device = "roof" }], [], []);
        var (plain, corrected) = (AgeingEstimate.Of(Place, record, "roof"), AgeingEstimate.Of(Place, record, "roof", weather));
        Assert.Equal(-0.0102, corrected.RecordRate, 3e-4);
        Assert.True(corrected.RecordTells);
        Assert.False(plain.RecordTells);
        Assert.Equal("each day beside a model of new modules through invented sky", corrected.WeatherCorrection);
    }

    [Fact]
    public void A_record_too_short_to_tell_says_so_plainly_and_leaves_the_published_rate()
    {
        var found = AgeingEstimate.Of(Place, Days(2, 0.03, _ => 1), "roof");
        Assert.Equal(AgeingEstimate.PublishedRate, found.Rate, 1e-12);
        var said = found.Say(CultureInfo.InvariantCulture);
        Assert.Equal("-0.50 % a year", said.Figure);
        Assert.Contains("the record is too short to tell", said.Words, StringComparison.Ordinal);
        Assert.Contains($"{AgeingEstimate.YearsNeeded(0.04, 0.005)} years would tell to half a per cent", said.Words, StringComparison.Ordinal);
        Assert.InRange(found.Interval.High - found.Interval.Low, 0.015, 0.016); // ± 1.96 · 0.4 %
    }

    [Fact]
    public void Three_years_of_the_demo_move_the_published_rate_a_little_and_say_how_far()
    {
        var found = AgeingEstimate.Of(demo.Site, demo.Readings, "south roof", exportLimitKw: 5.5);
        Assert.False(found.RecordTells);
        Assert.True(found.Interval.Contains(-0.005));
        Assert.InRange(found.RecordWeight, 0, 0.2);
        Assert.Throws<UnknownNameException>(() => AgeingEstimate.Of(demo.Site, demo.Readings, "south rof"));
    }
}
