using System.Globalization;
using NodaTime;

namespace SolarEconomics.Files.Tests;

/// <summary>What real sheets hold beside plain cells: hidden rows, merged cells, errors, formulas, and days counted from 1904. Written by hand after the open standard.</summary>
public sealed class XlsxCellsTests : IDisposable
{
    private static readonly Site Dublin = Site.At("Test", 53, -9, "Europe/Dublin", "EUR");
    private const string Head = """<row r="1"><c r="A1" t="inlineStr"><is><t>Time</t></is></c><c r="B1" t="inlineStr"><is><t>Import (kWh)</t></is></c></row>""";
    private readonly Places _places = new();

    public void Dispose() => _places.Dispose();

    private Readings Read(byte[] book) => Readings.Load(_places.Write("book.xlsx", book), Dublin);

    /// <summary>Serial number of a half hour of 1 May 2024, counted from 1900 or 1904.</summary>
    private static string Serial(int halfHour, int firstDay = 45413) => (firstDay + (halfHour / 48.0)).ToString("R", CultureInfo.InvariantCulture);

    private static string Row(int number, string second, string attributes = "", string? first = null) =>
        $"""<row r="{number}" {attributes}>{first ?? $"""<c r="A{number}" s="1"><v>{Serial(number - 2)}</v></c>"""}{second}</row>""";

    private static string Rows(Func<int, string> second) => Head + string.Concat(Enumerable.Range(2, 48).Select(n => Row(n, second(n))));

    private static string Quarter(int row) => $"""<c r="B{row}"><v>0.25</v></c>""";

    [Fact]
    public void Rows_columns_and_sheets_that_are_hidden_are_counted_and_said()
    {
        var rows = Head + string.Concat(Enumerable.Range(2, 48).Select(n => Row(n, Quarter(n), n is 10 or 11 or 12 ? "hidden=\"1\"" : "")));
        var readings = Read(Workbook.OfRows(rows, before: """<cols><col min="2" max="2" hidden="1"/></cols>""", state: "state=\"hidden\""));
        Assert.Equal(12, Assert.Single(readings.Channels).Total.Kwh, 12);
        Assert.Equal(["a sheet that the workbook hides", "3 rows that the sheet hides, the first row 10", "column B, which the sheet hides"], readings.Problems.Select(p => p.Found));
        Assert.All(readings.Problems, p => Assert.Equal((Severity.Note, "book.xlsx [May]"), (p.Severity, p.File)));
    }

    [Fact]
    public void A_date_in_merged_cells_holds_for_all_its_rows()
    {
        var head = """<row r="1"><c r="A1" t="inlineStr"><is><t>Date</t></is></c><c r="B1" t="inlineStr"><is><t>Time</t></is></c><c r="C1" t="inlineStr"><is><t>Import (kWh)</t></is></c></row>""";
        var rows = string.Concat(Enumerable.Range(2, 48).Select(n => Row(n, string.Create(CultureInfo.InvariantCulture, $"""<c r="B{n}" s="3"><v>{(n - 2) / 48.0:R}</v></c><c r="C{n}"><v>0.25</v></c>"""), first: n == 2 ? """<c r="A2" s="2"><v>45413</v></c>""" : "")));
        var channel = Assert.Single(Read(Workbook.OfRows(head + rows, """<mergeCells count="1"><mergeCell ref="A2:A49"/></mergeCells>""")).Channels);
        Assert.Equal((48, Instant.FromUtc(2024, 4, 30, 23, 0), Duration.FromMinutes(30)), (channel.Count, channel.Start, channel.Step));
        Assert.Equal(12, channel.Total.Kwh, 12);
    }

    [Fact]
    public void A_header_merged_over_its_columns_names_each_and_a_title_over_the_table_names_none()
    {
        var head = """
            <row r="1"><c r="A1" t="inlineStr"><is><t>Solar production of my house</t></is></c></row>
            <row r="2"><c r="A2" t="inlineStr"><is><t>Time</t></is></c><c r="B2" t="inlineStr"><is><t>Grid (kWh)</t></is></c></row>
            <row r="3"><c r="B3" t="inlineStr"><is><t>import</t></is></c><c r="C3" t="inlineStr"><is><t>export</t></is></c></row>
            """;
        var rows = string.Concat(Enumerable.Range(4, 48).Select(n => Row(n, $"""<c r="B{n}"><v>0.25</v></c><c r="C{n}"><v>0.5</v></c>""", first: $"""<c r="A{n}" s="1"><v>{Serial(n - 4)}</v></c>""")));
        var readings = Read(Workbook.OfRows(head + rows, """<mergeCells><mergeCell ref="A1:C1"/><mergeCell ref="B2:C2"/><mergeCell ref="A2:A3"/></mergeCells>"""));
        Assert.Equal([(FlowKind.Import, 12.0), (FlowKind.Export, 24.0)], readings.Channels.Select(c => (c.Flow, Math.Round(c.Total.Kwh, 9))));
    }

