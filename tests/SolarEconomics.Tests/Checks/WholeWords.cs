using System.Globalization;
using System.Text;

namespace SolarEconomics.Tests;

/// <summary>All that some results say, down to the last note, held against a text that a person read and approved.</summary>
/// <remarks>Where they differ, what came stands beside the approved text as <c>.received.txt</c>: read it, and copy it over if the change is meant.</remarks>
internal static class WholeWords
{
    internal static void Check(string name, params IReadOnlyList<(string Title, IFinding Finding)> findings)
    {
        var text = new StringBuilder();
        foreach (var (title, finding) in findings) Write(text, title, finding.Say(CultureInfo.InvariantCulture));
        var folder = Path.Combine(Published.Root(), "tests", "data", "words");
        var (approved, received) = (Path.Combine(folder, name + ".txt"), Path.Combine(folder, name + ".received.txt"));
        var expected = File.Exists(approved) ? File.ReadAllText(approved).ReplaceLineEndings("\n") : "";
        var came = text.ToString().Replace('\u00a0', ' ');
        if (string.Equals(expected, came, StringComparison.Ordinal))
        {
            File.Delete(received);
            return;
        }
        File.WriteAllText(received, came);
        var (old, now) = (expected.Split('\n'), came.Split('\n'));
        var line = Enumerable.Range(0, Math.Max(old.Length, now.Length)).First(i => i >= old.Length || i >= now.Length || !string.Equals(old[i], now[i], StringComparison.Ordinal));
        Assert.Fail($"{name}, line {line + 1}: approved \"{(line < old.Length ? old[line] : "")}\", came \"{(line < now.Length ? now[line] : "")}\". If it is meant, copy {received} over {approved}.");
    }

    private static void Write(StringBuilder text, string title, Finding finding)
    {
        text.Append("# ").Append(title).Append("\n\n").Append(finding.Figure).Append(" | ").Append(finding.Words).Append('\n');
        foreach (var table in finding.Tables)
        {
            text.Append("\n[").Append(table.Caption).Append("]\n").AppendJoin(" | ", table.Columns).Append('\n');
            foreach (var row in table.Rows) text.AppendJoin(" | ", row).Append('\n');
        }
        foreach (var note in finding.Notes) text.Append("- ").Append(note).Append('\n');
        foreach (var caution in finding.Cautions) text.Append("! ").Append(caution).Append('\n');
        text.Append('\n');
    }
}
