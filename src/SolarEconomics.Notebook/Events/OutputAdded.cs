using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>A step gave an output.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="Output">The output in the shape of the file format: a result, printed text, a display or an error.</param>
public sealed record OutputAdded(string StepId, JsonObject Output) : StepEvent(StepId);
