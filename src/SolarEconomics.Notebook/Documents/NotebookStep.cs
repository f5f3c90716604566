using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>One step of a notebook: a view on its cell in the file. Change it through the document.</summary>
public sealed class NotebookStep
{
    private StepText? text;
    private string? outputsText;

    internal NotebookStep(JsonObject cell) => Cell = cell;

    /// <summary>The cell as the file has it, with every field that other programs keep there.</summary>
    internal JsonObject Cell { get; }

    /// <summary>The cell as it stands in the file; written once for each change, so that saving and remembering a large notebook stay quick.</summary>
    internal StepText Text
    {
        get
        {
            if (text is not null) return text;
            var (before, outputs, after) = JsonText.WriteAround(Cell, "outputs", StepText.Depth, outputsText);
            outputsText = outputs.Length > 0 ? outputs : null;
            return text = new StepText(Id, before, outputs, after);
        }
    }

    /// <summary>Stable name of the step inside its notebook.</summary>
    public string Id => Cell["id"]!.GetValue<string>();

    /// <summary>What the step is.</summary>
    public StepKind Kind => CellWords.KindOf(Cell["cell_type"]!.GetValue<string>());

    /// <summary>The words or the C# of the step, lines separated by <c>\n</c>.</summary>
    public string Source => MultilineText.Read(Cell["source"]);

    /// <summary>Tags in the cell's metadata, such as <c>assumptions</c>.</summary>
    public IReadOnlyList<string> Tags =>
        Cell["metadata"] is JsonObject metadata && metadata["tags"] is JsonArray tags
            ? [.. tags.OfType<JsonValue>().Select(t => t.TryGetValue<string>(out var text) ? text : null).OfType<string>()]
            : [];

    /// <summary>Saved outputs in the file format's own shape; a copy, so changing it changes nothing here.</summary>
    public IReadOnlyList<JsonObject> Outputs =>
        Cell["outputs"] is JsonArray outputs ? [.. outputs.OfType<JsonObject>().Select(o => (JsonObject)o.DeepClone())] : [];

    /// <summary>The how-manieth run made the saved outputs; <see langword="null"/> where none did.</summary>
    public int? RunNumber => Cell["execution_count"] is JsonValue value && value.TryGetValue<int>(out var number) ? number : null;

    /// <summary>The text of the first Markdown heading in a step of words; <see langword="null"/> where there is none.</summary>
    public string? Heading => Kind == StepKind.Text ? CellWords.HeadingOf(Source) : null;

    /// <summary>Something in the cell is different.</summary>
    internal void Changed() => text = null;

    /// <summary>The cell's outputs are different.</summary>
    internal void OutputsChanged() => (text, outputsText) = (null, null);
}
