using System.Net;
using System.Text;

namespace SolarEconomics.Workbench;

/// <summary>Writes tags of the report. The one place of this room that does, and so the one place that escapes text.</summary>
internal static class Tags
{
    public static string Text(string text) => WebUtility.HtmlEncode(text);

    /// <summary>An element with text in it; nothing when the text is empty.</summary>
    public static StringBuilder Element(this StringBuilder page, string tag, string text, string? className = null) => text.Length == 0 ? page :
        page.Append('<').Append(tag).Append(className is null ? "" : $" class=\"{className}\"").Append('>').Append(Text(text)).Append("</").Append(tag).Append(">\n");

    public static StringBuilder Table(this StringBuilder page, FindingTable table)
    {
        page.Append("<div class=\"sheet\"><table>").Element("caption", table.Caption).Append("<thead><tr>");
        foreach (var column in table.Columns) page.Append("<th scope=\"col\">").Append(Text(column)).Append("</th>");
        page.Append("</tr></thead>\n<tbody>\n");
        var isNumber = table.Columns.Select((_, at) => table.IsOfAmounts(at)).ToList();
        foreach (var row in table.Rows)
        {
            page.Append("<tr>");
            for (var at = 0; at < row.Count; at++) page.Append(at < isNumber.Count && isNumber[at] ? "<td class=\"number\">" : "<td>").Append(Text(row[at])).Append("</td>");
            page.Append("</tr>\n");
        }
        return page.Append("</tbody></table></div>\n");
    }
}
