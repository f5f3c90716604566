using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>How far working is, and how long the rest will take.</content>
internal sealed partial class OpenNotebook
{
    private static readonly TimeSpan TellTimeAgain = TimeSpan.FromSeconds(1);
    private ProgressMade? progress;
    private bool isTickingTime;

    private WorkView Work() => new(
        atWork is not null || waiting.Count > 0, planDone + 1, planCount, SecondsLeft(), history.CanUndo, history.CanRedo, atWork, progress?.Share, progress?.SecondsLeft);

    private void Hear(ProgressMade made)
    {
        if (made.StepId != atWork) return;
        progress = made.Share < 1 ? made : null;
        different |= Told.Work;
    }

    /// <summary>How long the rest will probably take: the step at work as it tells itself, each other one as long as the last time, one that never ran as long as the others on average. Null while nothing is known.</summary>
    private double? SecondsLeft()
    {
        if (atWork is null) return null;
        var known = works.Values.Select(work => work.Seconds).OfType<double>().ToList();
        if (known.Count == 0 && progress is null) return null;
        // Of steps that never ran nothing can be said before the first one ended.
        if (known.Count == 0 && waiting.Count > 0) return null;
        var usual = known.DefaultIfEmpty(0).Average();
        var current = progress?.SecondsLeft ?? Math.Max(0, (works[atWork].Seconds ?? usual) - time.GetElapsedTime(atWorkSince).TotalSeconds);
        return current + waiting.Sum(id => works[id].Seconds ?? usual);
    }

    /// <summary>While a step works, the time left is told once a second.</summary>
    private void TickTime()
    {
        if (isTickingTime || atWork is null) return;
        isTickingTime = true;
        After(TellTimeAgain, () =>
        {
            isTickingTime = false;
            if (atWork is null) return;
            different |= Told.Work;
            TickTime();
        });
    }
}
