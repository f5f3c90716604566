using System.Xml;

namespace SolarEconomics.Files;

/// <summary>Reads the XML parts of a workbook: no document types, no entities, names without their namespaces, as the standard has two sets of them.</summary>
internal static class Xml
{
    internal static XmlReader Open(Stream stream) => XmlReader.Create(stream, new XmlReaderSettings
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        CloseInput = true,
    });

    /// <summary>An attribute by its name alone; <see langword="null"/> where there is none.</summary>
    internal static string? Attribute(this XmlReader xml, string name, bool withPrefix = false)
    {
        for (var i = 0; i < xml.AttributeCount; i++)
        {
            xml.MoveToAttribute(i);
            if (!string.Equals(xml.LocalName, name, StringComparison.Ordinal) || (xml.Prefix.Length > 0) != withPrefix) continue;
            var value = xml.Value;
            xml.MoveToElement();
            return value;
        }
        xml.MoveToElement();
        return null;
    }

    /// <summary>Whether an attribute says yes.</summary>
    internal static bool IsSet(this XmlReader xml, string name) => xml.Attribute(name) is "1" or "true";

    /// <summary>Whether the reader stands at the start of an element of a name.</summary>
    internal static bool Begins(this XmlReader xml, string name) => xml.NodeType == XmlNodeType.Element && string.Equals(xml.LocalName, name, StringComparison.Ordinal);

    /// <summary>Whether the reader stands at the end of an element of a name.</summary>
    internal static bool Ends(this XmlReader xml, string name) => xml.NodeType == XmlNodeType.EndElement && string.Equals(xml.LocalName, name, StringComparison.Ordinal);
}
