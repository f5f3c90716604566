using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace SolarEconomics.Files.Tests;

/// <summary>Writes small workbooks by hand, part by part after the open standard (ECMA-376), so that the reader is not checked against its own writer.</summary>
internal static class Workbook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/package/2006/relationships";
    private const string OfficeRelations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>A workbook of sheets; a cell is a text, a number, a date and time, a date or a time of day, or nothing.</summary>
    internal static byte[] Of(string prologue, params (string Name, object?[][] Rows)[] sheets) =>
        OfXml("", [.. sheets.Select(s => (s.Name, "", prologue + Sheet(s.Rows)))]);

    /// <summary>A workbook of one sheet named May: what stands before and behind its rows and the rows themselves as XML, and the settings of the workbook.</summary>
    internal static byte[] OfRows(string rows, string behind = "", string before = "", string settings = "", string state = "") =>
        OfXml(settings, ("May", state, $"""<worksheet xmlns="{Main}">{before}<sheetData>{rows}</sheetData>{behind}</worksheet>"""));

    private static byte[] OfXml(string settings, params (string Name, string State, string Xml)[] sheets)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "_rels/.rels", $"""<Relationships xmlns="{Relations}"><Relationship Id="rId1" Type="{OfficeRelations}/officeDocument" Target="xl/workbook.xml"/></Relationships>""");
            Add(zip, "xl/workbook.xml", $"""<workbook xmlns="{Main}" xmlns:r="{OfficeRelations}">{settings}<sheets>{string.Concat(sheets.Select((s, i) => $"""<sheet name="{s.Name}" sheetId="{i + 1}" r:id="rId{i + 1}" {s.State}/>"""))}</sheets></workbook>""");
            Add(zip, "xl/_rels/workbook.xml.rels", $"""<Relationships xmlns="{Relations}">{string.Concat(sheets.Select((_, i) => $"""<Relationship Id="rId{i + 1}" Type="{OfficeRelations}/worksheet" Target="worksheets/sheet{i + 1}.xml"/>"""))}<Relationship Id="rId99" Type="{OfficeRelations}/styles" Target="styles.xml"/></Relationships>""");
            // Formats 22, 14 and 20 of the standard: date and time, date, time of day.
            Add(zip, "xl/styles.xml", $"""<styleSheet xmlns="{Main}"><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="22" applyNumberFormat="1"/><xf numFmtId="14" applyNumberFormat="1"/><xf numFmtId="20" applyNumberFormat="1"/></cellXfs></styleSheet>""");
            for (var i = 0; i < sheets.Length; i++) Add(zip, $"xl/worksheets/sheet{i + 1}.xml", sheets[i].Xml);
        }
        return bytes.ToArray();
    }

    private static string Sheet(object?[][] rows)
    {
        var text = new StringBuilder($"""<worksheet xmlns="{Main}"><sheetData>""");
        for (var r = 0; r < rows.Length; r++)
        {
            text.Append(CultureInfo.InvariantCulture, $"<row r=\"{r + 1}\">");
            for (var c = 0; c < rows[r].Length; c++) text.Append(Cell($"{(char)('A' + c)}{r + 1}", rows[r][c]));
            text.Append("</row>");
        }
        return text.Append("</sheetData></worksheet>").ToString();
    }

    private static string Cell(string at, object? value) => value switch
    {
        null => "",
        string text => $"""<c r="{at}" t="inlineStr"><is><t>{text}</t></is></c>""",
        DateTime time => Number(at, 1, (time - new DateTime(1899, 12, 30)).TotalDays),
        DateOnly day => Number(at, 2, day.DayNumber - new DateOnly(1899, 12, 30).DayNumber),
        TimeOnly time => Number(at, 3, time.ToTimeSpan().TotalDays),
        _ => Number(at, 0, Convert.ToDouble(value, CultureInfo.InvariantCulture)),
    };

    private static string Number(string at, int style, double value) => string.Create(CultureInfo.InvariantCulture, $"""<c r="{at}" s="{style}"><v>{value:R}</v></c>""");

    private static void Add(ZipArchive zip, string name, string text)
    {
        using var writer = new StreamWriter(zip.CreateEntry(name).Open());
        writer.Write("<?xml version=\"1.0\"?>" + text);
    }
}
