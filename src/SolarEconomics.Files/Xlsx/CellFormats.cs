using System.Globalization;

namespace SolarEconomics.Files;

/// <summary>Tells by the format of a cell whether its number is a date or a time. Source: readings-serial.</summary>
internal sealed class CellFormats
{
    private readonly List<bool> _isTime = [];

    internal static CellFormats None { get; } = new();

    /// <summary>Whether numbers of a style are dates or times.</summary>
    internal bool IsTime(int style) => style >= 0 && style < _isTime.Count && _isTime[style];

    internal static CellFormats Of(Stream part)
    {
        var formats = new CellFormats();
        var own = new Dictionary<int, string>();
        using var xml = Xml.Open(part);
        var inCells = false;
        while (xml.Read())
        {
            if (xml.Begins("numFmt") && Number(xml.Attribute("numFmtId")) is { } id) own[id] = xml.Attribute("formatCode") ?? "";
            else if (xml.Begins("cellXfs")) inCells = !xml.IsEmptyElement;
            else if (xml.Ends("cellXfs")) inCells = false;
            else if (inCells && xml.Begins("xf")) formats._isTime.Add(Number(xml.Attribute("numFmtId")) is { } format && (own.TryGetValue(format, out var code) ? IsTimeCode(code) : IsTimeNumber(format)));
        }
        return formats;
    }

    /// <summary>Formats without a code in the file: dates and times have these numbers, those of East Asian calendars too.</summary>
    private static bool IsTimeNumber(int format) => format is (>= 14 and <= 22) or (>= 27 and <= 36) or (>= 45 and <= 47) or (>= 50 and <= 58);

    /// <summary>Whether a code shows a part of a date or a time, outside of texts, colours and conditions.</summary>
    internal static bool IsTimeCode(string code)
    {
        if (code.Equals("General", StringComparison.OrdinalIgnoreCase)) return false;
        for (var i = 0; i < code.Length; i++)
        {
            switch (code[i])
            {
                case '\\' or '_' or '*':
                    i++;
                    break;
                case '"':
                    i = End(code, '"', i + 1);
                    break;
                case '[':
                    var end = End(code, ']', i + 1);
                    // Hours, minutes or seconds that passed stand in brackets; so do colours, conditions and languages.
                    if (end > i + 1 && code.AsSpan(i + 1, end - i - 1).IndexOfAnyExcept("hHmMsS") < 0) return true;
                    i = end;
                    break;
                case 'y' or 'Y' or 'm' or 'M' or 'd' or 'D' or 'h' or 'H' or 's' or 'S':
                    return true;
            }
        }
        return false;
    }

    private static int End(string code, char mark, int from) => code.IndexOf(mark, from) is >= 0 and var at ? at : code.Length;

    private static int? Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
