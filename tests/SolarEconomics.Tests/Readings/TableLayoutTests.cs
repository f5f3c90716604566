using System.Text;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Tables as people's programs write them: each is read right, or refused with what would make it clear.</summary>
public sealed class TableLayoutTests : IDisposable
{
    private static readonly Site Berlin = Site.At("Test", 52, 13, "Europe/Berlin", "EUR");
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private Readings Read(string text, ReadOptions? options = null, Encoding? encoding = null) =>
        Readings.Load(_files.Write("table.csv", text, encoding), Berlin, options);

    private static void IsOneAndAHalf(Readings readings)
    {
        var channel = Assert.Single(readings.Channels);
        Assert.Equal((1.5, 2, FlowKind.Import), (channel.Total.Kwh, channel.Count, channel.Flow));
        Assert.Equal(Instant.FromUtc(2024, 5, 31, 22, 0), channel.Start);
        Assert.Equal(Duration.FromHours(1), channel.Step);
        Assert.DoesNotContain(readings.Problems, p => p.Severity == Severity.Lost);
    }

    [Theory]
    [InlineData("time;import (kWh)\n01.06.2024 00:00;0,5\n01.06.2024 01:00;1,0\n")]
    [InlineData("time\timport (kWh)\n2024/06/01 00:00\t0.5\n2024/06/01 01:00\t1.0\n")]
    [InlineData("time|import kWh\n2024-06-01T00:00:00+02:00|0.5\n2024-06-01T01:00:00+02:00|1.0\n")]
    [InlineData("time,import (Wh)\n2024-06-01 00:00,500\n2024-06-01 01:00,\"1,000.0\"\n")]
    [InlineData("Date,Time,Import kWh\n2024-06-01,00:00,0.5\n2024-06-01,01:00,1\n")]
    [InlineData("Report of my meter\nMade on a Sunday\n\ntime,import (kWh)\n2024-06-01 00:00,0.5\n2024-06-01 01:00,1\n")]
    [InlineData("time,Import\n,(kWh)\n2024-06-01 00:00,0.5\n2024-06-01 01:00,1\n")]
    [InlineData("Time,Grid\n,import\n,[Wh]\n2024-06-01 00:00,500\n2024-06-01 01:00,1000\n")]
    [InlineData("time,import (kWh)\n2024-06-01 00:00,0.5\n2024-06-01 01:00,1\nTotal,1.5\n")]
    [InlineData("\"time\",\"import (kWh)\"\n\"2024-06-01 00:00\",\"0.5\"\n\"2024-06-01 01:00\",\"1\"\n")]
    [InlineData("time,import (kWh)\n1717192800,0.5\n1717196400,1\n")]
    [InlineData("time,import (kWh)\n1717192800000,0.5\n1717196400000,1\n")]
    [InlineData("interval end,import (kWh)\n2024-06-01 01:00,0.5\n2024-06-01 02:00,1\n")]
    [InlineData("start,end,import (kWh)\n2024-06-01 00:00,2024-06-01 01:00,0.5\n2024-06-01 01:00,2024-06-01 02:00,1\n")]
    [InlineData("time,import (kW)\n2024-06-01 00:00,0.5\n2024-06-01 01:00,1\n")]
    [InlineData("time,import (kWh)\n1 Jun 2024 12:00 am,0.5\n1 Jun 2024 1:00 AM,1\n")]
    [InlineData("time,import (kWh)\r2024-06-01 00:00,0.5\r2024-06-01 01:00,1\r")]
    [InlineData("time;import (MWh);price\n2024-06-01 00:00;0.0005;0.30\n2024-06-01 01:00;0.001;0.30\n")]
    public void A_table_of_this_layout_is_read(string text) => IsOneAndAHalf(Read(text));

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("utf-8")]
    public void A_table_with_a_byte_order_mark_is_read(string encoding) =>
        IsOneAndAHalf(Read("time;import (kWh)\r\n01.06.2024 00:00;0,5\r\n01.06.2024 01:00;1,0\r\n", encoding: Encoding.GetEncoding(encoding)));

    [Fact]
    public void Dates_that_could_be_either_way_are_refused_with_both_readings()
    {
        const string Text = "time,import (kWh)\n01/06/2024 00:00,0.5\n01/06/2024 01:00,1\n";
        var message = Assert.Throws<RecordException>(() => Read(Text)).Message;
        Assert.Contains("\"01/06/2024 00:00\" is 1 June 2024 with the day first and 6 January 2024 with the month first", message);
        IsOneAndAHalf(Read(Text, new ReadOptions { DateOrder = DateOrder.DayMonthYear }));
    }

    [Fact]
    public void A_number_above_12_far_down_the_file_tells_the_order_of_dates()
    {
        var text = new StringBuilder("time,import (kWh)\n");
        for (var at = new LocalDateTime(2024, 6, 1, 0, 0); at.Month == 6; at = at.PlusMinutes(5)) text.Append(at.ToString("MM/dd/uuuu HH:mm", null)).Append(",1\n");
        var channel = Assert.Single(Read(text.ToString()).Channels);
        Assert.Equal((30 * 288.0, 30 * 288), (channel.Total.Kwh, channel.Count));
    }

    [Fact]
    public void A_number_that_could_be_either_way_is_refused_with_both_readings() =>
        Assert.Contains("\"1,234\", which is 1234 if \",\" parts thousands and 1.234 if it is the decimal mark",
            Assert.Throws<RecordException>(() => Read("time;import (kWh)\n01.06.2024 00:00;1,234\n01.06.2024 01:00;2,345\n")).Message);

    [Fact]
    public void A_column_says_why_it_is_read_as_it_is_and_is_corrected_in_one_line()
    {
        const string Text = "time,PV (Wh),Balance\n2024-06-01 00:00,500,7\n2024-06-01 01:00,1000,8\n";
        var guessed = Read(Text);
        Assert.Equal("column 2 \"PV (Wh)\" is read as generation in Wh because of the word \"pv\" and because its header says (Wh)", guessed.Columns[1].Reason);
        Assert.Contains(guessed.Problems, p => p.Severity == Severity.Lost && p.Found.StartsWith("no unit for \"Balance\"", StringComparison.Ordinal));
        var corrected = Read(Text, new ReadOptions { Columns = [ColumnMeaning.Of("Balance", FlowKind.Export, "kWh")] });
        Assert.Equal((FlowKind.Export, 15.0), (corrected.Channels[1].Flow, corrected.Channels[1].Total.Kwh));
    }

    [Fact]
    public void A_correction_of_a_column_that_is_not_there_names_the_nearest() =>
        Assert.Contains("such as import (kWh)", Assert.Throws<UnknownNameException>(() =>
            Read("time,import (kWh)\n2024-06-01 00:00,1\n", new ReadOptions { Columns = [ColumnMeaning.Of("imports (kWh)", FlowKind.Import)] })).Message);

    [Fact]
    public void A_sum_of_columns_belongs_to_no_flow()
    {
        var readings = Read("time,wind (kWh),solar (kWh),wind+solar (kWh)\n2024-06-01 00:00,1,2,3\n2024-06-01 01:00,1,2,3\n");
        Assert.Equal([FlowKind.Generation, FlowKind.Generation, FlowKind.Unknown], readings.Channels.Select(c => c.Flow));
    }

    [Fact]
    public void Monthly_totals_last_their_months()
    {
        var channel = Assert.Single(Read("month,generation (kWh)\n2024-01,30\n2024-02,60\n2024-03,90\n").Channels);
        Assert.Equal([31.0 * 24, 29 * 24, (31 * 24) - 1], Enumerable.Range(0, 3).Select(i => (channel.Ends[i] - channel.Starts[i]).TotalHours));
    }

    [Fact]
    public void Samples_of_power_are_joined_by_lines_up_to_the_longest_bridge()
    {
        var readings = Read("time,generation (W)\n2024-06-01 10:00:00,1000\n2024-06-01 10:06:10,2000\n2024-06-01 10:09:03,1000\n2024-06-01 11:00:00,1000\n2024-06-01 11:10:00,1000\n");
        var channel = Assert.Single(readings.Channels);
        // By hand: 1.5 kW over 370 s and over 173 s, nothing over 51 minutes, 1 kW over 10 minutes.
        Assert.Equal((1.5 * 543 / 3600) + (1.0 / 6), channel.Total.Kwh, 12);
        Assert.Equal(Quality.Missing, channel.Quality[2]);
    }

    [Fact]
    public void States_of_a_counter_become_the_energy_between_them()
    {
        var readings = Read("time,Lifetime generation (kWh)\n2024-06-01 00:00,100\n2024-06-01 01:00,101\n2024-06-01 02:00,104\n2024-06-01 03:00,0.5\n2024-06-01 04:00,1\n");
        var channel = Assert.Single(readings.Channels);
        Assert.Equal([1, 3, 0.5, 0.5], channel.Kwh.ToArray());
        Assert.Equal(1, channel.Resets);
        Assert.Equal(5, Assert.Single(readings.Problems).Line);
    }

    [Fact]
    public void A_row_cut_by_a_decimal_comma_is_lost_and_said() =>
        Assert.Contains("3 fields", Assert.Single(Read("time,import (kWh)\n2024-06-01 00:00,1\n2024-06-01 01:00,1,5\n2024-06-01 02:00,1\n").Problems).Found);
}
