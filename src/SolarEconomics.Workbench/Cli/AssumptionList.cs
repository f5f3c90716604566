using System.Globalization;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>Prints the assumptions of a notebook: one per line, by the name that <c>--set</c> takes.</summary>
internal static class AssumptionList
{
    public static async Task<int> Print(NotebookAssumptions assumptions, Io io)
    {
        var culture = CultureInfo.InvariantCulture;
        var rows = assumptions.Items.Select(a => new[]
        {
            a.Name, a.Value.ToString(culture), string.Create(culture, $"{a.From} to {a.To}"), a.Unit, $"{a.Label}, {a.Shown(culture)}",
        }).Prepend(["name", "value", "range", "unit", "says"]).ToList();
        var widths = Enumerable.Range(0, 5).Select(c => rows.Max(r => r[c].Length)).ToArray();
        if (rows.Count == 1) await io.Out.WriteLineAsync("This notebook declares no assumptions. A code step declares one, for example: var growth = Assume.Rate(\"Price growth\", 0.03, from: 0, to: 0.08);");
        else foreach (var row in rows) await io.Out.WriteLineAsync(string.Join("  ", row.Select((cell, c) => cell.PadRight(widths[c]))).TrimEnd());
        foreach (var problem in assumptions.Problems) await io.Error.WriteLineAsync(problem);
        return Exit.Fine;
    }
}
