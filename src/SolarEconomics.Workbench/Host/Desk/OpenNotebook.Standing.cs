using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>Answers that stand again: what was out of date is not, once all that it rests on says again what it said when it was worked out.</content>
internal sealed partial class OpenNotebook
{
    private string BasisOf(string id) => string.Join('\0', Dependence().Above(id).Append(id).Select(one => document[one].Source));

    /// <summary>Before a first change: answers that came with the file rest on the file's own text.</summary>
    private void RememberBases()
    {
        foreach (var step in document.Steps)
        {
            var work = works[step.Id];
            if (step.Kind != StepKind.Code || work.Basis is not null || work.State is not (StepState.Kept or StepState.Failed)) continue;
            (work.Basis, work.Answered) = (BasisOf(step.Id), work.State);
        }
    }

    /// <summary>After a change: a retyped word, a slider moved back, a deletion undone.</summary>
    /// <param name="changed">The step whose text alone changed; null where steps as a whole did.</param>
    private void StandAgain(string? changed)
    {
        // Most strokes of a key make something new: the steps below need no look then.
        if (changed is not null && !Stands(changed)) return;
        foreach (var step in document.Steps)
        {
            var work = works[step.Id];
            if (work.State is not (StepState.Old or StepState.Perhaps) || !Stands(step.Id)) continue;
            Become(step.Id, work.Answered == StepState.Done && work.CodeInSession is null ? StepState.Kept : work.Answered);
        }
    }

    private bool Stands(string id) => document[id].Kind == StepKind.Code && works[id].Basis is { } basis && basis == BasisOf(id);
}
