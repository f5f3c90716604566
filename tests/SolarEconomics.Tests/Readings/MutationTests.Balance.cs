using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace SolarEconomics.Tests;

public sealed partial class MutationTests
{
    private const double TooLargeKwh = 1e14;

    [Fact]
    public void Every_kwh_of_a_broken_table_is_in_a_total_or_in_the_problems() => Balance("meter", "variant.csv", NaiveTable);

    [Fact]
    public void Every_kwh_of_a_broken_table_of_days_is_in_a_total_or_in_the_problems() => Balance("days", "variant.csv", NaiveDays);

    [Fact]
    public void Every_kwh_of_a_broken_nem13_file_is_in_a_total_or_in_the_problems() => Balance("nem13", "variant.csv", NaiveNem13, heads: 1);

    [Fact]
    public void Every_kwh_of_a_broken_espi_feed_is_in_a_total_or_in_the_problems() => Balance("espi", "variant.xml", NaiveEspi, heads: 1, least: 20);

    [Fact]
    public void Every_kwh_of_a_broken_nem12_file_is_in_a_total_or_in_the_problems() => Balance("nem12-30min-quality-and-500.csv", "variant.nem12", NaiveNem12);

    [Fact]
    public void Every_kwh_of_a_broken_long_table_is_in_a_total_or_in_the_problems() => Balance("long", "variant.csv", NaiveLong, heads: 2, least: 8);

    /// <summary>Of a counter, what is counted are steps: each state that can be read stands in the counters, or in a problem of its line.</summary>
    [Fact]
    public void Every_state_of_a_broken_counter_file_is_in_a_counter_or_in_the_problems()
    {
        var bytes = BytesOf("counters");
        var head = Array.IndexOf(bytes, (byte)'\n', Array.IndexOf(bytes, (byte)'\n') + 1) + 1;
        var compared = 0;
        for (var seed = 0; seed < Variants / 2; seed++)
        {
            var text = Encoding.UTF8.GetString([.. bytes.AsSpan(0, head), .. Mutation.Of(bytes[head..], seed)]);
            if (text.AsSpan().IndexOfAny("\0\uFFFD\u2028") >= 0 || text.Count(c => c == '"') % 2 != 0 || text.Replace("\r\n", "\n", StringComparison.Ordinal).Contains('\r', StringComparison.Ordinal)) continue;
            RecordContent content;
            try
            {
                content = RecordReaders.Read(_files.Write("variant.csv", text), new ReadOptions { Zone = Zones.Of("Europe/Dublin") });
            }
            catch (RecordException)
            {
                continue;
            }
            compared++;
            var told = content.Counters.SelectMany(c => c.Readings.Select(r => r.Line)).Concat(content.Problems.Select(p => p.Line)).ToHashSet();
            var lines = text.Split('\n');
            // An odd number of marks on a line is a field that goes on below: its other lines are told with the first one.
            var inside = false;
            for (var line = 2; line < lines.Length; line++)
            {
                var goesOn = inside && !told.Contains(line + 1);
                inside ^= lines[line].Count(c => c == '"') % 2 != 0;
                if (!goesOn && lines[line].AsSpan().Trim().Trim(',').Trim().Length > 0 && !lines[line].StartsWith('#')) Assert.True(told.Contains(line + 1), $"Variant {seed}, line {line + 1} is neither counted nor listed: {lines[line]}");
            }
        }
        Assert.InRange(compared, Variants / 6, Variants / 2);
    }

    /// <summary>Breaks the rows below the head, which stays whole, and compares with a reader that only splits and adds.</summary>
    private void Balance(string name, string fileName, Func<string, double?> naive, int heads = 2, int least = 6)
    {
        var bytes = BytesOf(name);
        var head = 0;
        for (var line = 0; line < heads; line++) head = Array.IndexOf(bytes, (byte)'\n', head) + 1;
        var compared = 0;
        for (var seed = 0; seed < Variants / 2; seed++)
        {
            byte[] variant = [.. bytes.AsSpan(0, head), .. Mutation.Of(bytes[head..], seed)];
            var text = Encoding.UTF8.GetString(variant);
            if (naive(text) is not { } expected) continue;
            RecordContent content;
            try
            {
                content = RecordReaders.Read(_files.Write(fileName, variant), new ReadOptions { Zone = Zones.Of("Europe/Dublin") });
            }
            catch (RecordException)
            {
                continue; // Refused as a whole, in words: nothing was counted, and nothing hidden.
            }
            compared++;
            var counted = content.Channels.Where(c => c.IsEnergy).Sum(c => c.Total.Kwh) + content.Problems.Sum(p => p.UncountedKwh);
            Assert.True(Math.Abs(expected - counted) <= 1e-9 * Math.Max(1, Math.Abs(expected)),
                $"Variant {seed}: naive {expected:R}, counted and listed {counted:R}, difference {expected - counted:R}\n{string.Join('\n', content.Problems)}\n{text}");
        }
        Assert.InRange(compared, Variants / least, Variants / 2);
    }

