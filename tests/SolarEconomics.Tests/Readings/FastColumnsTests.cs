using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What makes long records quick, each against the plain way: numbers read eight bytes at a time, times in stretches, the look at what is not good only.</summary>
public sealed class FastColumnsTests
{
    private const long FiveMinutesMs = 300_000;

    [Theory]
    [InlineData("0.035,1.2", 5, 0.035)]
    [InlineData("0,0,0,0,0", 1, 0)]
    [InlineData("1234567,8", 7, 1_234_567)]
    [InlineData("12345678,", 8, 12_345_678)]
    [InlineData("1234567.,", 8, 1_234_567)]
    [InlineData(".5,123456", 2, 0.5)]
    [InlineData("5.,123456", 2, 5)]
    [InlineData("99.99999\n", 8, 99.99999)]
    public void A_number_is_read_out_of_eight_bytes(string text, int length, double value)
    {
        Assert.Equal(length, Utf8Number.ReadWord(Word(text), out var read));
        Assert.Equal(value, read);
    }

    [Theory]
    [InlineData(",12345678")]
    [InlineData(".,1234567")]
    [InlineData("-1,123456")]
    [InlineData("é12,12345")]
    [InlineData("\n2024-03-")]
    public void Eight_bytes_without_a_digit_in_front_are_no_number(string text) => Assert.Equal(0, Utf8Number.ReadWord(Word(text), out _));

    [Fact]
    public void Eight_bytes_at_a_time_give_the_double_that_byte_by_byte_gives() =>
        Gen.String[Gen.Char["0123456789.,-\nx"], 8, 12].Sample(text =>
        {
            var bytes = Encoding.ASCII.GetBytes(text);
            var length = Utf8Number.ReadWord(Word(text), out var value);
            if (length == 0 || length >= bytes.Length || bytes[length] != (byte)',') return true;
            var at = 0;
            return Utf8Number.TryRead(bytes, ref at, (byte)',', out var slow) && at == length && BitConverter.DoubleToInt64Bits(slow) == BitConverter.DoubleToInt64Bits(value);
        }, iter: 100_000);

    [Fact]
    public void Times_in_stretches_are_those_of_each_row() =>
        Gen.Int[0, 40].Array[1, 400].Sample(draws =>
        {
            // Now and then a hole, seldom a step back or twice the same time.
            var times = new long[draws.Length];
            for (var i = 1; i < times.Length; i++) times[i] = times[i - 1] + (draws[i] switch { 0 => 3, 1 when draws[0] == 0 => -2, 2 when draws[0] == 1 => 0, _ => 1 } * FiveMinutesMs);
            var stamps = new StampColumn(4);
            for (var from = 0; from < times.Length; from += 7) stamps.Add(times.AsSpan(from, Math.Min(7, times.Length - from)));
            var single = new StampColumn(4);
            foreach (var time in times) single.Add(time);
            var inOrder = times.Zip(times.Skip(1)).All(p => p.Second > p.First);
            return stamps.Count == times.Length && stamps.InOrder == inOrder && single.InOrder == inOrder
                && Enumerable.Range(0, times.Length).All(i => stamps[i] == times[i] && single[i] == times[i])
                && stamps.Each.SequenceEqual(times) && single.Each.SequenceEqual(times);
        });

    [Fact]
    public void A_record_with_holes_keeps_its_times_in_stretches_and_gives_each_of_them()
    {
        var times = Enumerable.Range(0, 1000).Select(i => (i + (i >= 300 ? 24 : 0) + (i >= 900 ? 1 : 0)) * FiveMinutesMs).ToArray();
        var stamps = new StampColumn(1000);
        stamps.Add(times);
        Assert.Equal(3, stamps.Stretches!.Value.Begins.Count);
        Assert.Equal(FiveMinutesMs, IntervalEnds.CommonStepMs(stamps));
        var axis = TimeAxis.OfStamps(stamps, FiveMinutesMs, shift: -1)!;
        var each = TimeAxis.OfMilliseconds(IntervalEnds.OfEnds(times, FiveMinutesMs), times);
        Assert.Equal([300, 900, 1000], new[] { 0, 300, 900 }.Select(axis.EndOfStretch));
        for (var i = 0; i < times.Length; i++) Assert.Equal((each.StartTicks(i), each.EndTicks(i)), (axis.StartTicks(i), axis.EndTicks(i)));
        Assert.Equal(times[299] * 10_000, axis.EndTicks(299));
        Assert.Equal((times[300] - FiveMinutesMs) * 10_000, axis.StartTicks(300));
        Assert.Throws<ArgumentOutOfRangeException>(() => axis.StartTicks(1000));
    }

