using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

public sealed partial class NotebookDocument
{
    /// <summary>Adds one output to a step; printed text joins the printed text before it.</summary>
    /// <param name="id">Name of the step.</param>
    /// <param name="output">The output in the file format's shape, as a session sends it.</param>
    public void AddOutput(string id, JsonObject output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var outputs = OutputsOf(id);
        if (outputs is [.., JsonObject last] && IsSameStream(last, output))
            last["text"] = MultilineText.Write(MultilineText.Read(last["text"]) + MultilineText.Read(output["text"]));
        else outputs.Add(PlainJson.Of(output));
        TouchOutputs(this[id]);
    }

    /// <summary>Removes the outputs of a step.</summary>
    /// <param name="id">Name of the step.</param>
    public void ClearOutputs(string id)
    {
        var step = this[id];
        if (step.Kind != StepKind.Code || (step.Cell["outputs"] is JsonArray { Count: 0 } && step.RunNumber is null)) return;
        OutputsOf(id).Clear();
        step.Cell["execution_count"] = null;
        TouchOutputs(step);
    }

    /// <summary>Removes the outputs of all steps.</summary>
    public void ClearAllOutputs()
    {
        foreach (var step in steps) ClearOutputs(step.Id);
    }

    /// <summary>Writes the how-manieth run made the outputs of a step.</summary>
    /// <param name="id">Name of the step.</param>
    /// <param name="number">Number of the run in its session, counted from 1.</param>
    public void SetRunNumber(string id, int number)
    {
        var step = this[id];
        step.Cell["execution_count"] = number;
        Touch(step);
    }

    private JsonArray OutputsOf(string id)
    {
        var step = this[id];
        if (step.Cell["outputs"] is not JsonArray outputs) step.Cell["outputs"] = outputs = new JsonArray();
        return outputs;
    }

    private static bool IsSameStream(JsonObject a, JsonObject b) =>
        IsText(a["output_type"], "stream") && IsText(b["output_type"], "stream")
        && a["name"] is JsonValue name && name.TryGetValue<string>(out var text) && IsText(b["name"], text);

    private static bool IsText(JsonNode? node, string expected) =>
        node is JsonValue value && value.TryGetValue<string>(out var text) && string.Equals(text, expected, StringComparison.Ordinal);
}
