using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Tables with a day in each row and its intervals in columns.</summary>
public sealed class DayTableTests : IDisposable
{
    private static readonly DateTimeZone Dublin = Zones.Of("Europe/Dublin");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private static string Times(int stepMinutes, int from = 0) =>
        string.Join(',', Enumerable.Range(0, 1440 / stepMinutes).Select(k => (k * stepMinutes) + from).Select(m => string.Create(CultureInfo.InvariantCulture, $"{m / 60:00}:{m % 60:00}")));

    /// <summary>Cells of 1, 2, 3 …, some left empty.</summary>
    private static string Cells(int count, params int[] empty) => string.Join(',', Enumerable.Range(1, count).Select(k => empty.Contains(k) ? "" : k.ToString(CultureInfo.InvariantCulture)));

    private RecordContent Read(string text, ReadOptions? options = null) => RecordReaders.Read(_files.Write("days.csv", text), (options ?? new ReadOptions()) with { Zone = Dublin });

    [Theory]
    [InlineData(5)]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(60)]
    public void A_day_in_each_row_becomes_one_channel_in_order_of_time(int step)
    {
        var perDay = 1440 / step;
        var content = Read($"Import in Wh\ndate,{Times(step)}\n2024-05-01,{Cells(perDay)}\n2024-05-02,{Cells(perDay)}\n");
        var channel = Assert.Single(content.Channels);
        Assert.Equal(("table of days", FlowKind.Import, "Wh", 2 * perDay, Duration.FromMinutes(step)), (content.Format, channel.Flow, channel.Unit, channel.Count, channel.Step));
        Assert.Equal(Instant.FromUtc(2024, 4, 30, 23, 0), channel.Start);
        Assert.Equal(perDay * (perDay + 1) / 1000.0, channel.Total.Kwh, 9);
        Assert.Equal((0.001, perDay / 1000.0), (channel.Kwh[0], channel.Kwh[perDay - 1]));
        Assert.Empty(content.Problems);
        Assert.Contains("headers are the times of a day", content.Columns[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Headers_that_name_ends_put_the_first_column_at_midnight()
    {
        var content = Read($"date,{Times(30, from: 30)},unit\n2024-05-01,{Cells(48)},kWh\n");
        Assert.Equal(Instant.FromUtc(2024, 4, 30, 23, 0), content.Channels[0].Start);
        Assert.Equal(Instant.FromUtc(2024, 5, 1, 23, 0), content.Channels[0].End);
    }

    [Fact]
    public void The_hour_that_spring_skipped_has_no_interval_and_a_value_in_it_is_lost_in_words()
    {
        var whole = Read($"date,{Times(60)},unit\n2024-03-31,{Cells(24, 2)},kWh\n");
        Assert.Equal((23, 298.0), (whole.Channels[0].Count, whole.Channels[0].Total.Kwh));
        Assert.Equal(Duration.FromHours(1), whole.Channels[0].Step);
        Assert.Empty(whole.Problems);

        var problem = Assert.Single(Read($"date,{Times(60)},unit\n2024-03-31,{Cells(24)},kWh\n").Problems);
        Assert.Equal((Severity.Lost, 2, 3, 2.0), (problem.Severity, problem.Line, problem.Column, problem.UncountedKwh));
        Assert.Contains("an interval that 2024-03-31 did not have in Europe/Dublin", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void The_hour_that_autumn_showed_twice_is_a_doubt_where_it_has_one_column()
    {
        var content = Read($"date,{Times(60)},unit\n2024-10-27,{Cells(24)},kWh\n2024-10-28,{Cells(24)},kWh\n");
        Assert.Equal((600.0, 1), (content.Channels[0].Total.Kwh, ChannelQuality.Of(content.Channels[0]).Missing));
        var doubt = Assert.Single(content.Problems);
        Assert.Equal(Severity.Doubtful, doubt.Severity);
        Assert.Contains("24 columns for a day of 25 hours", doubt.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_columns_of_one_time_are_the_two_passes_of_the_autumn_hour()
    {
        var headers = Times(60).Replace("01:00,", "01:00,01:00,", StringComparison.Ordinal);
        var content = Read($"date,{headers},unit\n2024-10-27,{Cells(25)},kWh\n2024-10-28,{Cells(25, 3)},kWh\n");
        Assert.Equal((49, 325.0 + 322.0), (content.Channels[0].Count, content.Channels[0].Total.Kwh));
        Assert.Equal(Duration.FromHours(1), content.Channels[0].Step);
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void Numbered_columns_count_the_time_that_passed_on_days_of_clock_changes()
    {
        var headers = string.Join(',', Enumerable.Range(1, 50).Select(n => $"Interval {n}"));
        var content = Read($"Date,Register,{headers},Unit\n2024-03-31,import,{Cells(46)},,,,,kWh\n2024-10-26,import,{Cells(48)},,,kWh\n2024-10-27,import,{Cells(50)},kWh\n2024-10-27,export,{Cells(50)},kWh\n");
        Assert.Equal([("import", FlowKind.Import, 46 + 48 + 50), ("export", FlowKind.Export, 50)], content.Channels.Select(c => (c.Name, c.Flow, c.Count)));
        Assert.Equal(Instant.FromUtc(2024, 10, 28, 0, 0), content.Channels[0].End);
        Assert.Equal((46 * 47 / 2) + (48 * 49 / 2) + (50 * 51 / 2), content.Channels[0].Total.Kwh);
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void Two_groups_of_columns_are_two_channels_and_a_total_is_counted_in_none()
    {
        var headers = string.Join(';', Times(60).Split(',').Select(t => "Bezug " + t).Concat(Times(60).Split(',').Select(t => "Einspeisung " + t)));
        var content = Read($"Datum;{headers};Summe\n13.05.2024;{string.Join(';', Enumerable.Repeat("0,25", 48))};12\nGesamt;{string.Join(';', Enumerable.Repeat("0,25", 48))};12\n", new ReadOptions { UnitWhereNone = "kWh" });
        Assert.Equal([(FlowKind.Import, 6.0), (FlowKind.Export, 6.0)], content.Channels.Select(c => (c.Flow, c.Total.Kwh)));
        Assert.Equal("a row of totals", Assert.Single(content.Problems).Found);
    }

    [Theory]
    [InlineData("12:00 AM,1:00 AM,2:00 AM,3:00 AM,4:00 AM,5:00 AM,6:00 AM,7:00 AM,8:00 AM,9:00 AM,10:00 AM,11:00 AM,12:00 PM,1:00 PM,2:00 PM,3:00 PM,4:00 PM,5:00 PM,6:00 PM,7:00 PM,8:00 PM,9:00 PM,10:00 PM,11:00 PM")]
    [InlineData("0000,0100,0200,0300,0400,0500,0600,0700,0800,0900,1000,1100,1200,1300,1400,1500,1600,1700,1800,1900,2000,2100,2200,2300")]
    [InlineData("0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23")]
    [InlineData("H1,H2,H3,H4,H5,H6,H7,H8,H9,H10,H11,H12,H13,H14,H15,H16,H17,H18,H19,H20,H21,H22,H23,H24")]
    [InlineData("00:00-01:00,01:00-02:00,02:00-03:00,03:00-04:00,04:00-05:00,05:00-06:00,06:00-07:00,07:00-08:00,08:00-09:00,09:00-10:00,10:00-11:00,11:00-12:00,12:00-13:00,13:00-14:00,14:00-15:00,15:00-16:00,16:00-17:00,17:00-18:00,18:00-19:00,19:00-20:00,20:00-21:00,21:00-22:00,22:00-23:00,23:00-24:00")]
    public void Headers_are_read_as_people_write_them(string headers)
    {
        var channel = Assert.Single(Read($"Usage (kWh)\nDay,{headers}\n2024-05-01,{Cells(24)}\n").Channels);
        Assert.Equal((FlowKind.Use, 24, 300.0, Instant.FromUtc(2024, 4, 30, 23, 0)), (channel.Flow, channel.Count, channel.Total.Kwh, channel.Start));
    }

    [Fact]
    public void A_unit_that_nothing_names_is_not_guessed_and_one_line_corrects_it()
    {
        var text = $"date,{Times(60)}\n2024-05-01,{Cells(24)}\n";
        Assert.Contains("no unit for \"readings\": its numbers add up to 300.000000 kWh if they are kWh, and to 0.300000 kWh if they are Wh", Assert.Single(Read(text).Problems).Found, StringComparison.Ordinal);
        var corrected = Read(text, new ReadOptions { Columns = [ColumnMeaning.Of("readings", FlowKind.Generation, "Wh")] });
        Assert.Equal((FlowKind.Generation, 0.3), (corrected.Channels[0].Flow, corrected.Channels[0].Total.Kwh));
        Assert.Contains("because the user says so", corrected.Columns[0].Reason, StringComparison.Ordinal);
        Assert.Throws<UnknownNameException>(() => Read(text, new ReadOptions { Columns = [ColumnMeaning.Of("reading", FlowKind.Generation)] }));
    }

    [Fact]
    public void Power_in_the_columns_becomes_energy() =>
        Assert.Equal(0.3, Assert.Single(Read($"PV power in W\nday,{Times(60)}\n2024-05-01,{Cells(24)}\n").Channels).Total.Kwh, 9);

    [Fact]
    public void Broken_cells_and_days_are_listed_with_their_energy()
    {
        var content = Read($"date,{Times(60)},unit\n2024-05-01,{Cells(24).Replace("3,", "x,", StringComparison.Ordinal)},kWh\n2024-05-32,{Cells(24)},kWh\n2024-05-02,{Cells(24)},kWh\n2024-05-02,{Cells(24)},kWh\n");
        Assert.Contains(content.Problems, p => p is { Line: 2, Severity: Severity.Lost, Raw: "x" });
        Assert.Contains(content.Problems, p => p is { Line: 3, Severity: Severity.Lost, UncountedKwh: 300 });
        Assert.Equal(24, content.Channels[0].ExtraReadings);
    }
}
