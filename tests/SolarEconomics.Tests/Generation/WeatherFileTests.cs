using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class WeatherFileTests : IDisposable
{
    private static readonly Site Place = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
    private readonly string _path = Path.Combine(Path.GetTempPath(), $"weather-{Guid.NewGuid():N}.csv");

    public void Dispose() => File.Delete(_path);

    private WeatherFile Load(string text, StampEdge edge = StampEdge.FromRecord)
    {
        File.WriteAllText(_path, text);
        return WeatherFile.Load(_path, Place, edge);
    }

    private string Refused(string text) => Assert.Throws<RecordException>(() => Load(text)).Message;

    /// <summary>Clear days as a logger would write them, on the clock of Dublin, stamps at the start or the end of the hour.</summary>
    private static string ClearDays(int days, bool stampsAtEnd = false, int hoursOff = 0)
    {
        var grid = new IntervalGrid(Instant.FromUtc(2023, 6, 1, 0, 0), Duration.FromHours(1), days * 24);
        var clear = Weather.Clear(Place, grid);
        var rows = Enumerable.Range(0, grid.Count).Select(i => string.Create(CultureInfo.InvariantCulture,
            $"{grid.StartOf(stampsAtEnd ? i + 1 : i) + Duration.FromHours(hoursOff):uuuu-MM-dd'T'HH:mm:ss'Z'},{clear.GlobalWm2[i]:0.00},15.5,3.0"));
        return "time,global (W/m²),air (°C),wind (m/s)\n" + string.Join('\n', rows) + "\n";
    }

    [Fact]
    public void A_plain_table_is_read_with_its_units()
    {
        var read = Load("# from the shed's logger\ntime;global (W/m2);beam (W/m²);diffuse (W/m²);air (C);wind (km/h)\n2024-07-01 12:00;500,5;300;200;18,5;36\n2024-07-01 12:30;600;400;200;19;18\n");
        Assert.Equal(500.5, read.Weather.GlobalWm2[0]);
        Assert.Equal((300, 200, 18.5, 10), (read.Weather.BeamNormalWm2[0], read.Weather.DiffuseWm2[0], read.Weather.AirC[0], read.Weather.WindMs[0]));
        Assert.Equal((Instant.FromUtc(2024, 7, 1, 11, 0), Duration.FromMinutes(30)), (read.Weather.Grid.Start, read.Weather.Grid.Step));
        Assert.Empty(read.Problems);
    }

    [Fact]
    public void A_repeated_autumn_hour_is_told_by_the_order_of_the_rows()
    {
        var read = Load("time,global (W/m²),air (°C)\n2024-10-27 00:30,0,9\n2024-10-27 01:00,0,9\n2024-10-27 01:30,0,9\n2024-10-27 01:00,0,9\n2024-10-27 01:30,0,9\n2024-10-27 02:00,0,9\n");
        Assert.Equal((6, Instant.FromUtc(2024, 10, 27, 2, 0)), (read.Weather.Grid.Count, read.Weather.Grid.StartOf(5)));
        Assert.Equal("no column of wind", Assert.Single(read.Problems).Found);
    }

    [Fact]
    public void Stamps_that_mean_the_other_edge_or_another_clock_are_doubted()
    {
        Assert.Empty(Load(ClearDays(30)).Problems);
        Assert.Contains("60 minutes behind the sun of the place", Assert.Single(Load(ClearDays(30, stampsAtEnd: true)).Problems).Found, StringComparison.Ordinal);
        Assert.Empty(Load(ClearDays(30, stampsAtEnd: true), StampEdge.End).Problems);
        Assert.Contains("120 minutes ahead of", Assert.Single(Load(ClearDays(30, hoursOff: -2)).Problems).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Gaps_skipped_times_and_what_no_sky_has_are_named_with_line_and_field()
    {
        const string Head = "time,global (W/m²),beam (W/m²),diffuse (W/m²),air (°C)\n";
        Assert.Contains("line 4, column 1: found 120 minutes since the line before, after 2024-07-01, expected steps of 60 minutes without a gap",
            Refused(Head + "2024-07-01 10:00,0,0,0,9\n2024-07-01 11:00,0,0,0,9\n2024-07-01 13:00,0,0,0,9\n2024-07-01 14:00,0,0,0,9\n"), StringComparison.Ordinal);
        Assert.Contains("a leap year has a 29 February", Refused(Head + "2024-02-28 22:00,0,0,0,9\n2024-02-28 23:00,0,0,0,9\n2024-03-01 00:00,0,0,0,9\n2024-03-01 01:00,0,0,0,9\n"), StringComparison.Ordinal);
        Assert.Contains("line 3, column 4: found diffuse 300 W/m² above global 200, expected it at or below global", Refused(Head + "2024-07-01 10:00,0,0,0,9\n2024-07-01 11:00,200,0,300,9\n"), StringComparison.Ordinal);
        Assert.Contains("a time that Europe/Dublin skipped that day", Refused(Head + "2024-03-31 00:30,0,0,0,9\n2024-03-31 01:30,0,0,0,9\n"), StringComparison.Ordinal);
        Assert.Contains("line 3, column 2: found no value of global", Refused(Head + "2024-07-01 10:00,0,0,0,9\n2024-07-01 11:00,,0,0,9\n"), StringComparison.Ordinal);
        Assert.Contains("not after the line before", Refused(Head + "2024-07-01 10:00,0,0,0,9\n2024-07-01 10:00,0,0,0,9\n"), StringComparison.Ordinal);
        Assert.Contains("found 3 fields, expected 5", Refused(Head + "2024-07-01 10:00,0,0\n2024-07-01 11:00,0,0,0,9\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_air_is_held_and_a_night_offset_is_cut()
    {
        var read = Load("time,global (W/m²),air (°C),wind (m/s)\n2024-07-01 10:00,-3,9,1\n2024-07-01 11:00,5,,1\n");
        Assert.Equal((0, 9), (read.Weather.GlobalWm2[0], read.Weather.AirC[1]));
        Assert.Equal((3, 3), (read.Problems.Single().Line, read.Problems.Single().Column));
    }

    [Fact]
    public void Something_else_is_refused_in_words()
    {
        Assert.Contains("found no column \"global (W/m²)\" among \"time\", \"ghi\", \"air (°C)\"", Refused("time,ghi,air (°C)\n1,2,3\n2,3,4\n"), StringComparison.Ordinal);
        Assert.Contains("found no column \"diffuse (W/m²)\"", Refused("time,global (W/m²),beam (W/m²),air (°C)\n1,2,3,4\n2,3,4,5\n"), StringComparison.Ordinal);
        Assert.Contains("found 0 rows", Refused(""), StringComparison.Ordinal);
        Assert.Contains("no such file", Assert.Throws<RecordException>(() => WeatherFile.Load(_path + "x", Place)).Message, StringComparison.Ordinal);
    }
}
