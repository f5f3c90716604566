using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>The words of the file format (nbformat 4.5) for a step, and empty cells of each kind.</summary>
internal static class CellWords
{
    internal static StepKind KindOf(string cellType) => cellType switch
    {
        "code" => StepKind.Code,
        "markdown" => StepKind.Text,
        _ => StepKind.Other,
    };

    internal static string TypeOf(StepKind kind) => kind switch
    {
        StepKind.Code => "code",
        StepKind.Text => "markdown",
        _ => "raw",
    };

    /// <summary>A new cell; its keys stand in alphabetical order, as other programs sort them.</summary>
    internal static JsonObject NewCell(string id, StepKind kind, string source)
    {
        var cell = new JsonObject { ["cell_type"] = TypeOf(kind) };
        if (kind == StepKind.Code) cell["execution_count"] = null;
        cell["id"] = id;
        cell["metadata"] = new JsonObject();
        if (kind == StepKind.Code) cell["outputs"] = new JsonArray();
        cell["source"] = MultilineText.Write(source);
        return cell;
    }

    /// <summary>Text after the first <c>#</c> heading that stands outside a code fence.</summary>
    internal static string? HeadingOf(string markdown)
    {
        var fenced = false;
        foreach (var line in markdown.Split('\n'))
        {
            var text = line.Trim();
            if (text.StartsWith("```", StringComparison.Ordinal)) fenced = !fenced;
            if (fenced || !text.StartsWith('#')) continue;
            var marks = text.TakeWhile(c => c == '#').Count();
            if (marks <= 6 && text.Length > marks && char.IsWhiteSpace(text[marks])) return text[marks..].Trim().TrimEnd('#').Trim();
        }
        return null;
    }
}
