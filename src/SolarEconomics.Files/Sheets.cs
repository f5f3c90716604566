namespace SolarEconomics.Files;

/// <summary>Lays the tables of one file side by side as one record.</summary>
internal static class Sheets
{
    internal static RecordContent Join(RecordFile file, string format, IReadOnlyList<(string Sheet, RecordContent Content)> sheets)
    {
        var several = sheets.Count > 1;
        return new RecordContent(file.Path, format, sheets[0].Content.Clock)
        {
            Channels = [.. sheets.SelectMany(s => s.Content.Channels.Select(c => several ? c.Renamed($"{s.Sheet}: {c.Name}") : c))],
            Counters = [.. sheets.SelectMany(s => s.Content.Counters)],
            Problems = [.. sheets.SelectMany(s => s.Content.Problems)],
            Columns = [.. sheets.SelectMany(s => s.Content.Columns)],
        };
    }
}
