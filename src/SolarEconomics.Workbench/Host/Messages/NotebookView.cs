namespace SolarEconomics.Workbench;

/// <summary>A notebook as the page shows it.</summary>
/// <param name="Question">The question that it answers.</param>
/// <param name="Place">Its file's name.</param>
/// <param name="MayRun">Whether its code has been let run; if not, its saved answers are shown only.</param>
/// <param name="LeavesAnswersOut">Whether its file is saved without answers.</param>
/// <param name="Offer">Another state of it, between which and this one the reader chooses; null where there is none.</param>
internal sealed record NotebookView(
    string Question, string Place, IReadOnlyList<StepView> Steps, IReadOnlyList<AssumptionView> Assumptions,
    WorkView Work, SessionView Session, string Saved, bool MayRun, bool LeavesAnswersOut, OfferView? Offer);

/// <summary>How far working is: the place of the step at work among those asked for, and how long the rest will probably take; and whether a change can be taken back or made again.</summary>
/// <param name="Step">The step at work; null when there is none.</param>
/// <param name="Share">How far the long work inside that step is, where it tells; null where it does not.</param>
/// <param name="StepSecondsLeft">How long that work still takes at its pace so far; null where it does not tell.</param>
internal sealed record WorkView(bool Busy, int Position, int Count, double? SecondsLeft, bool CanUndo, bool CanRedo, string? Step = null, double? Share = null, double? StepSecondsLeft = null);

/// <summary>The session in words.</summary>
/// <param name="Words">What it does.</param>
/// <param name="UsedBytes">Memory that its process holds; 0 where there is none.</param>
/// <param name="LimitBytes">Memory at which the process is ended; 0 where there is no limit.</param>
internal sealed record SessionView(string Words, long UsedBytes = 0, long LimitBytes = 0);

/// <summary>One way to go on typing.</summary>
internal sealed record CompletionView(string Label, string Detail);

/// <summary>A declared assumption with its unit as people write it, its range and the slider's step.</summary>
internal sealed record AssumptionView(string Name, string Label, double Value, string Unit, double From, double To, double Step);

/// <summary>An earlier version: what to ask for it by, and when it was.</summary>
internal sealed record VersionView(string Name, string Words);
