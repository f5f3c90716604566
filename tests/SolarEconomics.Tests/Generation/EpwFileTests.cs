using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class EpwFileTests : IDisposable
{
    private readonly string _path = Path.Combine(Path.GetTempPath(), $"invented-{Guid.NewGuid():N}.epw");

    public void Dispose() => File.Delete(_path);

    /// <summary>An invented year: global by hour of day, air 10 °C.</summary>
    private void Write(Action<List<string[]>>? change = null, int year = 2023)
    {
        var rows = new List<string[]>();
        var end = new DateTime(year + 1, 1, 1);
        for (var at = new DateTime(year, 1, 1); at < end; at = at.AddHours(1))
        {
            var row = Enumerable.Repeat("0", 35).ToArray();
            (row[0], row[1], row[2], row[3], row[4]) = ("1999", $"{at.Month}", $"{at.Day}", $"{at.Hour + 1}", "0");
            (row[6], row[13], row[14], row[15], row[21]) = ("10.0", at.Hour == 12 ? "500" : "0", "0", at.Hour == 12 ? "500" : "0", "3.5");
            rows.Add(row);
        }
        change?.Invoke(rows);
        string[] heading = ["LOCATION,Invented Harbour,-,-,made up,0,53.2,-9.1,0.0,25.0", "DESIGN CONDITIONS,0", "TYPICAL/EXTREME PERIODS,0", "GROUND TEMPERATURES,0",
            "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0", "COMMENTS 1,invented", "COMMENTS 2,", "DATA PERIODS,1,1,Data,Sunday,1/1,12/31"];
        File.WriteAllLines(_path, [.. heading, .. rows.Select(r => string.Join(',', r))]);
    }

    [Fact]
    public void Hour_one_is_the_first_hour_of_the_day_on_the_files_own_clock()
    {
        Write();
        var epw = EpwFile.Load(_path);
        Assert.Equal((53.2, -9.1, 0.0, 25.0), (epw.LatitudeDeg, epw.LongitudeDeg, epw.UtcOffsetHours, epw.HeightM));
        Assert.Equal(8760, epw.Weather.Grid.Count);
        Assert.Equal(Instant.FromUtc(2023, 1, 1, 0, 0), epw.Weather.Grid.Start);
        Assert.Equal(500, epw.Weather.GlobalWm2[12]); // hour 13 is 12:00 to 13:00
        Assert.Equal(500 * 365 / 1000.0, epw.Weather.GlobalKwhM2, 1e-9);
        Assert.Empty(epw.Problems);
    }

    [Fact]
    public void A_file_with_a_leap_day_is_laid_on_a_leap_year()
    {
        Write(year: 2024);
        Assert.Equal(8784, EpwFile.Load(_path).Weather.Grid.Count);
        Assert.Contains("expected a year of that length", Assert.Throws<RecordException>(() => EpwFile.Load(_path, 2023)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_air_is_held_and_listed_and_missing_radiation_refuses_the_file()
    {
        Write(rows => rows[5][6] = "99.9");
        var problem = Assert.Single(EpwFile.Load(_path).Problems);
        Assert.Equal(14, problem.Line); // eight heading lines and five hours before it
        Assert.Equal(7, problem.Column);
        Write(rows => rows[12][13] = "9999");
        Assert.Contains("line 21, column 14: found global radiation \"9999\"", Assert.Throws<RecordException>(() => EpwFile.Load(_path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Diffuse_above_global_is_held_at_global_and_listed()
    {
        Write(rows => rows[12][15] = "600");
        var epw = EpwFile.Load(_path);
        Assert.Equal(500, epw.Weather.DiffuseWm2[12]);
        Assert.Equal("600", Assert.Single(epw.Problems).Raw);
    }

    [Fact]
    public void A_missing_hour_is_named_with_the_hour_that_was_expected()
    {
        Write(rows => rows[30] = rows[31]);
        Assert.Contains("line 39: found month 1, day 2, hour 8, expected month 1, day 2, hour 7.", Assert.Throws<RecordException>(() => EpwFile.Load(_path)).Message, StringComparison.Ordinal);
        Write(rows => rows.RemoveAt(100));
        Assert.Contains("found 8759 hours", Assert.Throws<RecordException>(() => EpwFile.Load(_path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Something_else_and_nothing_are_refused_in_words()
    {
        File.WriteAllText(_path, "time,ghi\n1,2\n");
        Assert.Contains("expected LOCATION", Assert.Throws<RecordException>(() => EpwFile.Load(_path)).Message, StringComparison.Ordinal);
        File.WriteAllText(_path, "");
        Assert.Throws<RecordException>(() => EpwFile.Load(_path));
        Assert.Contains("no such file", Assert.Throws<RecordException>(() => EpwFile.Load(_path + "x")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comma_decimal_culture_reads_the_same()
    {
        Write();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(3.5, EpwFile.Load(_path).Weather.WindMs[0]);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
