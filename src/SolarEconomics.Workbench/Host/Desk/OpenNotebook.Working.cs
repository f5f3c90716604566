using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>Working steps out, one after another, and what the session tells meanwhile.</content>
internal sealed partial class OpenNotebook
{
    private readonly SessionRoom room;
    private readonly Queue<string> waiting = new();
    private SessionView session = new("The session has not started.");
    private string? atWork;
    private long atWorkSince;
    private bool isStartingOver;
    private bool isStopAsked;
    private WorkOut? askedMeanwhile;
    private int planDone;
    private int planCount;

    private void Begin(WorkOut ask)
    {
        // What is at work would answer for a value that has moved on: it makes room for the new one.
        if (atWork is { } id && works[id].IsOvertaken)
        {
            StopWork();
            askedMeanwhile = ask;
            return;
        }
        var afresh = ask.Extent == Extent.Everything && works.Values.Any(work => work.CodeInSession is not null) && atWork is null && waiting.Count == 0;
        if (afresh) StartOver(() => Queue(ask)); else Queue(ask);
    }

    private void Queue(WorkOut ask)
    {
        var plan = Plan.For(ask.Extent, ask.Step, Dependence(), works, id => works[id].CodeInSession == document[id].Source, makers.GetValueOrDefault);
        if (atWork is null && waiting.Count == 0) planDone = planCount = 0;
        foreach (var id in plan.Where(id => id != atWork && !waiting.Contains(id, StringComparer.Ordinal)))
        {
            works[id].Before = works[id].State;
            Become(id, StepState.Waiting);
            waiting.Enqueue(id);
            planCount++;
        }
        Next();
    }

    private void Next()
    {
        different |= Told.Work;
        if (atWork is not null || isStartingOver) return;
        while (waiting.TryDequeue(out var id))
        {
            if (document.Find(id) is not { Kind: StepKind.Code } step)
            {
                // Deleted, or turned into text, while it waited.
                works[id].State = works[id].Before;
                continue;
            }
            atWork = id;
            atWorkSince = time.GetTimestamp();
            progress = null;
            TickTime();
            isStopAsked = false;
            works[id].AnswerIsFromBefore = true;
            works[id].IsOvertaken = false;
            works[id].StoppedBecause = "";
            works[id].HasRun = true;
            works[id].Hidden = HiddenFor(id);
            Become(id, StepState.Working);
            var (code, basis) = (step.Source, BasisOf(id, Dependence()));
            Watch(room.RunAsync(new RunStep(id, code), end => Ended(end, code, basis)));
            return;
        }
    }

    private void Ended(StepEnded end, string code, IReadOnlyList<string> basis)
    {
        lastAsked = time.GetTimestamp();
        atWork = null;
        progress = null;
        planDone++;
        if (works.TryGetValue(end.StepId, out var work) && document.Find(end.StepId) is { } step)
        {
            var givesWay = askedMeanwhile is not null && end is StepStopped;
            // What gives way to a newer value keeps its older answer on the page until the new one is there.
            if (!givesWay)
            {
                ForgetAnswerFromBefore(end.StepId, work);
                work.Seconds = end.Took.TotalSeconds;
            }
            work.Preview = [];
            work.Asks = null;
            work.CodeInSession = end is StepRan ? code : null;
            work.StoppedBecause = givesWay ? "" : (end as StepStopped)?.Words ?? "";
            if (end is StepRan ran) document.SetRunNumber(end.StepId, ran.RunNumber);
            RememberMaker(end.StepId);
            if (!givesWay)
            {
                (work.Basis, work.Answered) = (basis, end switch
                {
                    StepRan => StepState.Done,
                    StepStopped when isStopAsked => StepState.Stopped,
                    _ => StepState.Failed,
                });
            }
            // Edited while it worked, or what it rests on: what it answered belongs to before.
            Become(end.StepId, !givesWay && Stands(end.StepId, Dependence()) ? work.Answered : StepState.Old);
        }
        if (end is not StepRan) ForgetWaiting();
        if (askedMeanwhile is { } ask)
        {
            askedMeanwhile = null;
            Begin(ask);
        }
        else Next();
    }

