using System.Text.Json.Serialization;

namespace SolarEconomics.Notebook;

/// <summary>Something that happened in a session.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event")]
[JsonDerivedType(typeof(StepStarted), nameof(StepStarted))]
[JsonDerivedType(typeof(OutputAdded), nameof(OutputAdded))]
[JsonDerivedType(typeof(InputAsked), nameof(InputAsked))]
[JsonDerivedType(typeof(ProgressMade), nameof(ProgressMade))]
[JsonDerivedType(typeof(PreviewMade), nameof(PreviewMade))]
[JsonDerivedType(typeof(StepRan), nameof(StepRan))]
[JsonDerivedType(typeof(StepFailed), nameof(StepFailed))]
[JsonDerivedType(typeof(StepStopped), nameof(StepStopped))]
[JsonDerivedType(typeof(CompletionsFound), nameof(CompletionsFound))]
[JsonDerivedType(typeof(TableRead), nameof(TableRead))]
[JsonDerivedType(typeof(StateChanged), nameof(StateChanged))]
[JsonDerivedType(typeof(MemoryMeasured), nameof(MemoryMeasured))]
[JsonDerivedType(typeof(SessionEnded), nameof(SessionEnded))]
public abstract record SessionEvent;
