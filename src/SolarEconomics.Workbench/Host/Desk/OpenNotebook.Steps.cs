using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>Steps as a whole: added, taken out, moved, split, joined, turned into the other kind, copied.</content>
internal sealed partial class OpenNotebook
{
    private void Add(AddStep add)
    {
        var at = add.After is null ? document.Steps.Count : IndexOf(add.After) + 1;
        document.Insert(at, add.Kind == "text" ? StepKind.Text : StepKind.Code, "");
    }

    private void Delete(string id)
    {
        if (id == atWork) StopWork();
        var reached = Dependence().Reached(id);
        MakeAgainWhatItChanged(id);
        Change("delete", () => document.Delete(id), null);
        MarkReached(reached);
    }

    private void Move(MoveStep move)
    {
        var to = Math.Clamp(IndexOf(move.Step) + move.By, 0, document.Steps.Count - 1);
        var reached = Dependence().Reached(move.Step);
        Change("move", () => document.Move(move.Step, to), null);
        MarkReached(reached);
        MarkReached(Dependence().Reached(move.Step));
    }

    /// <summary>Splits a step in two; the first keeps the name and the answer.</summary>
    private void Split(SplitStep split)
    {
        var step = document[split.Step];
        var at = Math.Clamp(split.Position, 0, step.Source.Length);
        var (first, second) = (step.Source[..at].TrimEnd('\n', ' '), step.Source[at..].TrimStart('\n'));
        Change("split", () =>
        {
            document.SetSource(step.Id, first);
            document.Insert(IndexOf(step.Id) + 1, step.Kind, second);
        }, step.Id);
    }

    /// <summary>Joins a step with the next one of its kind.</summary>
    private void Join(string id)
    {
        var at = IndexOf(id);
        var step = document.Steps[at];
        if (at + 1 >= document.Steps.Count || document.Steps[at + 1].Kind != step.Kind)
        {
            notices.Add($"The step below is not {(step.Kind == StepKind.Text ? "text" : "code")}: turn one of the two into the other kind first.");
            return;
        }
        var next = document.Steps[at + 1];
        Change("join", () =>
        {
            document.SetSource(id, step.Source.TrimEnd('\n') + (step.Kind == StepKind.Text ? "\n\n" : "\n") + next.Source);
            document.Delete(next.Id);
        }, id);
    }

    /// <summary>Turns text into code or code into text; the words stay.</summary>
    private void Turn(string id)
    {
        var isCode = document[id].Kind == StepKind.Code;
        if (isCode && id == atWork) StopWork();
        var reached = Dependence().Reached(id);
        MakeAgainWhatItChanged(id);
        Change("turn", () => document.SetKind(id, isCode ? StepKind.Text : StepKind.Code), null);
        // Code that became text keeps what is known of it: taken back, its answer stands again.
        if (!isCode) works[id] = new StepWork { State = FirstState(document[id]) };
        MarkReached(reached);
        MarkReached(Dependence().Reached(id));
    }

    private void Copy(string id, PageLine page)
    {
        if (!mayRun) { page.Send(new Notice("This notebook's code has not been let run here, so it cannot be copied into another one.")); return; }
        shared.Copied = new CopiedStep(document[id].Kind, document[id].Source);
        page.Send(new Notice("Copied. Put it below a step here or in another notebook that is open."));
    }

    private void Put(string? after, PageLine page)
    {
        if (shared.Copied is not { } copied) { page.Send(new Notice("No step has been copied yet.")); return; }
        Change("put", () => document.Insert(after is null ? document.Steps.Count : IndexOf(after) + 1, copied.Kind, copied.Source), null);
    }
}
