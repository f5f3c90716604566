namespace SolarEconomics.Tests;

/// <summary>Reads the files rows-*.csv: comma separated, a field with a comma or a quote in double quotes, # starts a remark.</summary>
internal static class PublishedFile
{
    private static readonly string[] Columns = ["id", "check", "inputs", "expected", "tolerance", "source", "mark", "disputed"];

    internal static IReadOnlyDictionary<string, PublishedRow> ReadAll(string folder)
    {
        var rows = new Dictionary<string, PublishedRow>(StringComparer.Ordinal);
        foreach (var file in Directory.GetFiles(folder, "rows-*.csv").Order(StringComparer.Ordinal))
        {
            var lines = File.ReadAllLines(file).Where(l => l.Length > 0 && l[0] != '#').Select(Split).ToArray();
            if (!lines[0].SequenceEqual(Columns)) throw new FormatException($"{file}: expected the heading {string.Join(',', Columns)}.");
            foreach (var f in lines.Skip(1))
            {
                if (f.Length != Columns.Length) throw new FormatException($"{file}, {f[0]}: found {f.Length} fields, expected {Columns.Length}.");
                if (f[5].Length == 0 || f[6] is not ("R" or "R2" or "M" or "P")) throw new FormatException($"{file}, {f[0]}: expected a source and a mark R, R2, M or P.");
                rows.Add(f[0], new PublishedRow(f[0], f[1], f[2], f[3], new PublishedTolerance(f[4]).Checked(), f[5], f[6], f[7]));
            }
        }
        return rows;
    }

    internal static string[] Split(string line)
    {
        var fields = new List<string>();
        var field = new System.Text.StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (quoted && c == '"' && i + 1 < line.Length && line[i + 1] == '"')
            {
                field.Append(c);
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }
        fields.Add(field.ToString());
        return [.. fields];
    }

    internal static string Join(params string[] fields) =>
        string.Join(',', fields.Select(f => f.AsSpan().ContainsAny(',', '"') ? '"' + f.Replace("\"", "\"\"", StringComparison.Ordinal) + '"' : f));
}
