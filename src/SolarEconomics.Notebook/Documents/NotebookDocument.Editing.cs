using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

public sealed partial class NotebookDocument
{
    /// <summary>The step of a name.</summary>
    /// <param name="id">Name of the step.</param>
    /// <exception cref="ArgumentException">No step bears this name.</exception>
    public NotebookStep this[string id] => Find(id) ?? throw Throw.NoStep(id);

    /// <summary>The step of a name; <see langword="null"/> where there is none.</summary>
    /// <param name="id">Name of the step.</param>
    public NotebookStep? Find(string id) => steps.Find(s => string.Equals(s.Id, id, StringComparison.Ordinal));

    /// <summary>Puts a new step in.</summary>
    /// <param name="index">Place among the steps, counted from 0; the number of steps appends.</param>
    /// <param name="kind">Code or text.</param>
    /// <param name="source">Its words or C#.</param>
    /// <returns>The new step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside the notebook.</exception>
    public NotebookStep Insert(int index, StepKind kind, string source)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(index, steps.Count);
        var step = new NotebookStep(CellWords.NewCell(StepIds.New(id => Find(id) is not null), kind, source));
        Cells.Insert(index, step.Cell);
        steps.Insert(index, step);
        Touch();
        return step;
    }

    /// <summary>Takes a step out.</summary>
    /// <param name="id">Name of the step.</param>
    public void Delete(string id)
    {
        var index = steps.IndexOf(this[id]);
        Cells.RemoveAt(index);
        steps.RemoveAt(index);
        Touch();
    }

    /// <summary>Moves a step to another place.</summary>
    /// <param name="id">Name of the step.</param>
    /// <param name="index">Its place afterwards, counted from 0.</param>
    public void Move(string id, int index)
    {
        var step = this[id];
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, steps.Count);
        var from = steps.IndexOf(step);
        if (from == index) return;
        Cells.RemoveAt(from);
        steps.RemoveAt(from);
        Cells.Insert(index, step.Cell);
        steps.Insert(index, step);
        Touch();
    }

    /// <summary>Replaces the words or the C# of a step; its outputs stay until they are cleared.</summary>
    /// <param name="id">Name of the step.</param>
    /// <param name="source">The new text; line ends become <c>\n</c>.</param>
    public void SetSource(string id, string source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var step = this[id];
        var text = source.ReplaceLineEndings("\n");
        if (string.Equals(step.Source, text, StringComparison.Ordinal)) return;
        step.Cell["source"] = MultilineText.Write(text);
        Touch(step);
    }

    /// <summary>Turns a step into another kind; a step of words has no outputs.</summary>
    /// <param name="id">Name of the step.</param>
    /// <param name="kind">Code or text.</param>
    public void SetKind(string id, StepKind kind)
    {
        var step = this[id];
        if (step.Kind == kind) return;
        var shape = CellWords.NewCell(step.Id, kind, step.Source);
        step.Cell["cell_type"] = CellWords.TypeOf(kind);
        foreach (var key in new[] { "execution_count", "outputs" })
        {
            if (!shape.ContainsKey(key)) step.Cell.Remove(key);
            else if (!step.Cell.ContainsKey(key)) step.Cell.Insert(step.Cell.TakeWhile(f => string.CompareOrdinal(f.Key, key) < 0).Count(), key, shape[key]?.DeepClone());
        }
        // Attachments belong to words only; the format forbids them in code.
        if (kind == StepKind.Code) step.Cell.Remove("attachments");
        TouchOutputs(step);
    }

    /// <summary>Gives a step other tags.</summary>
    /// <param name="id">Name of the step.</param>
    /// <param name="tags">The tags the step has afterwards.</param>
    public void SetTags(string id, IEnumerable<string> tags)
    {
        ArgumentNullException.ThrowIfNull(tags);
        var step = this[id];
        if (step.Cell["metadata"] is not JsonObject metadata) step.Cell["metadata"] = metadata = new JsonObject();
        metadata["tags"] = new JsonArray([.. tags.Select(t => (JsonNode)JsonValue.Create(t))]);
        Touch(step);
    }
}
