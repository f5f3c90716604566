using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <content>Answers that stand again: what was out of date is not, once all that it rests on says again what it said when it was worked out.</content>
internal sealed partial class OpenNotebook
{
    /// <summary>The code that the answer of a step rests on: that of the steps above that it needs, then its own.</summary>
    private IReadOnlyList<string> BasisOf(string id, Dependence dependence) => [.. dependence.Above(id).Append(id).Select(one => names[one].Code)];

    /// <summary>Before a first change: answers that came with the file rest on the file's own text.</summary>
    private void RememberBases()
    {
        var now = Dependence();
        foreach (var (id, _) in now.Steps)
        {
            var work = works[id];
            if (work is { Basis: null, State: StepState.Kept or StepState.Failed }) (work.Basis, work.Answered) = (BasisOf(id, now), work.State);
        }
    }

    /// <summary>After a change: a retyped word, a slider moved back, a deletion undone.</summary>
    /// <param name="changed">The step whose text alone changed; null where steps as a whole did.</param>
    private void StandAgain(string? changed)
    {
        var now = Dependence();
        // Most strokes of a key make something new: the steps below need no look then.
        if (changed is not null && !Stands(changed, now)) return;
        foreach (var (id, _) in now.Steps)
        {
            var work = works[id];
            if (work.State is not (StepState.Old or StepState.Perhaps) || !Stands(id, now)) continue;
            Become(id, work.Answered == StepState.Done && work.CodeInSession is null ? StepState.Kept : work.Answered);
        }
    }

    private bool Stands(string id, Dependence now) => document[id].Kind == StepKind.Code && works[id].Basis is { } basis && basis.SequenceEqual(BasisOf(id, now), StringComparer.Ordinal);
}
