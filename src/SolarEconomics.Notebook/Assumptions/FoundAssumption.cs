using Microsoft.CodeAnalysis.Text;

namespace SolarEconomics.Notebook;

/// <summary>An assumption and the place of its number in the step's code.</summary>
internal sealed record FoundAssumption(NotebookAssumption Assumption, TextSpan Literal);
