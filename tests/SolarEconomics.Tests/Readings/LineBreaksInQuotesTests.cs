using System.Globalization;
using System.Text;

namespace SolarEconomics.Tests;

/// <summary>Quoted fields that hold line breaks, as spreadsheets write wrapped headers and notes: one field, and every line keeps its number.</summary>
public sealed class LineBreaksInQuotesTests : IDisposable
{
    private const int Variants = 3000;
    private readonly TestFiles _files = new();

    public void Dispose() => _files.Dispose();

    private static string Hour(int hour) => hour.ToString("00", CultureInfo.InvariantCulture);

    private (InspectedFile Fast, InspectedFile General) Both(string text)
    {
        var path = _files.Write("table.csv", text);
        return (Assert.Single(Inspection.Of([path], options: new ReadOptions { Zone = Zones.Of("Europe/Berlin") }).Files),
            Assert.Single(Inspection.Of([path], options: new ReadOptions { Zone = Zones.Of("Europe/Berlin"), PlainRowsToo = true }).Files));
    }

    private InspectedFile Look(string text)
    {
        var (fast, general) = Both(text);
        Assert.Equal(general.Problems, fast.Problems);
        Assert.Equal(general.Channels, fast.Channels);
        return fast;
    }

    private static string Rows(Func<int, string> rest, string end = "\n") => string.Concat(Enumerable.Range(0, 24).Select(h => $"2024-05-01 {Hour(h)}:00,{rest(h)}{end}"));

    [Theory, InlineData("\n"), InlineData("\r\n"), InlineData("\r")]
    public void A_header_of_several_lines_is_one_header(string end)
    {
        var file = Look($"Exported by hand,{end}\"Time\n(local)\",\"Import\n(Wh)\",\"PV\nenergy\n(kWh)\"{end}" + Rows(_ => "500,1", end));
        // By hand: 24 hours of 500 Wh and of 1 kWh.
        Assert.Equal([("Import", 12.0), ("PV energy", 24.0)], file.Channels.Select(c => (c.Name, c.TotalKwh!.Value)));
        Assert.Empty(file.Problems);
    }

    [Fact]
    public void Headers_over_two_rows_may_hold_line_breaks_in_both()
    {
        var file = Look("Time,\"Grid\nimport\",\"Roof\ngeneration\"\n,\"Energy\n(kWh)\",\"Energy\n(Wh)\"\n" + Rows(_ => "1,250"));
        Assert.Equal([("Grid import Energy", FlowKind.Import, 24.0), ("Roof generation Energy", FlowKind.Generation, 6.0)], file.Channels.Select(c => (c.Name, c.Flow, c.TotalKwh!.Value)));
    }

    [Fact]
    public void A_note_of_several_lines_is_one_field_and_later_lines_keep_their_numbers()
    {
        var file = Look("Time,Import (kWh),note\n" + Rows(h => h switch { 3 => "1,\"visit:\n2024-05-01 by hand, all well\n\nsaid \"\"done\"\"\"", 9 => "x,", _ => "1," }));
        // By hand: row 3 stands on lines 5 to 8, row 9 six below row 3's last line; 23 readable hours of 1 kWh.
        var problem = Assert.Single(file.Problems);
        Assert.Equal((14, 23.0, 1), (problem.Line, file.Channels[0].TotalKwh!.Value, file.Channels[0].Missing));
    }

    [Fact]
    public void A_row_that_holds_a_note_of_several_lines_is_named_by_its_first_line()
    {
        var file = Look("Time,Import (kWh),note\n" + Rows(h => h switch { 3 => "x,\"two\nlines\"", 7 => "1,cloudy", _ => "1," }));
        Assert.Equal(5, Assert.Single(file.Problems).Line);
    }

    [Fact]
    public void A_mark_that_is_never_closed_is_said_and_swallows_nothing()
    {
        var file = Look("Time,Import (kWh),note\n" + Rows(h => h == 3 ? "1,\"never closed" : "1,"));
        var problem = Assert.Single(file.Problems);
        Assert.Equal((5, 3, 24.0, Severity.Doubtful), (problem.Line, problem.Column, file.Channels[0].TotalKwh!.Value, problem.Severity));
        Assert.Contains("a quotation mark that opens the field and is never closed", problem.Found);
    }

    [Fact]
    public void A_mark_before_the_rows_that_is_never_closed_is_said_too()
    {
        var file = Look("Report,\"of May\nTime,Import (kWh)\n" + Rows(_ => "1"));
        Assert.Equal((1, 2), (Assert.Single(file.Problems).Line, file.Problems[0].Column));
        Assert.Equal(24.0, file.Channels[0].TotalKwh);
    }