    private void StopWork()
    {
        askedMeanwhile = null;
        ForgetWaiting();
        if (atWork is null) return;
        isStopAsked = true;
        Watch(room.StopAsync(outcome =>
        {
            if (outcome == StopOutcome.Replaced) ForgetValues();
        }));
    }

    /// <summary>Starts the session afresh, then goes on.</summary>
    private void StartOver(Action then)
    {
        ForgetWaiting();
        isStartingOver = true;
        ForgetValues();
        Watch(room.RestartAsync(() =>
        {
            isStartingOver = false;
            atWork = null;
            then();
            Next();
        }));
    }

    private void Hear(SessionEvent told)
    {
        switch (told)
        {
            case OutputAdded added when works.TryGetValue(added.StepId, out var work) && document.Find(added.StepId) is not null:
                ForgetAnswerFromBefore(added.StepId, work);
                document.AddOutput(added.StepId, added.Output);
                work.Preview = [];
                changedSteps.Add(added.StepId);
                break;
            case InputAsked asked when works.TryGetValue(asked.StepId, out var work):
                work.Asks = new AskView(asked.InputId, asked.Prompt.Trim(), asked.IsSecret);
                changedSteps.Add(asked.StepId);
                break;
            case ProgressMade made:
                Hear(made);
                break;
            case PreviewMade preview when preview.StepId == atWork:
                works[preview.StepId].Preview = Answers.Of([preview.Output]);
                changedSteps.Add(preview.StepId);
                break;
            case StateChanged changed:
                Say(Words(changed.State));
                break;
            case MemoryMeasured memory:
                session = session with { UsedBytes = memory.UsedBytes, LimitBytes = memory.LimitBytes };
                different |= Told.Session;
                break;
            case SessionEnded { Reason: not EndReason.Closed } ended:
                ForgetValues();
                notices.Add(ended.Words);
                break;
        }
    }

    /// <summary>The session holds no values any more; the answers stay, as answers from before.</summary>
    private void ForgetValues()
    {
        makers.Clear();
        foreach (var (id, work) in works)
        {
            work.CodeInSession = null;
            work.HasRun = false;
            if (work.State == StepState.Done) Become(id, StepState.Kept);
        }
    }

    private void ForgetWaiting()
    {
        while (waiting.TryDequeue(out var id)) Become(id, works[id].Before);
        different |= Told.Work;
    }

    private void ForgetAnswerFromBefore(string id, StepWork work)
    {
        if (!work.AnswerIsFromBefore) return;
        work.AnswerIsFromBefore = false;
        document.ClearOutputs(id);
        changedSteps.Add(id);
    }

    private void Become(string id, StepState state)
    {
        works[id].State = state;
        changedSteps.Add(id);
    }

    private void Say(string words)
    {
        session = session with { Words = words };
        different |= Told.Session;
    }

    private static string Words(SessionState state) => state switch
    {
        SessionState.Starting => "The session is starting.",
        SessionState.Ready => "The session is ready.",
        SessionState.Working => "The session is working a step out.",
        SessionState.Stopping => "The session is stopping.",
        _ => "The session has ended; working a step out starts a fresh one.",
    };

    private void Watch(Task beside) => _ = WatchAsync(beside);

    /// <summary>Work that goes on beside the loop: a fault in it is told, not lost.</summary>
    private async Task WatchAsync(Task beside)
    {
        try { await beside; }
        catch (Exception failure)
        {
            LocalLog.Current.Write(failure);
            Post(() =>
            {
                isStartingOver = false;
                notices.Add($"The session did not answer: {failure.Message}");
            });
        }
    }
}
