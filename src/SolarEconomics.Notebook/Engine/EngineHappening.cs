namespace SolarEconomics.Notebook;

/// <summary>What the engine told about a run.</summary>
internal abstract record EngineHappening;

/// <summary>A value to show.</summary>
internal sealed record EngineValue(object? Value, bool IsResult) : EngineHappening;

/// <summary>The code failed.</summary>
internal sealed record EngineFailure(StepError Error) : EngineHappening;

/// <summary>The code was ended on request.</summary>
internal sealed record EngineStopped : EngineHappening;
