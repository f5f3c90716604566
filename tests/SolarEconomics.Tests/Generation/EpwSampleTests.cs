using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>The stored invented year in the open EPW form, whole and broken in the ways in which such files are.</summary>
public sealed class EpwSampleTests : IDisposable
{
    private const int Heading = 8;
    private readonly string _path = Path.Combine(Path.GetTempPath(), $"invented-{Guid.NewGuid():N}.epw");

    public void Dispose() => File.Delete(_path);

    private static string Sample() => Path.Combine(Published.Root(), "tests", "data", "weather", "invented-harbour.epw");

    private EpwFile Broken(Func<List<string[]>, List<string[]>> change, int? year = null)
    {
        var lines = File.ReadAllLines(Sample());
        var rows = change([.. lines.Skip(Heading).Select(l => l.Split(','))]);
        File.WriteAllLines(_path, [.. lines.Take(Heading), .. rows.Select(r => string.Join(',', r))]);
        return EpwFile.Load(_path, year);
    }

    private string Refused(Func<List<string[]>, List<string[]>> change, int? year = null) => Assert.Throws<RecordException>(() => Broken(change, year)).Message;

    private static List<string[]> Changed(List<string[]> rows, Action<List<string[]>> how)
    {
        how(rows);
        return rows;
    }

    [Fact]
    public void The_sample_reads_as_a_plain_walk_over_its_lines_does()
    {
        var epw = EpwFile.Load(Sample());
        var rows = File.ReadAllLines(Sample()).Skip(Heading).Select(l => l.Split(',')).ToList();
        double[] Column(int c) => [.. rows.Select(r => double.Parse(r[c], CultureInfo.InvariantCulture))];
        Assert.Equal(Column(13), epw.Weather.GlobalWm2.ToArray());
        Assert.Equal(Column(14), epw.Weather.BeamNormalWm2.ToArray());
        Assert.Equal(Column(15), epw.Weather.DiffuseWm2.ToArray());
        Assert.Equal(Column(6), epw.Weather.AirC.ToArray());
        Assert.Equal(Column(21), epw.Weather.WindMs.ToArray());
        Assert.Empty(epw.Problems);
        Assert.Equal(("Invented Harbour", 8760, Instant.FromUtc(2023, 1, 1, 0, 0)), (epw.Place, epw.Weather.Grid.Count, epw.Weather.Grid.Start));
        Assert.All(File.ReadAllLines(Sample()).Skip(Heading), l => Assert.Equal(35, l.Split(',').Length));
    }

    [Fact]
    public void A_plant_makes_a_plausible_year_of_it_in_two_lines()
    {
        var site = Site.At("Test", 53.2, -9.1, "Europe/Dublin", "EUR");
        var result = new GenerationModel(new InverterType("i", 4000), new ModuleArray("a", new ModuleType("m", 400), 10, 1, new Plane(35, 180))).Run(site, EpwFile.Load(Sample()).Weather);
        Assert.InRange(result.Yields.PerformanceRatio, 0.75, 0.95);
    }

    [Fact]
    public void A_leap_day_lays_it_on_a_leap_year_and_a_year_of_other_length_is_refused()
    {
        List<string[]> Leap(List<string[]> rows)
        {
            var day = rows.Where(r => r[1] == "2" && r[2] == "28").Select(r => (string[])[.. r[..2], "29", .. r[3..]]).ToList();
            rows.InsertRange(rows.FindIndex(r => r[1] == "3"), day);
            return rows;
        }
        var epw = Broken(Leap);
        Assert.Equal((8784, Instant.FromUtc(2024, 1, 1, 0, 0)), (epw.Weather.Grid.Count, epw.Weather.Grid.Start));
        Assert.Contains("found 8784 hours for the year 2023, expected a year of that length", Refused(Leap, 2023), StringComparison.Ordinal);
        Assert.Contains("found 8760 hours for the year 2024", Refused(rows => rows, 2024), StringComparison.Ordinal);
    }

    [Fact]
    public void Hours_from_0_to_23_are_named_as_such() =>
        Assert.Contains("line 9: found month 1, day 1, hour 0, expected month 1, day 1, hour 1. Hours run from 1 to 24 and none may be missing or repeated. This file counts them from 0 to 23: add 1 to each.",
            Refused(rows => Changed(rows, all => all.ForEach(r => r[3] = $"{int.Parse(r[3], CultureInfo.InvariantCulture) - 1}"))), StringComparison.Ordinal);

    [Theory]
    [InlineData(1, "60 minutes behind")]
    [InlineData(-1, "60 minutes ahead of")]
    [InlineData(10, "minutes behind")]
    public void Light_that_lies_beside_the_sun_is_said(int hoursLate, string words)
    {
        var epw = Broken(rows => [.. rows.Select((r, i) =>
        {
            var from = rows[(i - hoursLate + rows.Count) % rows.Count];
            return (string[])[.. r[..6], .. from[6..]];
        })]);
        var problem = Assert.Single(epw.Problems, p => p.Found.Contains("the sun of the place", StringComparison.Ordinal));
        Assert.Contains(words, problem.Found, StringComparison.Ordinal);
        Assert.Equal(Severity.Doubtful, problem.Severity);
    }

    [Fact]
    public void A_missing_hour_is_named_with_the_line_after_it()
    {
        var message = Refused(rows => Changed(rows, all => all.RemoveAt(1000)));
        Assert.Contains("found 8759 hours, expected 8,760, or 8,784 with a 29 February. Part of a year cannot be used. Line 1009 (month 2, day 11, hour 18) does not follow month 2, day 11, hour 16.", message, StringComparison.Ordinal);
        Assert.Contains("line 1009: found month 2, day 11, hour 16, expected month 2, day 11, hour 17.", Refused(rows => Changed(rows, all => all[1000] = all[999])), StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_radiation_refuses_the_file_and_diffuse_above_global_is_held_and_listed()
    {
        Assert.Contains("column 14: found global radiation \"9999\", expected 0 to 2,000 Wh/m². 9999 marks a gap: radiation is not made up, so take another file.",
            Refused(rows => Changed(rows, all => all[4000][13] = "9999")), StringComparison.Ordinal);
        var noon = 4000 + 12 - (4000 % 24);
        var held = Assert.Single(Broken(rows => Changed(rows, all => all[noon][15] = "1900")).Problems);
        Assert.Contains("diffuse 1900 Wh/m² above global", held.Found, StringComparison.Ordinal);
        Assert.Contains("found \"x\", expected a number with a decimal point", Refused(rows => Changed(rows, all => all[7][14] = "x")), StringComparison.Ordinal);
    }

    [Fact]
    public void Swapped_columns_are_found_by_the_sum_that_they_do_not_make()
    {
        var epw = Broken(rows => Changed(rows, all => all.ForEach(r => (r[13], r[14]) = (r[14], r[13]))));
        Assert.Contains(epw.Problems, p => p.Found.Contains("that beam and diffuse do not make up", StringComparison.Ordinal));
    }

    [Fact]
    public void Four_steps_an_hour_are_refused_in_words()
    {
        File.WriteAllLines(_path, File.ReadAllLines(Sample()).Select((l, i) => i == 7 ? "DATA PERIODS,1,4,Data,Sunday,1/1,12/31" : l));
        Assert.Contains("line 8, column 3: found \"4\" steps an hour in DATA PERIODS, expected 1.", Assert.Throws<RecordException>(() => EpwFile.Load(_path)).Message, StringComparison.Ordinal);
    }
}
