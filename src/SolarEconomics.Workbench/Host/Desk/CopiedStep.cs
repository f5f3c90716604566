using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>A step that waits to be put into this or another notebook.</summary>
internal sealed record CopiedStep(StepKind Kind, string Source);
