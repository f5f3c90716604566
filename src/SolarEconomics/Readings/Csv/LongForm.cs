namespace SolarEconomics;

/// <summary>A table in long form: one reading in a row, which names its channel in one field and perhaps its unit in another.</summary>
/// <param name="NameIndex">Field of the channel's name, counted from 0.</param>
/// <param name="UnitIndex">Field of the unit; −1 where the header names it.</param>
internal sealed record LongForm(int NameIndex, int UnitIndex)
{
    private const int MostNames = 64;

    private static readonly string[] NameHeaders =
        ["channel", "register", "series", "sensor", "stream", "flow", "direction", "meter", "device", "measurement", "variable", "metric", "suffix", "nmi", "tag", "kanal", "zähler"];

    private static readonly string[] UnitHeaders = ["unit", "units", "uom", "einheit"];

    /// <summary>Finds the field that names channels: by a header that says so, or by few texts that take turns at the same times.</summary>
    internal static LongForm? Find(CsvTable table, string[] headers, StampColumns stamp, NumberText numbers)
    {
        var unit = Array.FindIndex(headers, h => Has(UnitHeaders, h));
        if (unit >= 0 && !table.Rows.All(r => unit < r.Length && EnergyUnit.Find(r[unit].Trim()) is not null)) unit = -1;
        var times = table.Rows.Select(r => Time(r, stamp)).Distinct(StringComparer.Ordinal).Count();
        for (var i = 0; i < headers.Length; i++)
        {
            if (i == stamp.Index || i == stamp.TimeIndex || i == stamp.EndIndex || i == unit || stamp.Parts?.Columns.Contains(i) == true) continue;
            var index = i;
            var names = table.Rows.Select(r => index < r.Length ? r[index].Trim() : "").ToList();
            var different = names.Distinct(StringComparer.OrdinalIgnoreCase).Count();
            if (different > MostNames || names.Exists(n => n.Length == 0)) continue;
            var text = !names.Exists(n => numbers.TryRead(n, out _));
            // Several texts at one time are channels; one text down the file is, where its header says so.
            if (text && different > 1 && times < table.Rows.Count && times * 2L <= (long)table.Rows.Count + different) return new LongForm(index, unit);
            if (Has(NameHeaders, headers[i]) && (text || (different > 1 && times < table.Rows.Count))) return new LongForm(index, unit);
        }
        return null;
    }

    /// <summary>Whether a header says that its texts name channels or meters.</summary>
    internal static bool NamesChannels(string header) => Has(NameHeaders, header);

    /// <summary>All that a row says of its time.</summary>
    private static string Time(string[] row, StampColumns stamp)
    {
        var places = new List<int> { stamp.Index };
        if (stamp.TimeIndex >= 0) places.Add(stamp.TimeIndex);
        if (stamp.Parts is { } parts) places.AddRange(parts.Columns);
        return string.Join(' ', places.Where(p => p < row.Length).Select(p => row[p]));
    }

    private static bool Has(string[] words, string header) =>
        header.Split([' ', '_', '-', '(', ')'], StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } parts && Array.Exists(parts, p => words.Contains(p, StringComparer.OrdinalIgnoreCase))
        && !Array.Exists(parts, p => EnergyUnit.Find(p) is not null);
}