    [Fact]
    public void The_look_at_what_is_not_good_counts_as_a_look_at_every_interval() =>
        Gen.Int[0, 60].Array[1, 200].Sample(draws =>
        {
            var (starts, ends, kwh, quality) = (new Instant[draws.Length], new Instant[draws.Length], new double[draws.Length], new Quality[draws.Length]);
            var at = Instant.FromUtc(2024, 1, 1, 0, 0);
            for (var i = 0; i < draws.Length; i++)
            {
                if (draws[i] == 1) at += Duration.FromMinutes(15);
                (starts[i], ends[i]) = (at, at + Duration.FromMinutes(draws[0] == 2 && draws[i] == 3 ? 10 : 5));
                at = ends[i];
                quality[i] = draws[i] switch { < 8 and > 3 => Quality.Missing, 8 => Quality.Estimated, 9 => Quality.Filled | Quality.Negative, 10 => Quality.Censored, _ => Quality.Good };
                kwh[i] = quality[i] == Quality.Missing ? 0 : draws[i] / 7.0;
            }
            var channel = new Channel("made", FlowKind.Import, starts, ends, kwh, quality);
            var counts = ChannelQuality.Of(channel);
            var missing = ByHand(channel);
            var kept = Enumerable.Range(0, channel.Count).Where(i => quality[i] != Quality.Missing).ToList();
            return counts.Readings == kept.Count && counts.Missing == missing.Sum(m => m.Intervals)
                && counts.Estimated == quality.Count(q => q == Quality.Estimated) && counts.Negative == counts.Filled.Count
                && counts.Filled.Count == quality.Count(q => q.HasFlag(Quality.Filled)) && counts.Censored == quality.Count(q => q == Quality.Censored)
                && Math.Abs(counts.TotalKwh - kept.Sum(i => kwh[i])) < 1e-9 && counts.Gaps.Select(g => (g.Start, g.End)).SequenceEqual(Joined(missing));
        });

    private static List<(Instant Start, Instant End, int Intervals)> ByHand(Channel channel)
    {
        var usual = channel.UsualStep;
        var found = new List<(Instant, Instant, int)>();
        for (var i = 0; i < channel.Count; i++)
        {
            if (i > 0 && channel.Starts[i] > channel.Ends[i - 1]) found.Add((channel.Ends[i - 1], channel.Starts[i], (int)Math.Round((channel.Starts[i] - channel.Ends[i - 1]) / usual)));
            if (channel.Quality[i].HasFlag(Quality.Missing)) found.Add((channel.Starts[i], channel.Ends[i], Math.Max(1, (int)Math.Round((channel.Ends[i] - channel.Starts[i]) / usual))));
        }
        return found;
    }

    private static List<(Instant, Instant)> Joined(List<(Instant Start, Instant End, int Intervals)> parts)
    {
        var joined = new List<(Instant Start, Instant End)>();
        foreach (var part in parts)
            if (joined.Count > 0 && joined[^1].End == part.Start) joined[^1] = (joined[^1].Start, part.End);
            else joined.Add((part.Start, part.End));
        return joined;
    }

    [Fact]
    public void A_value_left_beside_a_missing_flag_is_in_no_total()
    {
        var start = Instant.FromUtc(2024, 1, 1, 0, 0);
        var starts = Enumerable.Range(0, 11).Select(i => start + Duration.FromHours(i)).ToArray();
        var quality = Enumerable.Range(0, 11).Select(i => i % 3 == 1 ? Quality.Missing : Quality.Good).ToArray();
        var channel = new Channel("made", FlowKind.Import, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. Enumerable.Repeat(2.0, 11)], quality);
        Assert.Equal(2.0 * quality.Count(q => q == Quality.Good), channel.Total.Kwh);
    }

    private static ulong Word(string text) => BinaryPrimitives.ReadUInt64LittleEndian(Encoding.UTF8.GetBytes(text.PadRight(8)).AsSpan(0, 8));

    [Fact]
    public void Rows_with_seconds_empty_cells_other_units_and_minus_signs_give_the_same_on_both_paths()
    {
        using var files = new TestFiles();
        var text = new StringBuilder("start,import (Wh),net (kWh),generation (MWh),note\r\n");
        var seed = new Random(7);
        for (var i = 0; i < 3000; i++)
        {
            var at = new LocalDateTime(2024, 10, 20, 0, 0).PlusMinutes(5 * i);
            var net = seed.Next(9) == 0 ? "" : (seed.NextDouble() - 0.5).ToString(seed.Next(50) == 0 ? "0.000000000" : "0.###", CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"{at:uuuu-MM-dd HH:mm:ss},{seed.Next(400)},{net},{(seed.Next(30) == 0 ? "" : "0.0001")},{(seed.Next(40) == 0 ? "\"a, b\"" : "ok")}\r\n");
        }
        var path = files.Write("mixed.csv", text.ToString());
        var zone = Zones.Of("Europe/Dublin");
        var fast = RecordReaders.Read(path, new ReadOptions { Zone = zone });
        var general = RecordReaders.Read(path, new ReadOptions { Zone = zone, PlainRowsToo = true });
        Assert.Equal(general.Problems, fast.Problems);
        Assert.Equal(general.Channels.Count, fast.Channels.Count);
        foreach (var (a, b) in general.Channels.Zip(fast.Channels))
        {
            Assert.True(a.Starts.SequenceEqual(b.Starts) && a.Ends.SequenceEqual(b.Ends));
            Assert.True(a.Kwh.SequenceEqual(b.Kwh) && a.Quality.SequenceEqual(b.Quality));
        }
    }
}
