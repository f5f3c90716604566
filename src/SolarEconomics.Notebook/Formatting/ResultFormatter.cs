using System.Globalization;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>A value of a step as data by MIME type, the richest that a client knows is shown.</summary>
internal static class ResultFormatter
{
    internal static JsonObject Format(object? value, CultureInfo culture) => new() { ["text/plain"] = PlainText.Of(value, culture) };
}
