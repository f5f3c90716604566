using System.Text.Json.Serialization;

namespace SolarEconomics.Notebook;

/// <summary>Something that a session is asked to do; sent to its process as JSON.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "command")]
[JsonDerivedType(typeof(OpenSession), nameof(OpenSession))]
[JsonDerivedType(typeof(RunStep), nameof(RunStep))]
[JsonDerivedType(typeof(StopStep), nameof(StopStep))]
[JsonDerivedType(typeof(CompleteCode), nameof(CompleteCode))]
[JsonDerivedType(typeof(ReadTable), nameof(ReadTable))]
[JsonDerivedType(typeof(AnswerInput), nameof(AnswerInput))]
public abstract record SessionCommand;