    /// <summary>Adds the numbers of three columns; null where quotes, lone returns or too many fields leave open what a field is.</summary>
    private static double? NaiveTable(string text)
    {
        if (text.AsSpan().IndexOfAny("\"\0") >= 0 || text.Replace("\r\n", "\n", StringComparison.Ordinal).Contains('\r', StringComparison.Ordinal)) return null;
        var sum = 0.0;
        foreach (var line in text.Split('\n').Skip(2).Select(l => l.TrimEnd('\r')))
        {
            var fields = line.Split(',');
            if (fields.Length > 5) return null;
            if (fields.First(f => f.Trim().Length > 0 || f == fields[^1]).Trim().Equals("total", StringComparison.OrdinalIgnoreCase)) continue;
            for (var i = 1; i <= 3 && i < fields.Length; i++)
                if (NaiveNumber(fields[i], i == 2 ? 1000 : 1) is { } kwh) sum += kwh;
        }
        return sum;
    }

    /// <summary>Adds the numbers of rows that still name one of both channels and its unit; null where a row could be another than it seems.</summary>
    private static double? NaiveLong(string text)
    {
        if (text.AsSpan().IndexOfAny("\"\0\uFFFD") >= 0 || text.Replace("\r\n", "\n", StringComparison.Ordinal).Contains('\r', StringComparison.Ordinal)) return null;
        var sum = 0.0;
        foreach (var fields in text.Split('\n').Skip(1).Select(l => l.TrimEnd('\r').Split(',')))
        {
            if (fields is [""]) continue;
            // Another name or unit makes another channel, with rules of its own.
            if (fields is not [_, "import", _, "kWh"] and not [_, "export", _, "Wh"]) return null;
            sum += NaiveNumber(fields[2], fields[1] == "export" ? 1000 : 1) ?? 0;
        }
        return sum;
    }

    private static double? NaiveNem12(string text)
    {
        if (text.AsSpan().IndexOfAny("\"\0\uFFFD") >= 0) return null;
        var (sum, perDay, divisor) = (0.0, 0, 0);
        foreach (var line in text.Split('\n').Select(l => l.TrimEnd('\r')))
        {
            var fields = line.Split(',');
            if (fields[0] == "900") perDay = 0;
            if (fields[0] == "200")
            {
                perDay = 0;
                // A stream whose unit or length was broken counts nowhere, and says so.
                if (fields.Length < 9 || fields[1].Trim().Length == 0 || fields[4].Trim().Length == 0) continue;
                if (!int.TryParse(fields[8].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) || minutes is < 1 or > 1440 || 1440 % minutes != 0) return null;
                if (fields[7].Trim() != "kWh") return null;
                (perDay, divisor) = (1440 / minutes, 1);
            }
            if (fields[0] != "300") continue;
            if (perDay == 0) return null;
            for (var i = 2; i < 2 + perDay && i < fields.Length; i++)
            {
                var flag = fields[i].Trim().ToUpperInvariant();
                if (flag is ['A' or 'E' or 'F' or 'N' or 'S' or 'V'] or ['A' or 'E' or 'F' or 'N' or 'S' or 'V', >= '0' and <= '9', >= '0' and <= '9']) break;
                if (NaiveNumber(fields[i], divisor) is { } kwh) sum += kwh;
            }
        }
        return sum;
    }

