using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The states of a notebook before each change of its steps, so that every change can be taken back, deletions too.</summary>
internal sealed class History(TimeProvider time)
{
    private const int Longest = 200;
    private static readonly TimeSpan OneStrokeOfTyping = TimeSpan.FromSeconds(4);

    private readonly LinkedList<Moment> before = new();
    private readonly Stack<Moment> after = new();
    private string lastWhat = "";
    private long lastAt;

    /// <summary>The notebook at one moment, and whether its code was allowed to run then.</summary>
    internal sealed record Moment(NotebookState State, bool MayRun);

    public bool CanUndo => before.Count > 0;

    public bool CanRedo => after.Count > 0;

    /// <summary>Keeps the notebook as it is before a change.</summary>
    /// <param name="what">What is changed; going on typing in one place is one change.</param>
    /// <param name="now">The notebook.</param>
    public void Remember(string what, Func<Moment> now)
    {
        // By a counter that only grows: a clock that is set back must not join changes of different days.
        var goesOn = what == lastWhat && time.GetElapsedTime(lastAt) < OneStrokeOfTyping;
        (lastWhat, lastAt) = (what, time.GetTimestamp());
        after.Clear();
        if (goesOn) return;
        before.AddLast(now());
        if (before.Count > Longest) before.RemoveFirst();
    }

    /// <summary>The notebook before the last change; null when there is none.</summary>
    public Moment? Undo(Func<Moment> now)
    {
        if (before.Last is not { } last) return null;
        before.RemoveLast();
        after.Push(now());
        lastWhat = "";
        return last.Value;
    }

    /// <summary>The notebook after the change that was taken back; null when there is none.</summary>
    public Moment? Redo(Func<Moment> now)
    {
        if (!after.TryPop(out var next)) return null;
        before.AddLast(now());
        lastWhat = "";
        return next;
    }
}
