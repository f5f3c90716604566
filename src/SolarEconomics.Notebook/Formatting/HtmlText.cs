using System.Net;
using System.Text;

namespace SolarEconomics.Notebook;

/// <summary>Writes tags. The one place that does, and so the one place that escapes text.</summary>
internal sealed class HtmlText
{
    private readonly StringBuilder html = new();

    /// <summary>An element with text in it.</summary>
    internal HtmlText Element(string tag, string? className, string text) => Open(tag, className).Text(text).Close(tag);

    internal HtmlText Open(string tag, string? className = null)
    {
        html.Append('<').Append(tag);
        if (className is not null) html.Append(" class=\"").Append(WebUtility.HtmlEncode(className)).Append('"');
        html.Append('>');
        return this;
    }

    internal HtmlText Close(string tag)
    {
        html.Append("</").Append(tag).Append('>');
        return this;
    }

    internal HtmlText Text(string text)
    {
        html.Append(WebUtility.HtmlEncode(text));
        return this;
    }

    /// <summary>A heading of a table column or row, and what it heads.</summary>
    internal HtmlText Heading(string scope, string text)
    {
        html.Append("<th scope=\"").Append(scope).Append("\">").Append(WebUtility.HtmlEncode(text)).Append("</th>");
        return this;
    }

    public override string ToString() => html.ToString();
}
