using System.Text;
using System.Xml;

namespace SolarEconomics.Files;

/// <summary>The texts that the cells of a workbook share.</summary>
internal static class SharedTexts
{
    /// <summary>No workbook of readings holds as much text. Unit: letters.</summary>
    private const long MostLetters = 64L << 20;

    internal static IReadOnlyList<string> Of(Stream part, string file)
    {
        var texts = new List<string>();
        var letters = 0L;
        using var xml = Xml.Open(part);
        while (xml.Read())
        {
            if (!xml.Begins("si")) continue;
            texts.Add(TextIn(xml));
            letters += texts[^1].Length + 1;
            if (letters > MostLetters) throw Throw.TooMuch(file);
        }
        return texts;
    }

    /// <summary>The text of an element that may hold several runs; how it is spoken is left out.</summary>
    internal static string TextIn(XmlReader xml)
    {
        if (xml.IsEmptyElement) return "";
        var (element, depth) = (xml.LocalName, xml.Depth);
        var text = new StringBuilder();
        var spoken = 0;
        var inText = false;
        while (xml.Read() && !(xml.Depth == depth && xml.Ends(element)))
        {
            if (xml.Begins("rPh") && !xml.IsEmptyElement) spoken++;
            else if (xml.Ends("rPh")) spoken--;
            else if (xml.Begins("t")) inText = !xml.IsEmptyElement;
            else if (xml.Ends("t")) inText = false;
            else if (inText && spoken == 0 && xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace) text.Append(xml.Value);
        }
        return text.ToString();
    }
}
