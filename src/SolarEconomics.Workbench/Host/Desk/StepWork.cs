namespace SolarEconomics.Workbench;

/// <summary>What the desk knows of a step beside its document: its state, and whether this session holds its values.</summary>
internal sealed class StepWork
{
    public StepState State { get; set; }

    public double? Seconds { get; set; }

    /// <summary>The code whose values this session holds; null when it holds none.</summary>
    public string? CodeInSession { get; set; }

    /// <summary>The state to return to when it is taken out of the waiting ones.</summary>
    public StepState Before { get; set; }

    /// <summary>The code that its answer rests on, its own last, as it was when it was worked out; null as long as nobody asked.</summary>
    public IReadOnlyList<string>? Basis { get; set; }

    /// <summary>The state that its answer gave it, to return to where what it rests on is again what it was.</summary>
    public StepState Answered { get; set; }

    /// <summary>Why it was stopped, in words; empty when it was not.</summary>
    public string StoppedBecause { get; set; } = "";

    /// <summary>Whether it began to work in this session, so that what it changes in place is changed already.</summary>
    public bool HasRun { get; set; }

    /// <summary>What its answer rests on that reading from the top would not tell, in words; empty when there is nothing.</summary>
    public string Hidden { get; set; } = "";

    /// <summary>What the step asks of the reader and waits for; null when it asks nothing.</summary>
    public AskView? Asks { get; set; }

    /// <summary>A first answer while it works; the full one takes its place. Kept in no file.</summary>
    public IReadOnlyList<Answer> Preview { get; set; } = [];

    /// <summary>Whether what it rests on was changed while it worked, so that what it answers is out of date when it comes.</summary>
    public bool IsOvertaken { get; set; }

    /// <summary>Whether the answer shown belongs to the run before and goes at the next output.</summary>
    public bool AnswerIsFromBefore { get; set; }
}
