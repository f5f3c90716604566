using System.Text;

namespace SolarEconomics.Notebook;

/// <summary>A notebook as it was at one moment. Cheap to keep: steps that did not change are shared with the states before and after.</summary>
public sealed class NotebookState
{
    internal NotebookState(string before, string after, IReadOnlyList<StepText> steps) => (Before, After, Steps) = (before, after, steps);

    /// <summary>Text of the file before the value of its cells.</summary>
    internal string Before { get; }

    /// <summary>Text of the file after its cells.</summary>
    internal string After { get; }

    internal IReadOnlyList<StepText> Steps { get; }

    /// <summary>The same notebook with other texts of its steps.</summary>
    internal NotebookState With(IReadOnlyList<StepText> steps) => new(Before, After, steps);

    /// <summary>The file's text: one space per level, source as lists of lines, a line end at the end.</summary>
    public string ToJson()
    {
        var text = new StringBuilder(Before);
        var separator = '[';
        foreach (var step in Steps)
        {
            text.Append(separator).Append("\n  ").Append(step.Before).Append(step.Outputs).Append(step.After);
            separator = ',';
        }
        return text.Append(Steps.Count == 0 ? "[]" : "\n ]").Append(After).Append('\n').ToString();
    }

    /// <summary>Whether another state says the same, letter for letter.</summary>
    /// <param name="other">The other state.</param>
    public bool IsSameAs(NotebookState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return string.Equals(Before, other.Before, StringComparison.Ordinal) && string.Equals(After, other.After, StringComparison.Ordinal) && Steps.SequenceEqual(other.Steps);
    }
}
