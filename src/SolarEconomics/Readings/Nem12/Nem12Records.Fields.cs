using System.Text;

namespace SolarEconomics;

/// <content>Fields of a line, and the few kinds of them.</content>
internal sealed partial class Nem12Records
{
    private bool _saidAnew;

    private static bool IsQuality(ReadOnlySpan<byte> field) => TryQuality(field, out _);

    /// <summary>The letter of a quality with or without its two digits of method, for example A or F51.</summary>
    private static bool TryQuality(ReadOnlySpan<byte> field, out char letter)
    {
        field = field.Trim((byte)' ');
        letter = field.IsEmpty ? '\0' : char.ToUpperInvariant((char)field[0]);
        return letter is 'A' or 'E' or 'F' or 'N' or 'S' or 'V' && field.Length is 1 or 3
            && (field.Length == 1 || (char.IsAsciiDigit((char)field[1]) && char.IsAsciiDigit((char)field[2])));
    }

    /// <summary>A day as the format writes it, 20240301; or as a spreadsheet wrote it anew, which is said once.</summary>
    private bool TryDay(ReadOnlySpan<byte> field, int number, out long day)
    {
        day = 0;
        field = field.Trim((byte)' ');
        var isAnew = Nem12Dates.IsWrittenAnew(field);
        if (!(field.Length == 8 || isAnew) || !StampText.TryRead(Decode(field), isAnew ? order : DateOrder.YearMonthDay, out var stamp)) return false;
        if (stamp.Fineness != StampFineness.Day || stamp.LocalMs < 0) return false;
        if (isAnew && !_saidAnew)
        {
            problems.Note(number, 2, Text(field), $"\"{Text(field)}\" where the date stands, as a spreadsheet writes it", $"20240301 and the like; it and its kind are read {Nem12Dates.Words(order)}");
            _saidAnew = true;
        }
        day = stamp.LocalMs / 86_400_000;
        return true;
    }

    private static ReadOnlySpan<byte> NextField(ReadOnlySpan<byte> line, ref int at)
    {
        if (at > line.Length) return default;
        var rest = line[at..];
        var comma = rest.IndexOf(Comma);
        var field = comma < 0 ? rest : rest[..comma];
        at += field.Length + 1;
        return field;
    }

    private static string[] Fields(ReadOnlySpan<byte> line) => Encoding.UTF8.GetString(line).Split(',', StringSplitOptions.TrimEntries);

    /// <summary>The bytes as they are, to be read; what is shown to people goes through <see cref="Text"/>, which takes odd letters out.</summary>
    private static string Decode(ReadOnlySpan<byte> bytes) => Encoding.UTF8.GetString(bytes[..Math.Min(bytes.Length, 400)]);

    private static string Text(ReadOnlySpan<byte> bytes) => ProblemList.Shorten(Encoding.UTF8.GetString(bytes[..Math.Min(bytes.Length, 400)]));
}
