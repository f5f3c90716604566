using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>Checks that a JSON text is a notebook and brings older minor versions of the format to 4.5.</summary>
internal static class DocumentReader
{
    internal static readonly JsonDocumentOptions Options = new() { MaxDepth = 256, AllowDuplicateProperties = false };

    /// <summary>Reads and checks; the root has cells whose shape the rest of the code may rely on.</summary>
    internal static JsonObject Read(string text, string name)
    {
        JsonNode? root;
        try
        {
            root = JsonNode.Parse(text, documentOptions: Options);
        }
        catch (JsonException e)
        {
            throw Throw.NotJson(name, e);
        }
        catch (ArgumentException e) when (e.InnerException is EncoderFallbackException)
        {
            throw Throw.NotText(name, e);
        }
        try
        {
            var notebook = root as JsonObject ?? throw Throw.Shape(name, "the file", root, "an object with the fields nbformat and cells");
            CheckVersion(notebook, name);
            var cells = notebook["cells"] as JsonArray ?? throw Throw.Shape(name, "cells", notebook["cells"], "a list of cells");
            for (var i = 0; i < cells.Count; i++) CheckCell(cells[i], FormattableString.Invariant($"cells[{i}]"), name);
            CheckMetadata(notebook, "metadata", name);
            GiveIds(notebook, cells);
            return notebook;
        }
        catch (InvalidOperationException e)
        {
            // The JSON reader decodes texts late; half a surrogate pair shows only here.
            throw Throw.NotText(name, e);
        }
    }

    private static void CheckVersion(JsonObject notebook, string name)
    {
        var major = WholeNumber(notebook["nbformat"]) ?? throw Throw.Shape(name, "nbformat", notebook["nbformat"], "the number 4");
        if (major != 4) throw Throw.Version(name, major);
        _ = WholeNumber(notebook["nbformat_minor"]) ?? throw Throw.Shape(name, "nbformat_minor", notebook["nbformat_minor"], "a number such as 5");
    }

    private static void CheckCell(JsonNode? node, string where, string name)
    {
        var cell = node as JsonObject ?? throw Throw.Shape(name, where, node, "an object");
        if (Text(cell["cell_type"]) is null) throw Throw.Shape(name, where + ".cell_type", cell["cell_type"], "a text such as \"code\"");
        CheckSource(cell["source"], where + ".source", name);
        CheckMetadata(cell, where + ".metadata", name);
        if (cell["outputs"] is { } outputs)
        {
            if (outputs is not JsonArray list) throw Throw.Shape(name, where + ".outputs", outputs, "a list");
            for (var i = 0; i < list.Count; i++)
                if (list[i] is not JsonObject) throw Throw.Shape(name, FormattableString.Invariant($"{where}.outputs[{i}]"), list[i], "an object");
        }
        if (cell["id"] is { } id && Text(id) is null) throw Throw.Shape(name, where + ".id", id, "a text");
    }

    private static void CheckSource(JsonNode? source, string where, string name)
    {
        if (Text(source) is not null) return;
        var lines = source as JsonArray ?? throw Throw.Shape(name, where, source, "a text or a list of lines");
        for (var i = 0; i < lines.Count; i++)
            if (Text(lines[i]) is null) throw Throw.Shape(name, FormattableString.Invariant($"{where}[{i}]"), lines[i], "a text");
    }

    private static void CheckMetadata(JsonObject owner, string where, string name)
    {
        if (owner["metadata"] is not (null or JsonObject)) throw Throw.Shape(name, where, owner["metadata"], "an object");
    }

    /// <summary>Format 4.5 names every cell once; what has no name, a malformed one or a second one of the same gets its own.</summary>
    private static void GiveIds(JsonObject notebook, JsonArray cells)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < cells.Count; i++)
        {
            var cell = (JsonObject)cells[i]!;
            if (Text(cell["id"]) is { } id && StepIds.IsWellFormed(id) && taken.Add(id)) continue;
            var made = StepIds.FromPlace(i, MultilineText.Read(cell["source"]), taken.Contains);
            taken.Add(made);
            SetInOrder(cell, "id", made);
        }
        if (WholeNumber(notebook["nbformat_minor"]) < 5) notebook["nbformat_minor"] = 5;
    }

    /// <summary>Puts a new field at its alphabetical place among the fields there are.</summary>
    internal static void SetInOrder(JsonObject owner, string key, string value)
    {
        if (owner.ContainsKey(key)) owner[key] = value;
        else owner.Insert(owner.TakeWhile(f => string.CompareOrdinal(f.Key, key) < 0).Count(), key, value);
    }

    private static string? Text(JsonNode? node) => node is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;

    private static int? WholeNumber(JsonNode? node) => node is JsonValue value && value.TryGetValue<int>(out var number) ? number : null;
}
