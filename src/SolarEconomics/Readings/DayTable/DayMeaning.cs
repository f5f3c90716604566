using System.Globalization;

namespace SolarEconomics;

/// <summary>Understands what a group of columns of a table of days holds: by the texts of its rows, its headers, and the lines above them.</summary>
internal static class DayMeaning
{
    private const string NoName = "readings";

    /// <summary>What the user says of the channel instead; <see langword="null"/> where nothing.</summary>
    internal static ColumnMeaning? CorrectionOf(DayTableHead head, SlotGroup group, string rowName, ReadOptions options) =>
        options.Columns.FirstOrDefault(c => c.Corrects(ShownName(group, rowName)) || c.Corrects(head.Headers[group.Slots[0].Column]));

    private static string ShownName(SlotGroup group, string rowName) => $"{rowName} {group.Name}".Trim() is { Length: > 0 } name ? name : NoName;

    internal static ColumnMeaning Of(DayTableHead head, SlotGroup group, string rowName, string rowUnit, ReadOptions options)
    {
        var (first, last) = (group.Slots[0].Column, group.Slots[^1].Column);
        var where = string.Create(CultureInfo.InvariantCulture, $"columns {first + 1} to {last + 1} \"{head.Headers[first].Trim()}\" to \"{head.Headers[last].Trim()}\"");
        var why = $"{where} are read as a day of {group.PerDay} intervals because their headers are {(group.Numbered ? "numbers in a row" : "the times of a day")}";
        var shown = ShownName(group, rowName);
        if (CorrectionOf(head, group, rowName, options) is { } correction)
            return correction with { Header = shown, Number = first + 1, Reason = $"{why}, and as {HeaderWords.Name(correction.Flow)} in {correction.Unit} because {correction.Reason}" };
        var unit = rowUnit.Length > 0 ? rowUnit : UnitIn(head.Headers[first]) ?? UnitIn(head.Headers[head.Table.StampIndex]) ?? UnitAbove(head.Above);
        var meaning = HeaderWords.Understand(shown, first + 1, unit, options.UnitWhereNone, rowUnit.Length > 0 ? "its row" : "a line above");
        if (meaning.Flow == FlowKind.Unknown)
            foreach (var line in head.Above.Reverse())
                if (HeaderWords.Understand(line, 0, unit ?? "kWh", null) is { Flow: not FlowKind.Unknown } above)
                {
                    meaning = meaning with { Flow = above.Flow, Reason = $"\"{shown}\" is read as {HeaderWords.Name(above.Flow)} in {(unit ?? "an unknown unit")} because the line \"{ProblemList.Shorten(line.Trim())}\" above says so" };
                    break;
                }
        var kind = EnergyUnit.Find(meaning.Unit) is { IsPower: true } ? ColumnKind.Power : meaning.Kind == ColumnKind.Net ? ColumnKind.Net : ColumnKind.Energy;
        return meaning with { Header = shown, Kind = kind, Number = first + 1, Reason = $"{why}; {meaning.Reason}" };
    }

    private static string? UnitAbove(string[] lines)
    {
        for (var i = lines.Length - 1; i >= 0; i--)
            if (UnitIn(lines[i]) is { } unit) return unit;
        return null;
    }

    /// <summary>The one unit that a text names as a word of its own.</summary>
    private static string? UnitIn(string text) =>
        text.Split([' ', ',', ';', '\t', '(', ')', '[', ']', ':', '"', '_'], StringSplitOptions.RemoveEmptyEntries).FirstOrDefault(w => EnergyUnit.Find(w) is { ToKilo: > 0 });
}
