using System.Text.Json.Serialization;

namespace SolarEconomics.Workbench;

/// <summary>What the page asks of the host. The names are written here once; a test compares <c>messages.js</c> with them.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "message")]
[JsonDerivedType(typeof(WorkOut), "workOut")]
[JsonDerivedType(typeof(Stop), "stop")]
[JsonDerivedType(typeof(StartAfresh), "startAfresh")]
[JsonDerivedType(typeof(EditStep), "editStep")]
[JsonDerivedType(typeof(SetAssumption), "setAssumption")]
[JsonDerivedType(typeof(AddStep), "addStep")]
[JsonDerivedType(typeof(DeleteStep), "deleteStep")]
[JsonDerivedType(typeof(MoveStep), "moveStep")]
[JsonDerivedType(typeof(Undo), "undo")]
[JsonDerivedType(typeof(Redo), "redo")]
[JsonDerivedType(typeof(Save), "save")]
[JsonDerivedType(typeof(SaveAnswers), "saveAnswers")]
[JsonDerivedType(typeof(Complete), "complete")]
[JsonDerivedType(typeof(GiveInput), "giveInput")]
[JsonDerivedType(typeof(LetCodeRun), "letCodeRun")]
[JsonDerivedType(typeof(SplitStep), "splitStep")]
[JsonDerivedType(typeof(JoinStep), "joinStep")]
[JsonDerivedType(typeof(ChangeKind), "changeKind")]
[JsonDerivedType(typeof(CopyStep), "copyStep")]
[JsonDerivedType(typeof(PutStep), "putStep")]
[JsonDerivedType(typeof(AskVersions), "askVersions")]
[JsonDerivedType(typeof(LookAtVersion), "lookAtVersion")]
[JsonDerivedType(typeof(ShowState), "showState")]
[JsonDerivedType(typeof(TakeState), "takeState")]
[JsonDerivedType(typeof(LeaveState), "leaveState")]
internal abstract record PageCommand;

/// <summary>Works steps out.</summary>
/// <param name="Extent">How many.</param>
/// <param name="Step">The step meant, where the extent speaks of one.</param>
internal sealed record WorkOut(Extent Extent, string? Step = null) : PageCommand;

/// <summary>Stops the step at work and forgets those that wait.</summary>
internal sealed record Stop : PageCommand;

/// <summary>Forgets every value; steps and answers stay.</summary>
internal sealed record StartAfresh : PageCommand;

/// <summary>Replaces the text of a step.</summary>
internal sealed record EditStep(string Step, string Text) : PageCommand;

/// <summary>Gives a declared assumption another value.</summary>
internal sealed record SetAssumption(string Name, double Value) : PageCommand;

/// <summary>Adds an empty step of a kind (<c>code</c> or <c>text</c>) below another, or at the end.</summary>
internal sealed record AddStep(string Kind, string? After = null) : PageCommand;

/// <summary>Takes a step out; undo brings it back.</summary>
internal sealed record DeleteStep(string Step) : PageCommand;

/// <summary>Moves a step up or down.</summary>
internal sealed record MoveStep(string Step, int By) : PageCommand;

/// <summary>Takes the last change of steps back.</summary>
internal sealed record Undo : PageCommand;

/// <summary>Makes the change that was taken back again.</summary>
internal sealed record Redo : PageCommand;

/// <summary>Saves now instead of in a moment.</summary>
internal sealed record Save : PageCommand;

/// <summary>Saves the notebook's file with its answers, or without them.</summary>
internal sealed record SaveAnswers(bool Wanted) : PageCommand;

/// <summary>Asks for ways to go on typing.</summary>
internal sealed record Complete(string Step, string Text, int Position, int Request) : PageCommand;

/// <summary>Gives a step the line of text that it waits for.</summary>
internal sealed record GiveInput(string Step, string Input, string Text) : PageCommand;

/// <summary>The reader lets the notebook's code run, now and later.</summary>
internal sealed record LetCodeRun : PageCommand;

/// <summary>Splits a step at a place in its text.</summary>
internal sealed record SplitStep(string Step, int Position) : PageCommand;

/// <summary>Joins a step with the one below.</summary>
internal sealed record JoinStep(string Step) : PageCommand;

/// <summary>Turns code into text, or text into code.</summary>
internal sealed record ChangeKind(string Step) : PageCommand;

/// <summary>Copies a step, for this or another notebook.</summary>
internal sealed record CopyStep(string Step) : PageCommand;

/// <summary>Puts the copied step below another, or at the end.</summary>
internal sealed record PutStep(string? After = null) : PageCommand;

/// <summary>Asks which earlier versions there are.</summary>
internal sealed record AskVersions : PageCommand;

/// <summary>Looks at an earlier version; nothing is changed yet.</summary>
internal sealed record LookAtVersion(string Name) : PageCommand;

/// <summary>Of two states of the notebook, shows the other one or its own.</summary>
internal sealed record ShowState(bool Other) : PageCommand;

/// <summary>Goes on with the other state.</summary>
internal sealed record TakeState : PageCommand;

/// <summary>Goes on with the notebook's own state.</summary>
internal sealed record LeaveState : PageCommand;
