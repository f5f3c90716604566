using System.Text.Json.Serialization;

namespace SolarEconomics.Workbench;

/// <summary>What the host tells the page. The names are written here once; a test compares <c>messages.js</c> with them.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "message")]
[JsonDerivedType(typeof(Opened), "opened")]
[JsonDerivedType(typeof(StepChanged), "stepChanged")]
[JsonDerivedType(typeof(WorkChanged), "workChanged")]
[JsonDerivedType(typeof(AssumptionsChanged), "assumptionsChanged")]
[JsonDerivedType(typeof(Saved), "saved")]
[JsonDerivedType(typeof(SessionChanged), "sessionChanged")]
[JsonDerivedType(typeof(Completed), "completed")]
[JsonDerivedType(typeof(VersionsFound), "versionsFound")]
[JsonDerivedType(typeof(Notice), "notice")]
internal abstract record PageEvent;

/// <summary>Everything, at the start and whenever steps were added, taken out or moved.</summary>
internal sealed record Opened(NotebookView Notebook) : PageEvent;

/// <summary>One step is different.</summary>
internal sealed record StepChanged(StepView Step) : PageEvent;

/// <summary>Working began, went on or ended.</summary>
internal sealed record WorkChanged(WorkView Work) : PageEvent;

/// <summary>An assumption has another value, or is new or gone.</summary>
internal sealed record AssumptionsChanged(IReadOnlyList<AssumptionView> Assumptions) : PageEvent;

/// <summary>The document was saved, or could not be.</summary>
internal sealed record Saved(string Words) : PageEvent;

/// <summary>The session is in another state.</summary>
internal sealed record SessionChanged(SessionView Session) : PageEvent;

/// <summary>Ways to go on typing; <c>From</c> is the place where the word that they replace begins.</summary>
internal sealed record Completed(int Request, int From, IReadOnlyList<CompletionView> Items) : PageEvent;

/// <summary>The earlier versions, newest first.</summary>
internal sealed record VersionsFound(IReadOnlyList<VersionView> Versions) : PageEvent;

/// <summary>What the reader must know now: something asked for could not be done, or the session ended.</summary>
internal sealed record Notice(string Words) : PageEvent;
