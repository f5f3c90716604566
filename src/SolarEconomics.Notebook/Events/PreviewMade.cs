using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook;

/// <summary>A step at work has a first answer, a preview in its own words; the full one follows as an output. It belongs into no file.</summary>
/// <param name="StepId">Name of the step.</param>
/// <param name="Output">The first answer in the shape of the file format, as a display.</param>
public sealed record PreviewMade(string StepId, JsonObject Output) : StepEvent(StepId);
