namespace SolarEconomics.Workbench;

/// <summary>The states of a notebook before each change of its steps, so that every change can be taken back, deletions too.</summary>
internal sealed class History(TimeProvider time)
{
    private const int Longest = 60;
    private static readonly TimeSpan OneStrokeOfTyping = TimeSpan.FromSeconds(4);

    private readonly LinkedList<string> before = new();
    private readonly Stack<string> after = new();
    private string lastWhat = "";
    private DateTimeOffset lastAt;

    public bool CanUndo => before.Count > 0;

    public bool CanRedo => after.Count > 0;

    /// <summary>Keeps the notebook as it is before a change.</summary>
    /// <param name="what">What is changed; going on typing in one place is one change.</param>
    /// <param name="now">The notebook's text.</param>
    public void Remember(string what, Func<string> now)
    {
        var goesOn = what == lastWhat && time.GetUtcNow() - lastAt < OneStrokeOfTyping;
        (lastWhat, lastAt) = (what, time.GetUtcNow());
        after.Clear();
        if (goesOn) return;
        before.AddLast(now());
        if (before.Count > Longest) before.RemoveFirst();
    }

    /// <summary>The notebook before the last change; null when there is none.</summary>
    public string? Undo(Func<string> now)
    {
        if (before.Last is not { } last) return null;
        before.RemoveLast();
        after.Push(now());
        lastWhat = "";
        return last.Value;
    }

    /// <summary>The notebook after the change that was taken back; null when there is none.</summary>
    public string? Redo(Func<string> now)
    {
        if (!after.TryPop(out var next)) return null;
        before.AddLast(now());
        lastWhat = "";
        return next;
    }
}