    [Fact]
    public void A_number_in_merged_cells_is_counted_once_and_said_with_its_cells()
    {
        var readings = Read(Workbook.OfRows(Rows(n => n == 5 ? """<c r="B5"><v>0.5</v></c>""" : n == 6 ? "" : Quarter(n)), """<mergeCells><mergeCell ref="B5:B6"/></mergeCells>"""));
        var problem = Assert.Single(readings.Problems, p => p.Severity == Severity.Doubtful);
        Assert.Equal((5, 2, "0.5", "one number in the merged cells B5:B6"), (problem.Line, problem.Column, problem.Raw, problem.Found));
        Assert.Equal((12.0, 1), (Math.Round(readings.Channels[0].Total.Kwh, 9), ChannelQuality.Of(readings.Channels[0]).Missing));
    }

    [Theory]
    [InlineData("#N/A"), InlineData("#DIV/0!"), InlineData("#REF!"), InlineData("#VALUE!"), InlineData("#NAME?")]
    public void An_error_in_a_cell_is_said_with_sheet_cell_and_text(string error)
    {
        var readings = Read(Workbook.OfRows(Rows(n => n == 7 ? $"""<c r="B7" t="e"><v>{error}</v></c>""" : Quarter(n))));
        var problem = Assert.Single(readings.Problems);
        Assert.Equal(("book.xlsx [May]", 7, 2, error, Severity.Lost), (problem.File, problem.Line, problem.Column, problem.Raw, problem.Severity));
        Assert.Equal($"\"{error}\" under \"Import\" in cell B7", problem.Found);
        Assert.Equal(11.75, readings.Channels[0].Total.Kwh, 12);
    }

    [Fact]
    public void A_formula_counts_by_its_saved_value_and_one_without_is_said()
    {
        var readings = Read(Workbook.OfRows(Rows(n => n switch
        {
            6 => """<c r="B6"><f>1/4</f><v>0.25</v></c>""",
            7 => """<c r="B7" t="str"><f>TEXT(0.25,"0.00")</f><v>0.25</v></c>""",
            8 => """<c r="B8"><f>C8*0.5</f></c>""",
            _ => Quarter(n),
        })));
        var problem = Assert.Single(readings.Problems);
        Assert.Equal((8, 2, "=C8*0.5", "a formula without a saved value in cell B8"), (problem.Line, problem.Column, problem.Raw, problem.Found));
        Assert.Equal(11.75, readings.Channels[0].Total.Kwh, 12);
    }

    [Fact]
    public void A_sheet_of_formulas_without_any_saved_value_is_refused_with_the_way_out()
    {
        var rows = Head + string.Concat(Enumerable.Range(2, 9).Select(n => Row(n, $"""<c r="B{n}"><f>Z{n}</f></c>""", first: $"""<c r="A{n}" s="1"><f>Y{n}</f></c>""")));
        Assert.Contains("18 formulas whose values were not saved", Assert.Throws<RecordException>(() => Read(Workbook.OfRows(rows))).Message);
    }

    [Theory]
    [InlineData("", 45413)]
    [InlineData("<workbookPr date1904=\"1\"/>", 45413 - 1462)]
    public void Days_count_from_the_first_of_the_workbook(string settings, int firstDay)
    {
        var rows = Head + string.Concat(Enumerable.Range(2, 48).Select(n => Row(n, Quarter(n), first: $"""<c r="A{n}" s="1"><v>{Serial(n - 2, firstDay)}</v></c>""")));
        var channel = Assert.Single(Read(Workbook.OfRows(rows, settings: settings)).Channels);
        Assert.Equal((Instant.FromUtc(2024, 4, 30, 23, 0), 12.0), (channel.Start, Math.Round(channel.Total.Kwh, 9)));
    }

