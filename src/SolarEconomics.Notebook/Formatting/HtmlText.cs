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
        if (className is not null) html.Append(" class=\"").Append(Escape(className)).Append('"');
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
        html.Append(Escape(text));
        return this;
    }

    /// <summary>A heading of a table column or row, and what it heads.</summary>
    internal HtmlText Heading(string scope, string text)
    {
        html.Append("<th scope=\"").Append(scope).Append("\">").Append(Escape(text)).Append("</th>");
        return this;
    }

    /// <summary>Letters of all scripts stay as they are; what could end a text or an attribute is named, and what no document may hold is marked.</summary>
    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            _ = c switch
            {
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '&' => escaped.Append("&amp;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                _ => escaped.Append(char.IsControl(c) && c is not ('\n' or '\t') ? '\ufffd' : c),
            };
        }
        return escaped.ToString();
    }

    public override string ToString() => html.ToString();
}
