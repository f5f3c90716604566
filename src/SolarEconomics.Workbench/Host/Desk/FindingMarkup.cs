using System.Xml;
using System.Xml.Linq;

namespace SolarEconomics.Workbench;

/// <summary>Reads a finding back from the HTML in which every client shows it, so that the page can draw it from text alone.</summary>
/// <remarks>Whoever wrote the HTML: only its text is taken, never a tag.</remarks>
internal static class FindingMarkup
{
    private static readonly XmlReaderSettings Settings = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };

    /// <summary>The finding, or null when the HTML is something else.</summary>
    public static FindingAnswer? Read(string html)
    {
        if (!html.TrimStart().StartsWith("<div class=\"finding\"", StringComparison.Ordinal)) return null;
        try
        {
            using var reader = XmlReader.Create(new StringReader(html), Settings);
            var root = XElement.Load(reader);
            return new FindingAnswer(TextOf(root, "finding-figure"), TextOf(root, "finding-words"), Items(root, "finding-cautions"), Items(root, "finding-notes"),
                [.. root.Descendants("table").Select(Table)]);
        }
        catch (XmlException)
        {
            // Well-formed only for a browser: it is shown as foreign HTML instead.
            return null;
        }
    }

    private static FindingTable Table(XElement table)
    {
        var rows = table.Descendants("tr").Select(row => (Cells: (IReadOnlyList<string>)[.. row.Elements().Select(cell => cell.Value)], IsHead: row.Elements("td").All(_ => false))).ToList();
        var head = rows.FirstOrDefault(row => row.IsHead).Cells ?? [];
        return new FindingTable(table.Element("caption")?.Value ?? "", head, [.. rows.Where(row => !row.IsHead).Select(row => row.Cells)]);
    }

    private static string TextOf(XElement root, string name) => Named(root, name).FirstOrDefault()?.Value ?? "";

    private static IReadOnlyList<string> Items(XElement root, string name) => [.. Named(root, name).Descendants("li").Select(item => item.Value)];

    private static IEnumerable<XElement> Named(XElement root, string name) => root.Descendants().Where(element => (string?)element.Attribute("class") == name);
}
