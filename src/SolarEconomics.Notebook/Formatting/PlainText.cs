using System.Collections;
using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>Any value in words: what it says of itself, lists item by item.</summary>
internal static class PlainText
{
    /// <summary>Items of a list that are written; an endless one ends there too.</summary>
    private const int Most = 50;

    internal static string Of(object? value, CultureInfo culture) => value switch
    {
        null => "nothing (null)",
        string text => text,
        IFormattable formattable => formattable.ToString(null, culture),
        IFinding finding => FindingWords.Of(finding.Say(culture)),
        IEnumerable items => OfItems(items, culture),
        _ => value.ToString() ?? "",
    };

    private static string OfItems(IEnumerable items, CultureInfo culture)
    {
        var shown = new List<string>();
        foreach (var item in items)
        {
            if (shown.Count == Most)
            {
                shown.Add("…");
                break;
            }
            shown.Add(item is null ? "nothing (null)" : item is string or IFormattable ? Of(item, culture) : item.ToString() ?? "");
        }
        return shown.Count == 0 ? "an empty list" : string.Join('\n', shown);
    }
}
