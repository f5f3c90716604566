using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Further forms of tables: one reading in a row, rows of totals, dates and periods as people write them.</summary>
public sealed class TableFormTests : IDisposable
{
    private static readonly Site Berlin = Site.At("Test", 52, 13, "Europe/Berlin", "EUR");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private Readings Read(string text, ReadOptions? options = null) => Readings.Load(_files.Write("table.csv", text), Berlin, options);

    [Theory]
    [InlineData("time,channel,kWh\n2024-06-01 00:00,import,0.5\n2024-06-01 00:00,export,2\n2024-06-01 01:00,import,1\n2024-06-01 01:00,export,3\n")]
    [InlineData("time,register,value,unit\n2024-06-01 00:00,import,0.5,kWh\n2024-06-01 01:00,import,1,kWh\n2024-06-01 00:00,export,2000,Wh\n2024-06-01 01:00,export,3000,Wh\n")]
    [InlineData("what,Date,Time,energy (kWh)\nimport,2024-06-01,00:00,0.5\nexport,2024-06-01,00:00,2\nimport,2024-06-01,01:00,1\nexport,2024-06-01,01:00,3\n")]
    public void A_table_of_one_reading_in_a_row_gives_a_channel_of_each_name(string text)
    {
        var readings = Read(text);
        Assert.Equal([(FlowKind.Import, 1.5, 2), (FlowKind.Export, 5.0, 2)], readings.Channels.Select(c => (c.Flow, c.Total.Kwh, c.Count)));
        Assert.DoesNotContain(readings.Problems, p => p.Severity != Severity.Note);
    }

    [Fact]
    public void A_repeat_in_a_long_table_is_a_repeat_of_its_own_channel()
    {
        var readings = Read("time,channel,kWh\n2024-06-01 00:00,import,0.5\n2024-06-01 00:00,export,2\n2024-06-01 01:00,import,1\n2024-06-01 01:00,export,3\n2024-06-01 01:00,export,9\n");
        Assert.Equal([0, 1], readings.Channels.Select(c => c.ExtraReadings));
        Assert.Equal(9, readings.Problems.Sum(p => p.UncountedKwh));
    }

    [Theory]
    [InlineData(",6,3")]
    [InlineData("Total for the period:,6,3")]
    [InlineData("Subtotal,6.000,3.0")]
    public void A_row_that_repeats_the_sums_is_not_counted_again(string row)
    {
        var readings = Read($"time,import (kWh),export (kWh)\n2024-06-01 00:00,1,1\n2024-06-01 01:00,2,1\n2024-06-01 02:00,3,1\n{row}\n");
        Assert.Equal([6, 3], readings.Channels.Select(c => c.Total.Kwh));
        Assert.Equal(Severity.Note, Assert.Single(readings.Problems).Severity);
    }

    [Fact]
    public void A_row_without_a_time_that_is_no_sum_is_lost_and_said() =>
        Assert.Equal((Severity.Lost, 7.0), Assert.Single(Read("time,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 01:00,2\n,7\n2024-06-01 02:00,3\n").Problems) is var p ? (p.Severity, p.UncountedKwh) : default);

    [Theory]
    [InlineData("Jan 2024", "Feb 2024", "Mar 2024")]
    [InlineData("January 2024", "February 2024", "March 2024")]
    [InlineData("01/2024", "02/2024", "03/2024")]
    [InlineData("2024-01", "2024-02", "2024-03")]
    public void Months_are_read_by_name_and_number(string first, string second, string third)
    {
        var channel = Assert.Single(Read($"month,generation (kWh)\n{first},30\n{second},60\n{third},90\n").Channels);
        Assert.Equal(new LocalDate(2024, 4, 1).AtStartOfDayInZone(Berlin.Zone).ToInstant(), channel.End);
    }

    [Fact]
    public void A_year_of_two_digits_is_of_this_century() =>
        Assert.Equal(new LocalDate(2024, 1, 12).AtStartOfDayInZone(Berlin.Zone).ToInstant(), Assert.Single(Read("date,use (kWh)\n12/01/24,5\n13/01/24,6\n14/01/24,7\n").Channels).Start);

    [Fact]
    public void Short_dates_that_may_begin_with_the_year_are_refused() =>
        Assert.Contains("could change places", Assert.Throws<RecordException>(() => Read("date,use (kWh)\n24/01/12,5\n24/01/13,6\n24/01/14,7\n")).Message);

    [Fact]
    public void The_order_of_day_and_month_may_show_far_down_the_file()
    {
        var rows = Enumerable.Range(0, 14 * 48).Select(i => $"{new LocalDateTime(2024, 5, 1, 0, 0).PlusMinutes(30 * i):MM'/'dd'/'uuuu HH:mm},1");
        Assert.Equal(new LocalDate(2024, 5, 1).AtStartOfDayInZone(Berlin.Zone).ToInstant(), Assert.Single(Read("time,use (kWh)\n" + string.Join('\n', rows) + "\n").Channels).Start);
    }

    [Fact]
    public void Periods_written_with_their_last_day_have_no_gap_between_them()
    {
        var readings = Read("from,to,import (kWh)\n2024-01-03,2024-02-02,400\n2024-02-03,2024-03-05,350\n2024-03-06,2024-04-04,300\n");
        var channel = Assert.Single(readings.Channels);
        Assert.Equal(0, ChannelQuality.Of(channel).Missing);
        Assert.Equal(new LocalDate(2024, 4, 5).AtStartOfDayInZone(Berlin.Zone).ToInstant(), channel.End);
    }

    [Fact]
    public void Periods_written_up_to_the_next_ones_first_day_end_there()
    {
        var channel = Assert.Single(Read("from,to,import (kWh)\n2024-01-03,2024-02-02,400\n2024-02-02,2024-03-05,350\n2024-03-05,2024-04-04,300\n").Channels);
        Assert.Equal(new LocalDate(2024, 4, 4).AtStartOfDayInZone(Berlin.Zone).ToInstant(), channel.End);
    }

    [Fact]
    public void Unix_seconds_may_carry_a_fraction() =>
        Assert.Equal(Instant.FromUnixTimeMilliseconds(1_717_192_800_250), Assert.Single(Read("time,import (kWh)\n1717192800.25,0.5\n1717196400.25,1\n").Channels).Start);

    [Fact]
    public void Quality_written_to_a_table_is_read_back()
    {
        var start = Instant.FromUtc(2024, 6, 1, 0, 0);
        var starts = Enumerable.Range(0, 5).Select(i => start + Duration.FromHours(i)).ToArray();
        Quality[] quality = [Quality.Good, Quality.Estimated, Quality.Missing, Quality.Filled | Quality.Doubtful, Quality.Censored];
        var channel = new Channel("roof", FlowKind.Generation, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [1, 2, 0, 4, 5], quality);
        var path = _files.Write("canonical.csv", "");
        new Readings([channel], [], []).WriteCsv(path);
        var back = Assert.Single(Readings.Load(path, Berlin).Channels);
        Assert.Equal(channel.Quality.ToArray(), back.Quality.ToArray());
        Assert.Equal(channel.Kwh.ToArray(), back.Kwh.ToArray());
    }
}
