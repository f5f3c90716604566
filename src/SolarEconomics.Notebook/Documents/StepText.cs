using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>A cell as it stands in the file, with its outputs apart: they are long and change on their own.</summary>
/// <param name="Id">Name of the step.</param>
/// <param name="Before">Text of the cell up to the value of its outputs; all of it where a cell has none.</param>
/// <param name="Outputs">Text of the outputs.</param>
/// <param name="After">Text after the outputs.</param>
internal sealed record StepText(string Id, string Before, string Outputs, string After)
{
    /// <summary>How deep a cell stands in its file.</summary>
    internal const int Depth = 2;

    /// <summary>The cell whole.</summary>
    internal string Whole => Before + Outputs + After;

    /// <summary>The cell with no outputs in it.</summary>
    internal string Bare => Outputs.Length == 0 ? Before : Before + "[]" + After;

    /// <summary>Whether all but the outputs is equal.</summary>
    internal bool SaysTheSameAs(StepText other) =>
        string.Equals(Before, other.Before, StringComparison.Ordinal) && string.Equals(After, other.After, StringComparison.Ordinal);

    internal static StepText Of(JsonObject cell) => new NotebookStep(cell).Text;
}