    [Fact]
    public void A_mark_above_a_table_of_days_that_is_never_closed_is_said()
    {
        var slots = string.Join(',', Enumerable.Range(0, 24).Select(h => FormattableString.Invariant($"{h:00}:00")));
        var values = string.Join(',', Enumerable.Repeat("0.5", 24));
        var file = Look($"Report,\"of May\ndate,{slots}\n2024-05-01,{values}\n2024-05-02,{values}\n2024-05-03,{values}\n");
        // The other problem is that no unit is written: energy is not counted until it is said.
        Assert.Equal(2, file.Problems.Count);
        Assert.Equal((1, 2, Severity.Doubtful), (file.Problems[0].Line, file.Problems[0].Column, file.Problems[0].Severity));
        Assert.Contains("a quotation mark that opens the field and is never closed", file.Problems[0].Found);
        Assert.Equal(72, Assert.Single(file.Channels).Readings);
    }

    [Fact]
    public void A_row_between_two_marks_is_still_a_row()
    {
        var file = Look("Time,Import (kWh),note\n" + Rows(h => h switch { 3 => "1,\"open", 5 => "1,shut\"", _ => "1," }));
        Assert.Equal((24.0, 24), (file.Channels[0].TotalKwh!.Value, file.Channels[0].Readings));
        Assert.Equal(5, Assert.Single(file.Problems).Line);
    }

    [Fact]
    public void A_mark_on_every_line_that_is_never_closed_takes_no_time()
    {
        var text = new StringBuilder("Time,Import (kWh),note\n").Append(Rows(_ => "1,"));
        for (var i = 0; i < 20_000; i++) text.Append(CultureInfo.InvariantCulture, $"not a row {i},\"open\n");
        var file = Look(text.ToString());
        Assert.Equal(24.0, file.Channels[0].TotalKwh);
    }

    [Fact]
    public void Typed_counters_may_hold_notes_of_several_lines()
    {
        var path = _files.Write("typed.csv", "date,device,kwh,note\n2024-01-01,roof,100,\"read\nby hand\"\n2024-02-01,roof,x,\n2024-03-01,roof,180,\n");
        var content = RecordReaders.Read(path, new ReadOptions { Zone = Zones.Of("Europe/Berlin") });
        Assert.Equal([(2, "read by hand"), (5, null)], Assert.Single(content.Counters).Readings.Select(r => (r.Line, r.Note)));
        Assert.Equal(4, Assert.Single(content.Problems).Line);
    }

    [Fact]
    public void Both_paths_agree_and_no_row_is_swallowed_on_broken_variants()
    {
        var bytes = Encoding.UTF8.GetBytes("\"Invented\nfor a test\"\n\"Time\n(local)\",\"Import\n(kWh)\",\"note\n\"\n" + Rows(h => h % 5 == 2 ? $"1,\"note {h}\nline, two\n\"\"three\"\"\"" : h % 5 == 4 ? "1,\"one\"" : "1,"));
        for (var seed = 0; seed < Variants; seed++)
        {
            var broken = Mutation.Of(bytes, seed);
            var path = _files.Write("variant.csv", broken);
            var fast = Inspection.Of([path], options: new ReadOptions { Zone = Zones.Of("Europe/Berlin") });
            var general = Inspection.Of([path], options: new ReadOptions { Zone = Zones.Of("Europe/Berlin"), PlainRowsToo = true });
            Assert.True(fast.ToJson() == general.ToJson(), $"Variant {seed}: fast\n{fast.ToJson()}\ngeneral\n{general.ToJson()}\nof\n{Encoding.UTF8.GetString(broken)}");
            if (fast.Files[0].ExitCode == 2 || fast.Files[0].Problems.Count > 0) continue;
            // Nothing was said, so every line that is a row by itself must have been counted.
            var whole = Encoding.UTF8.GetString(broken).Split(['\n', '\r']).Count(l => System.Text.RegularExpressions.Regex.IsMatch(l, @"^2024-05-01 \d\d:\d\d,1,"));
            var counted = fast.Files[0].Channels.Max(c => c.Readings + c.Missing + c.Repeated);
            Assert.True(counted >= whole, $"Variant {seed}: {counted} of {whole} rows were counted: {fast.ToJson()} of\n{Encoding.UTF8.GetString(broken)}");
        }
    }

    [Fact]
    public void The_general_reader_gets_the_text_as_it_stands_where_no_field_goes_on()
    {
        var random = new Random(7);
        for (var round = 0; round < 300; round++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(200)).Select(_ => "ab,\n\r\r\n"[random.Next(7)]));
            using var whole = new WholeRowsText(new WholeRows(new TextLines(new StringReader(text)).Next, [','], _ => false));
            using var plain = new StringReader(text);
            var lines = new List<string>();
            while (plain.ReadLine() is { } line) lines.Add(line);
            Assert.Equal(string.Concat(lines.Select(l => l + "\n")), whole.ReadToEnd());
        }
    }
}
