using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>The tables that the steps of a session answered with last, so that the page can read more of them than the answer shows.</summary>
internal sealed class TableShelf
{
    private readonly ConcurrentDictionary<string, TableRows> tables = new(StringComparer.Ordinal);

    /// <summary>Forgets the tables of a step; it is worked out anew.</summary>
    internal void Forget(string stepId)
    {
        foreach (var id in tables.Keys.Where(id => id.StartsWith(stepId + "/", StringComparison.Ordinal))) tables.TryRemove(id, out _);
    }

    /// <summary>Keeps a value if it is a table, and writes under which name into what is shown.</summary>
    internal void Keep(string stepId, object? value, ShownValue shown, CultureInfo culture)
    {
        if (TableRows.Of(value, culture) is not { } rows) return;
        var number = tables.Keys.Count(known => known.StartsWith(stepId + "/", StringComparison.Ordinal)) + 1;
        var id = string.Create(CultureInfo.InvariantCulture, $"{stepId}/{number}");
        tables[id] = rows;
        if (shown.Metadata["solareconomics"] is not JsonObject own) shown.Metadata["solareconomics"] = own = [];
        own["table"] = id;
    }

    internal TablePage? Read(TableQuery query)
    {
        if (!tables.TryGetValue(query.TableId, out var rows)) return null;
        // One reader at a time: the order of the last question is remembered.
        lock (rows) return rows.Read(query);
    }
}
