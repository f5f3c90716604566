using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>What a page can ask for.</content>
internal sealed partial class OpenNotebook
{
    private void Do(PageCommand command, PageLine page)
    {
        if (IsLookingElsewhere && command is not (ShowState or TakeState or LeaveState or Stop)) { page.Send(new Notice("Another state of the notebook is shown. Choose first which one to go on with.")); return; }
        if (!mayRun && command is WorkOut or StartAfresh or Complete) { page.Send(new Notice("This notebook's code has not been let run here.")); return; }
        switch (command)
        {
            case WorkOut ask: Begin(ask); break;
            case Stop: StopWork(); break;
            case StartAfresh: StartOver(() => { }); break;
            case LetCodeRun: LetRun(); break;
            case GiveInput give: Give(give); break;
            case EditStep edit: Change($"edit {edit.Step}", () => document.SetSource(edit.Step, edit.Text), edit.Step, isShape: ChangesHeading(edit)); break;
            case SetAssumption set: Assume(set, page); break;
            case AddStep add: Change("add", () => Add(add), null); break;
            case DeleteStep delete: Delete(delete.Step); break;
            case MoveStep move: Move(move); break;
            case SplitStep split: Split(split); break;
            case JoinStep join: Join(join.Step); break;
            case ChangeKind change: Turn(change.Step); break;
            case CopyStep copy: Copy(copy.Step, page); break;
            case PutStep put: Put(put.After, page); break;
            case Undo: Restore(history.Undo(Now)); break;
            case Redo: Restore(history.Redo(Now)); break;
            case Save: SaveAsked(); break;
            case SaveAnswers save: Change("answers", () => document.LeavesAnswersOut = !save.Wanted, null); break;
            case AskVersions: page.Send(new VersionsFound(VersionViews())); break;
            case LookAtVersion look: LookAtVersion(look, page); break;
            case ShowState show: Show(show.Other); break;
            case TakeState: Take(); break;
            case LeaveState: Leave(); break;
            case Complete ask: Watch(room.CompleteAsync(ask.Text, ask.Position, items => Offer(ask, items, page))); break;
            default: throw new ArgumentOutOfRangeException(nameof(command), command, "Unknown command.");
        }
    }

    private void Give(GiveInput give)
    {
        // Of two pages that answer, the first one counts.
        if (!works.TryGetValue(give.Step, out var work) || work.Asks?.Input != give.Input) return;
        work.Asks = null;
        changedSteps.Add(give.Step);
        room.Answer(give.Input, give.Text);
    }

    private History.Moment Now() => new(document.State(), mayRun);

    /// <summary>The reader lets the code run: from now on, and the next time too.</summary>
    private void LetRun()
    {
        shared.LetRun.Remember(document);
        mayRun = true;
        room.WarmIf(pages.Count > 0);
        different |= Told.Everything;
    }

    /// <summary>Makes a change of steps that can be taken back, and marks what it makes out of date.</summary>
    private void Change(string what, Action change, string? changed, bool isShape = true)
    {
        history.Remember(what, Now);
        RememberBases();
        // What was taken out of a text may be just what others rested on.
        var reached = changed is null ? [] : Dependence().Reached(changed);
        if (changed is not null) MakeAgainWhatItChanged(changed);
        change();
        foreach (var step in document.Steps) works.TryAdd(step.Id, new StepWork { State = FirstState(step) });
        if (changed is not null) MarkChanged(changed);
        MarkReached(reached);
        StandAgain(changed);
        different |= Told.Work | Told.Assumptions | (isShape ? Told.Everything : Told.Nothing);
    }

    /// <summary>An edit of a heading changes the list of questions, and the title; the pages are told everything.</summary>
    private bool ChangesHeading(EditStep edit) => document[edit.Step].Kind == StepKind.Text && edit.Text.Contains('#', StringComparison.Ordinal);

    private void Assume(SetAssumption set, PageLine page)
    {
        if (AssumptionViews.StepOf(document, set.Name) is not { } step) { page.Send(new Notice($"No step declares an assumption {set.Name}.")); return; }
        string? problem = null;
        Change($"assume {set.Name}", () => problem = AssumptionViews.Set(document, set.Name, set.Value), step, isShape: false);
        if (problem is not null) page.Send(new Notice(problem));
    }

    private void Restore(History.Moment? moment)
    {
        if (moment is not null) Become(moment.MayRun, () => document.ReturnKeepingAnswers(moment.State));
    }

    /// <summary>Makes the notebook another state of itself; what differs in its code is out of date.</summary>
    private void Become(bool mayRunThen, Action returning)
    {
        var before = document.Steps.ToDictionary(step => step.Id, step => step.Source, StringComparer.Ordinal);
        var was = Dependence();
        RememberBases();
        returning();
        mayRun = mayRunThen;
        if (!mayRun) ForgetWaiting();
        foreach (var step in document.Steps)
        {
            works.TryAdd(step.Id, new StepWork { State = FirstState(step) });
            if (!before.TryGetValue(step.Id, out var source) || source != step.Source) MarkChanged(step.Id);
        }
        foreach (var (id, source) in before)
        {
            if (document.Find(id)?.Source != source) MarkReached(was.Reached(id));
        }
        StandAgain(null);
        different |= Told.Everything;
    }

    /// <summary>A step has another text: its answer is out of date, and so are those below that depend on it.</summary>
    private void MarkChanged(string id)
    {
        changedSteps.Add(id);
        if (document.Find(id) is not { Kind: StepKind.Code }) return;
        MarkOld(id);
        MarkReached(Dependence().Reached(id));
    }

    private void MarkReached(IEnumerable<(string Id, bool IsSure)> reached)
    {
        foreach (var (id, isSure) in reached) MarkOld(id, isSure);
    }

    private void MarkOld(string id, bool isSure = true)
    {
        if (!works.TryGetValue(id, out var work)) return;
        if (work.State == StepState.Working) work.IsOvertaken = true;
        if (work.State is StepState.None or StepState.Waiting or StepState.Working or StepState.Old) return;
        work.State = isSure ? StepState.Old : StepState.Perhaps;
        changedSteps.Add(id);
    }

    private int IndexOf(string id)
    {
        for (var at = 0; at < document.Steps.Count; at++) if (document.Steps[at].Id == id) return at;
        throw new ArgumentException($"The step {id} is gone.", nameof(id));
    }

    private static void Offer(Complete ask, IReadOnlyList<Completion> items, PageLine page)
    {
        var from = Math.Clamp(ask.Position, 0, ask.Text.Length);
        while (from > 0 && (char.IsLetterOrDigit(ask.Text[from - 1]) || ask.Text[from - 1] == '_')) from--;
        page.Send(new Completed(ask.Request, from, [.. items.Take(400).Select(item => new CompletionView(item.Text, item.Kind))]));
    }
}
