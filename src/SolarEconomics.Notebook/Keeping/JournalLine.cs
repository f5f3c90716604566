using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>One line of a journal: what is different from the state before. A line that was cut off is not JSON, and so is known for what it is.</summary>
internal static class JournalLine
{
    /// <summary>Version of the journal that is written; older ones would be read too, newer ones are refused in words.</summary>
    internal const int Version = 1;

    /// <summary>The first line of a journal.</summary>
    internal static string First(string notebook) => $"{{\"version\": {Version.ToString(CultureInfo.InvariantCulture)}, \"notebook\": {JsonValue.Create(notebook).ToJsonString()}}}\n";

    /// <summary>The line that leads from one state to another.</summary>
    internal static string Between(NotebookState before, NotebookState now, DateTimeOffset at)
    {
        var line = new StringBuilder("{\"at\": \"").Append(at.ToUniversalTime().ToString("O", CultureInfo.InvariantCulture)).Append('"');
        if (!string.Equals(before.Before, now.Before, StringComparison.Ordinal) || !string.Equals(before.After, now.After, StringComparison.Ordinal))
            line.Append(", \"frame\": ").Append(now.Before).Append("[]").Append(now.After);
        if (!before.Steps.Select(step => step.Id).SequenceEqual(now.Steps.Select(step => step.Id), StringComparer.Ordinal))
            line.Append(", \"order\": ").Append(new JsonArray([.. now.Steps.Select(step => (JsonNode)JsonValue.Create(step.Id))]).ToJsonString());
        var known = before.Steps.ToDictionary(step => step.Id, StringComparer.Ordinal);
        var separator = ", \"steps\": [";
        foreach (var step in now.Steps)
        {
            var old = known.GetValueOrDefault(step.Id);
            if (step == old) continue;
            line.Append(separator).Append("{\"id\": ").Append(JsonValue.Create(step.Id).ToJsonString());
            if (old is null || !step.SaysTheSameAs(old)) line.Append(", \"cell\": ").Append(step.Bare);
            if (step.Outputs.Length > 0 && (old is null || !string.Equals(step.Outputs, old.Outputs, StringComparison.Ordinal))) line.Append(", \"outputs\": ").Append(step.Outputs);
            line.Append('}');
            separator = ", ";
        }
        if (separator == ", ") line.Append(']');
        // Inside texts line ends are written as \n; those that are left only lay the JSON out.
        return line.Append('}').Replace("\n", "").Append('\n').ToString();
    }

    /// <summary>What a line makes of a state; null where the line is not whole.</summary>
    internal static (NotebookState State, DateTimeOffset At)? Apply(string line, NotebookState before)
    {
        try
        {
            if (JsonNode.Parse(line, documentOptions: DocumentReader.Options) is not JsonObject fields) return null;
            var at = DateTimeOffset.Parse((string)fields["at"]!, CultureInfo.InvariantCulture);
            var steps = before.Steps.ToDictionary(step => step.Id, StringComparer.Ordinal);
            foreach (var changed in (fields["steps"] as JsonArray ?? []).Cast<JsonObject>().ToList())
            {
                var id = (string)changed["id"]!;
                steps[id] = Changed(changed, steps.GetValueOrDefault(id));
            }
            var order = fields["order"] is JsonArray ids ? ids.Select(id => (string)id!) : before.Steps.Select(step => step.Id);
            var (head, tail) = (before.Before, before.After);
            if (fields["frame"] is JsonObject frame) (head, _, tail) = JsonText.WriteAround(frame, "cells", 0, known: "[]");
            return (new NotebookState(head, tail, [.. order.Where(steps.ContainsKey).Select(id => steps[id])]), at);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or InvalidCastException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    private static StepText Changed(JsonObject changed, StepText? old)
    {
        var step = changed["cell"] is JsonObject cell ? StepText.Of((JsonObject)cell.DeepClone()) : old ?? throw new FormatException("A step without its cell.");
        if (step.Outputs.Length == 0) return step;
        if (changed["outputs"] is { } outputs) return step with { Outputs = JsonText.WriteAround(new JsonObject { ["outputs"] = outputs.DeepClone() }, "outputs", StepText.Depth).Value };
        return old is null ? step : step with { Outputs = old.Outputs.Length > 0 ? old.Outputs : "[]" };
    }
}
