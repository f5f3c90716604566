using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

public sealed partial class NotebookDocument
{
    private (string Before, string After)? frame;

    /// <summary>Counts the changes: it is another number whenever something in the notebook is different.</summary>
    public long Edition { get; private set; }

    /// <summary>The notebook as it is now.</summary>
    public NotebookState State()
    {
        if (frame is null)
        {
            var (before, _, after) = JsonText.WriteAround(root, "cells", 0, known: "[]");
            frame = (before, after);
        }
        return new NotebookState(frame.Value.Before, frame.Value.After, [.. steps.Select(step => step.Text)]);
    }

    /// <summary>Makes the notebook what it was at another moment; steps that are the same stay the same objects.</summary>
    /// <param name="state">A state of this notebook, or of another reading of its file.</param>
    public void Return(NotebookState state) => Return(state, keepsAnswers: false);

    /// <summary>Makes the steps what they were at another moment; a step that says the same now as then keeps the answer that it has now.</summary>
    /// <param name="state">A state of this notebook.</param>
    public void ReturnKeepingAnswers(NotebookState state) => Return(state, keepsAnswers: true);

    private void Return(NotebookState state, bool keepsAnswers)
    {
        ArgumentNullException.ThrowIfNull(state);
        var known = steps.ToDictionary(step => step.Id, StringComparer.Ordinal);
        var now = state.Steps.Select(Step).ToList();
        var other = Parsed(state.Before + "[]" + state.After);
        foreach (var key in root.Select(field => field.Key).Where(key => key != "cells").ToList()) root.Remove(key);
        var before = true;
        foreach (var (key, value) in other.ToList())
        {
            before &= key != "cells";
            if (key == "cells") continue;
            other.Remove(key);
            if (before) root.Insert(root.IndexOf("cells"), key, value);
            else root.Add(key, value);
        }
        Cells.Clear();
        steps.Clear();
        foreach (var step in now)
        {
            Cells.Add((JsonNode)step.Cell);
            steps.Add(step);
        }
        frame = null;
        Touch();

        NotebookStep Step(StepText text)
        {
            var before = known.GetValueOrDefault(text.Id);
            if (before?.Text == text) return before;
            var then = new NotebookStep(Parsed(text.Whole));
            return keepsAnswers && before?.Kind == StepKind.Code && StepText.Of(WithoutAnswer(before.Cell)) == StepText.Of(WithoutAnswer(then.Cell)) ? before : then;
        }
    }

    private static JsonObject Parsed(string text) => (JsonObject)JsonNode.Parse(text, documentOptions: DocumentReader.Options)!;

    private void Touch()
    {
        IsChanged = true;
        Edition++;
    }

    private void Touch(NotebookStep step)
    {
        step.Changed();
        Touch();
    }

    private void TouchOutputs(NotebookStep step)
    {
        step.OutputsChanged();
        Touch();
    }
}
