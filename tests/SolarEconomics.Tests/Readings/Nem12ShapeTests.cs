using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>NEM12 as programs on the way write it: quoted, with spaces, shortened by a spreadsheet, several meters in one file.</summary>
public sealed class Nem12ShapeTests : IDisposable
{
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    [Fact]
    public void Every_field_may_stand_in_quotes()
    {
        var content = Read(string.Join('\n', File("A").Split('\n').Select(l => string.Join(',', l.Split(',').Select(f => $"\"{f}\"")))));
        Assert.Equal(("NEM12", 24.0), (content.Format, Assert.Single(content.Channels).Total.Kwh));
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void Spaces_after_the_commas_change_nothing()
    {
        var content = Read(File("S14").Replace(",", ", ", StringComparison.Ordinal));
        var quality = ChannelQuality.Of(Assert.Single(content.Channels));
        Assert.Equal(("NEM12", 48, 48, 24.0), (content.Format, quality.Readings, quality.Estimated, quality.TotalKwh));
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void Of_two_days_with_spaces_the_one_updated_last_stands()
    {
        var later = File("A").Split('\n')[2].Replace("20240102000000", " 20240103000000 ", StringComparison.Ordinal).Replace("0.5", "0.75", StringComparison.Ordinal);
        Assert.Equal(36, Assert.Single(Read(File("S14").Replace("900", later + "\n900", StringComparison.Ordinal)).Channels).Total.Kwh);
    }

    [Fact]
    public void Quarter_hours_of_several_meters_with_a_mark_in_front_and_small_letters()
    {
        var content = Read("\uFEFF" + string.Join("\r\n", "100,NEM12,202403020000,A,B",
            "200,NMI1,E1B1,1,e1,N1,M1,kwh,15,", $"300,20240301,{Values(96, "0.25")},A,,,,",
            "200,NMI1,E1B1,2,b1,N1,M1,KWH,15,", $"300,20240301,{Values(96, "0.5")},s14,32,,,",
            "200,NMI2,E1,1,E1,,,Wh,5,", $"300,20240301,{Values(288, "100")},A,,,,", "900", ""));
        Assert.Equal([("NMI1 e1", FlowKind.Import, 24.0, 0), ("NMI1 b1", FlowKind.Export, 48.0, 96), ("NMI2 E1", FlowKind.Import, 28.8, 0)],
            content.Channels.Select(c => (c.Name, c.Flow, Math.Round(c.Total.Kwh, 9), ChannelQuality.Of(c).Estimated)));
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void A_meter_whose_number_a_spreadsheet_has_shortened_is_said()
    {
        var problem = Assert.Single(Read(File("A", "6.102E+09")).Problems);
        Assert.Equal((2, 2, "6.102E+09", Severity.Doubtful), (problem.Line, problem.Column, problem.Raw, problem.Severity));
        Assert.Contains("shortened", problem.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A", 0)]
    [InlineData("E52", 48)]
    [InlineData("F14", 48)]
    [InlineData("F71", 48)]
    [InlineData("S65", 48)]
    [InlineData("s", 48)]
    public void Each_quality_and_method_counts_its_values_once(string quality, int estimated)
    {
        var content = Read(File(quality));
        Assert.Equal((24.0, estimated), (content.Channels[0].Total.Kwh, ChannelQuality.Of(content.Channels[0]).Estimated));
        Assert.Empty(content.Problems);
    }

    [Theory]
    [InlineData("\r")]
    [InlineData("\r\n")]
    public void Lines_may_end_as_old_and_new_programs_end_them(string end)
    {
        var content = Read(File("A").Replace("\n", end, StringComparison.Ordinal) + end);
        Assert.Equal(("NEM12", 24.0), (content.Format, Assert.Single(content.Channels).Total.Kwh));
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void A_problem_of_a_file_with_carriage_returns_names_its_line()
    {
        var problem = Read(File("A").Replace("300,20240101,0.5", "300,20240101,oops", StringComparison.Ordinal).Replace('\n', '\r')).Problems[0];
        Assert.Equal((3, 3, "oops"), (problem.Line, problem.Column, problem.Raw));
    }

    [Theory]
    [InlineData("2024-01-02|2024-01-03", "with the year first")]
    [InlineData("2/01/2024|13/01/2024", "with the day first")]
    [InlineData("1/2/2024|1/13/2024", "with the month first")]
    [InlineData("02.01.2024|13.01.2024", "with the day first")]
    public void Days_that_a_spreadsheet_wrote_anew_are_read_and_said_once(string days, string words)
    {
        var content = Read(Days(days.Split('|')));
        var channel = Assert.Single(content.Channels);
        Assert.Equal(48, channel.Total.Kwh);
        // 2 January begins at 14:00 UTC of the day before.
        Assert.Equal(Instant.FromUtc(2024, 1, 1, 14, 0), channel.Starts[0]);
        var note = Assert.Single(content.Problems);
        Assert.Equal((3, 2, Severity.Note, days.Split('|')[0]), (note.Line, note.Column, note.Severity, note.Raw));
        Assert.EndsWith(words, note.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_in_which_day_and_month_could_change_places_are_asked_back_with_both()
    {
        var text = Days("2/01/2024", "3/01/2024");
        var error = Assert.Throws<RecordException>(() => Read(text));
        Assert.Contains("\"2/01/2024\" is 2 January 2024 with the day first and 1 February 2024 with the month first", error.Message, StringComparison.Ordinal);
        var told = RecordReaders.Read(_files.Write("meter.csv", text), new ReadOptions { DateOrder = DateOrder.DayMonthYear });
        Assert.Equal(Instant.FromUtc(2024, 1, 1, 14, 0), Assert.Single(told.Channels).Starts[0]);
    }

    private static string Days(params string[] days) =>
        "100,NEM12,202401020000,A,B\n200,NMI1,E1,1,E1,N1,M1,kWh,30,\n" + string.Join('\n', days.Select(d => $"300,{d},{Values(48, "0.5")},A,,,,")) + "\n900";

    private static string Values(int count, string value) => string.Join(',', Enumerable.Repeat(value, count));

    private static string File(string quality, string meter = "NMI1") =>
        string.Create(CultureInfo.InvariantCulture, $"100,NEM12,202401020000,A,B\n200,{meter},E1,1,E1,N1,M1,kWh,30,\n300,20240101,{Values(48, "0.5")},{quality},,,20240102000000,\n900");

    private RecordContent Read(string text) => RecordReaders.Read(_files.Write("meter.csv", text), new ReadOptions());
}
