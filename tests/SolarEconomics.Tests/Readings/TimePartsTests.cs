using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Times that stand in several columns, and units that stand in cells.</summary>
public sealed class TimePartsTests : IDisposable
{
    private static readonly DateTimeZone Dublin = Zones.Of("Europe/Dublin");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private RecordContent Read(string text) => RecordReaders.Read(_files.Write("table.csv", text), new ReadOptions { Zone = Dublin });

    [Theory]
    [InlineData("Year,generation (kWh)\n2022,3000\n2023,3100\n", 2022, 2024)]
    [InlineData("Year,Month,generation (kWh)\n2023,11,100\n2023,12,80\n", 2023, 2024)]
    [InlineData("Jahr;Monat;Ertrag (kWh)\n2023;Nov;100\n2023;Dez;80\n", 2023, 2024)]
    [InlineData("year,month,day,generation (kWh)\n2023,12,30,5\n2023,12,31,4\n", 2023, 2024)]
    public void Parts_of_a_date_are_read_to_the_end_of_the_period(string text, int firstYear, int endYear)
    {
        var channel = Assert.Single(Read(text).Channels);
        Assert.Equal(firstYear, channel.Start!.Value.InZone(Dublin).Year);
        Assert.Equal(new LocalDateTime(endYear, 1, 1, 0, 0), channel.End!.Value.InZone(Dublin).LocalDateTime);
        Assert.Equal((FlowKind.Generation, 2), (channel.Flow, channel.Count));
    }

    [Fact]
    public void Year_to_minute_in_columns_is_one_time()
    {
        var channel = Assert.Single(Read("Year,Month,Day,Hour,Minute,PV (Wh)\n2024,5,1,0,0,10\n2024,5,1,0,30,20\n2024,5,1,1,0,30\n").Channels);
        Assert.Equal((Instant.FromUtc(2024, 4, 30, 23, 0), Duration.FromMinutes(30), 0.06), (channel.Start, channel.Step, channel.Total.Kwh));
    }

    [Fact]
    public void Hours_beside_a_date_are_those_of_the_clock_and_the_repeated_one_goes_by_row_order()
    {
        var rows = string.Concat(new[] { 0, 1, 1 }.Concat(Enumerable.Range(2, 22)).Select(h => $"2024-10-27,{h},1\n"));
        var channel = Assert.Single(Read("Date,Hour,import (kWh)\n" + rows).Channels);
        Assert.Equal((25, Duration.FromHours(1)), (channel.Count, channel.Step));
    }

    [Theory]
    [InlineData("2024-03-31", 46)]
    [InlineData("2024-05-01", 48)]
    [InlineData("2024-10-27", 50)]
    public void Numbered_half_hours_count_the_time_that_passed(string day, int count)
    {
        var content = Read("Settlement Date,Settlement Period,import (kWh)\n" + string.Concat(Enumerable.Range(1, count).Select(n => $"{day},{n},0.5\n")));
        var channel = Assert.Single(content.Channels);
        Assert.Equal((count, Duration.FromMinutes(30), count * 0.5), (channel.Count, channel.Step, channel.Total.Kwh));
        Assert.Empty(content.Problems);
    }

    [Fact]
    public void A_number_beyond_the_end_of_the_day_is_lost_with_its_energy()
    {
        var content = Read("date,period,import (kWh)\n" + string.Concat(Enumerable.Range(1, 48).Select(n => $"2024-03-31,{n},0.5\n")));
        Assert.Equal(2, content.Problems.Count(p => p is { Severity: Severity.Lost, UncountedKwh: 0.5 }));
        Assert.Contains("number 47 on a day of 23 hours in Europe/Dublin", content.Problems[0].Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_behind_each_number_is_the_units_of_the_column()
    {
        var content = Read("time,import\n2024-05-01 00:00,1.5 kWh\n2024-05-01 01:00,500 Wh\n2024-05-01 02:00,5 V\n");
        Assert.Equal((2.0, "kWh"), (content.Channels[0].Total.Kwh, content.Channels[0].Unit));
        Assert.Contains("its first number says kWh", content.Columns[1].Reason, StringComparison.Ordinal);
        Assert.Equal((Severity.Lost, "5 V"), (Assert.Single(content.Problems).Severity, content.Problems[0].Raw));
    }

    [Fact]
    public void A_column_that_is_empty_from_top_to_bottom_loses_nothing()
    {
        var content = Read("time,import (kWh),notes\n2024-05-01 00:00,1,\n2024-05-01 01:00,2,\n");
        Assert.Single(content.Channels);
        Assert.Equal(Severity.Note, Assert.Single(content.Problems).Severity);
    }

    [Theory]
    [InlineData("date,import (kWh)\n2024-01-01,1\n2024-04-01,2\n2024-07-01,3\n2024-10-01,4\n", "2025-01-01")]
    [InlineData("date,import (kWh)\n2024-01-04,1\n2024-03-07,2\n2024-05-11,3\n2024-07-06,4\n", "2024-08-06")]
    [InlineData("week,import (kWh)\n2024-W51,1\n2024-W52,2\n2025-W01,4\n", "2025-01-06")]
    public void Quarters_bills_and_weeks_follow_each_other_without_a_gap(string text, string end)
    {
        var channel = Assert.Single(Read(text).Channels);
        Assert.Equal(0, ChannelQuality.Of(channel).Missing);
        Assert.Equal(end, channel.End!.Value.InZone(Dublin).Date.ToString("uuuu-MM-dd", null));
    }

    [Theory]
    [InlineData("\u00A0")]
    [InlineData("\u202F")]
    [InlineData("\u2009")]
    [InlineData("'")]
    [InlineData("’")]
    [InlineData(" ")]
    public void Thousands_are_parted_by_any_mark(string mark) =>
        Assert.Equal(2.4695, Assert.Single(Read($"time;import (Wh)\n2024-05-01 00:00;1{mark}234,5\n2024-05-01 01:00;1{mark}235,0\n").Channels).Total.Kwh, 9);

    [Fact]
    public void Steps_of_one_size_in_every_row_are_no_daily_counter()
    {
        var rows = string.Concat(Enumerable.Range(0, 144).Select(i => FormattableString.Invariant($"2024-05-{(i / 48) + 1:00} {i % 48 / 2:00}:{i % 2 * 30:00},{i % 48 * 0.01:0.00}\n")));
        Assert.Equal(3 * 11.28, Assert.Single(Read("time,PV (kWh)\n" + rows).Channels).Total.Kwh, 9);
    }
}
