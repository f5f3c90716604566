namespace SolarEconomics.Files;

/// <summary>Lays the tables of one file side by side as one record.</summary>
internal static class Sheets
{
    /// <summary>Whether any reader takes it for a table of readings.</summary>
    internal static bool IsTable(RecordFile table) => RecordReaders.All.Any(r => r.Recognises(table));

    /// <summary>A sheet that holds a table but could not be read: nothing but the reason.</summary>
    internal static RecordContent Refused(RecordFile file, RecordException why) => new(file.Path, "", NodaTime.DateTimeZone.Utc)
    {
        Problems = [why.Reason is { } reason ? reason with { Expected = reason.Expected + "; nothing of that sheet was counted" }
            : new Problem(file.Name, 0, 0, "", why.Message, "a table that can be read; nothing of that sheet was counted", Severity.Lost), .. why.Problems],
    };

    internal static RecordContent Join(RecordFile file, string format, IReadOnlyList<(string Sheet, RecordContent Content)> sheets)
    {
        var several = sheets.Count(s => s.Content.Channels.Count > 0) > 1;
        return new RecordContent(file.Path, format, sheets[0].Content.Clock)
        {
            Channels = [.. sheets.SelectMany(s => s.Content.Channels.Select(c => several ? c.Renamed($"{s.Sheet}: {c.Name}") : c))],
            Counters = [.. sheets.SelectMany(s => s.Content.Counters)],
            Problems = [.. sheets.SelectMany(s => s.Content.Problems)],
            Columns = [.. sheets.SelectMany(s => s.Content.Columns)],
        };
    }
}