    private static double? NaiveNumber(string field, int divisor) =>
        field.Trim() is [>= '0' and <= '9', .., '-'] ? NaiveNumber("-" + field.Trim()[..^1], divisor) : field.Trim() is { Length: > 0 and <= 64 } text && !text.Any(c => char.IsLetter(c) && c is not ('e' or 'E'))
        && double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var number)
        && Math.Abs(number / divisor) <= TooLargeKwh ? number / divisor : null;

    /// <summary>Adds the cells of all days; null where a field could be another than it seems.</summary>
    private static double? NaiveDays(string text)
    {
        if (text.AsSpan().IndexOfAny("\"\0") >= 0 || text.Replace("\r\n", "\n", StringComparison.Ordinal).Contains('\r', StringComparison.Ordinal)) return null;
        var sum = 0.0;
        foreach (var line in text.Split('\n').Skip(2).Select(l => l.TrimEnd('\r')))
        {
            var fields = line.Split(',');
            if (fields.First(f => f.Trim().Length > 0 || f == fields[^1]).Trim().Equals("total", StringComparison.OrdinalIgnoreCase)) continue;
            sum += fields.Skip(1).Take(24).Sum(f => NaiveNumber(f, 1) ?? 0);
        }
        return sum;
    }

    private static double? NaiveNem13(string text)
    {
        if (text.AsSpan().IndexOfAny("\"\0\uFFFD") >= 0 || text.Replace("\r\n", "\n", StringComparison.Ordinal).Contains('\r', StringComparison.Ordinal)) return null;
        var sum = 0.0;
        foreach (var fields in text.Split('\n').Select(l => l.TrimEnd('\r').Split(',')))
        {
            if (fields[0].Trim() != "250" || fields.Length < 20 || fields[1].Trim().Length == 0) continue;
            if (fields[19].Trim() != "kWh") return null;
            sum += NaiveNumber(fields[18], 1) ?? 0;
        }
        return sum;
    }

    /// <summary>Adds the readings of a feed that still is XML and whose types still say what they said.</summary>
    private static double? NaiveEspi(string text)
    {
        // A byte that is no letter ends the reading in words; what stands behind it is not told apart here.
        if (text.AsSpan().IndexOfAny("\0\uFFFD") >= 0) return null;
        XDocument feed;
        try
        {
            feed = XDocument.Parse(text);
        }
        catch (XmlException)
        {
            return null;
        }
        var names = feed.Descendants().Select(e => e.Name.LocalName).ToHashSet(StringComparer.Ordinal);
        string[] known = ["uom", "powerOfTenMultiplier", "flowDirection", "IntervalBlock", "ReadingType"];
        if (!known.All(names.Contains) || Leaf(feed, "uom") != "72" || Leaf(feed, "powerOfTenMultiplier") != "0" || Leaf(feed, "commodity") is not ("0" or "1" or null) || Leaf(feed, "accumulationBehaviour") is "1" or "2" or "3" or "9") return null;
        if (Leaf(feed, "kind") is not ("0" or null)) return null;
        var sum = 0.0;
        foreach (var reading in feed.Descendants().Where(e => e.Name.LocalName == "IntervalReading"))
        {
            // Only whole readings are told apart here: start and value once each, as numbers, and a duration that the type states where the reading does not.
            if (Leaf(reading, "start") is null) return null;
            var duration = Leaf(reading, "duration") ?? Leaf(feed, "intervalLength") ?? "";
            if (NaiveNumber(Leaf(reading, "start") ?? "", 1) is null || NaiveNumber(duration, 1) is not (>= 0 and <= 400 * 86_400)) continue;
            if (reading.Descendants().Count(e => e.Name.LocalName is "start" or "value") != 2 || reading.Descendants().Count(e => e.Name.LocalName is "duration") > 1 || reading.Descendants().Any(e => e.Name.LocalName == "IntervalReading")) return null;
            if (!long.TryParse(Leaf(reading, "start"), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var start) || start is < 0 or >= 7_258_118_400) continue;
            if (!long.TryParse(duration, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _)) continue;
            if (NaiveNumber(Leaf(reading, "value") ?? "", 1) is { } value && Math.Abs(value) < 1L << 53) sum += value / 1000;
        }
        return sum;
    }

    private static string? Leaf(XContainer within, string name) => within.Descendants().FirstOrDefault(e => e.Name.LocalName == name)?.Value.Trim();
}