    [Fact]
    public void Rows_and_columns_that_are_left_out_of_the_file_keep_the_places_of_the_others()
    {
        var rows = """<row r="3"><c r="C3" t="inlineStr"><is><t>Time</t></is></c><c r="E3" t="inlineStr"><is><t>Import (kWh)</t></is></c></row>"""
            + string.Concat(Enumerable.Range(5, 48).Select(n => $"""<row r="{n}"><c r="C{n}" s="1"><v>{Serial(n - 5)}</v></c>{(n == 9 ? "<c r=\"E9\" t=\"inlineStr\"><is><t>soon</t></is></c>" : $"<c r=\"E{n}\"><v>0.25</v></c>")}</row>"""));
        var readings = Read(Workbook.OfRows(rows));
        var lost = Assert.Single(readings.Problems, p => p.Severity == Severity.Lost);
        Assert.Equal((9, 5, "soon"), (lost.Line, lost.Column, lost.Raw));
        Assert.Equal(11.75, Assert.Single(readings.Channels).Total.Kwh, 12);
    }

    [Theory]
    [InlineData("General", false)]
    [InlineData("0.00\" kWh\"", false)]
    [InlineData("#,##0.00\\ \\k\\W\\h;[Red]-0.00", false)]
    [InlineData("yyyy\\-mm\\-dd hh:mm", true)]
    [InlineData("[h]:mm", true)]
    [InlineData("[$-409]d/m/yy h:mm AM/PM;@", true)]
    [InlineData("0.00E+00", false)]
    public void A_format_tells_times_from_numbers(string code, bool isTime) => Assert.Equal(isTime, CellFormats.IsTimeCode(code));

    [Theory]
    [InlineData(45413, false, "2024-05-01")]
    [InlineData(45413.5, false, "2024-05-01 12:00:00")]
    [InlineData(0.25, false, "06:00:00")]
    [InlineData(1, false, "24:00:00")]
    [InlineData(59, false, "1900-02-28")]
    [InlineData(61, false, "1900-03-01")]
    [InlineData(0, true, "00:00:00")]
    [InlineData(43951.020833333336, true, "2024-05-01 00:30:00")]
    [InlineData(-1, false, null)]
    [InlineData(2958466, false, null)]
    public void A_number_of_days_is_the_date_that_the_standard_gives(double days, bool from1904, string? text) => Assert.Equal(text, CellText.TimeOf(days, from1904));

    [Theory]
    [InlineData(0, 1, "A1")]
    [InlineData(25, 9, "Z9")]
    [InlineData(26, 10, "AA10")]
    [InlineData(16_383, 1_048_576, "XFD1048576")]
    public void A_cell_has_the_name_that_workbooks_show(int column, int row, string name)
    {
        Assert.Equal(name, SheetCell.NameOf(column, row));
        Assert.True(SheetCell.TryPlace(name, out var readColumn, out var readRow));
        Assert.Equal((column, row), (readColumn, readRow));
    }

    [Theory]
    [InlineData("Workbook", "a workbook of the form before 2007 (.xls)")]
    [InlineData("Book", "a workbook of the form before 2007 (.xls)")]
    [InlineData("EncryptedPackage", "a workbook locked by a password")]
    [InlineData("WordDocument", "no workbook is found")]
    public void A_file_of_the_old_form_is_refused_by_what_is_in_it_with_the_way_out(string part, string found)
    {
        // The part in the second sector of the directory, to which only the table of sectors leads.
        var message = Assert.Throws<RecordException>(() => Read(CompoundFileOf("Root Entry", "A", "B", "C", part))).Message;
        Assert.Contains(found, message, StringComparison.Ordinal);
        Assert.Contains("XLSX", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_the_old_form_that_is_cut_off_is_refused_too() =>
        Assert.Contains("no workbook is found", Assert.Throws<RecordException>(() => Read(CompoundFileOf("Root Entry", "Workbook")[..600])).Message, StringComparison.Ordinal);

    /// <summary>The least compound file: header, table of sectors in sector 0, directory from sector 1 on, by the open specification from memory.</summary>
    private static byte[] CompoundFileOf(params string[] parts)
    {
        const int Sector = 512;
        var directory = (parts.Length + 3) / 4;
        var file = new byte[Sector * (2 + directory)];
        new byte[] { 0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1 }.CopyTo(file, 0);
        file[30] = 9;
        void Number(int at, int value) => BitConverter.GetBytes(value).CopyTo(file, at);
        Number(48, 1);
        for (var k = 0; k < 109; k++) Number(76 + (k * 4), k == 0 ? 0 : -1);
        Number(Sector, -3);
        for (var s = 1; s <= directory; s++) Number(Sector + (s * 4), s == directory ? -2 : s + 1);
        for (var k = 0; k < parts.Length; k++)
        {
            var at = (Sector * 2) + (k * 128);
            System.Text.Encoding.Unicode.GetBytes(parts[k]).CopyTo(file, at);
            BitConverter.GetBytes((ushort)((parts[k].Length + 1) * 2)).CopyTo(file, at + 64);
        }
        return file;
    }
}
