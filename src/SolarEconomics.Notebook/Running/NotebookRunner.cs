namespace SolarEconomics.Notebook;

/// <summary>Works a notebook out from the top, without a page.</summary>
public static class NotebookRunner
{
    /// <summary>Works out every step of code in order, writing outputs into the document, and ends at the first step that fails.</summary>
    /// <param name="document">The notebook; outputs of an earlier run are cleared first.</param>
    /// <param name="session">A session in which nothing was run yet.</param>
    /// <param name="progress">Hears of each step before and after it; may be <see langword="null"/>.</param>
    /// <param name="cancel">Stops the step at work; the run then ends as stopped.</param>
    public static async Task<RunResult> RunAsync(
        NotebookDocument document, ISession session, IProgress<RunProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(session);
        document.ClearAllOutputs();
        // A step without code gives nothing and cannot fail.
        var steps = document.Steps.Where(s => s.Kind == StepKind.Code && !string.IsNullOrWhiteSpace(s.Source)).ToList();
        using var listening = session.Listen(happened => Write(document, happened));
        for (var i = 0; i < steps.Count; i++)
        {
            var name = StepNames.Full(document, steps[i]);
            progress?.Report(new(i + 1, steps.Count, name, null));
            var ended = await session.RunAsync(new RunStep(steps[i].Id, steps[i].Source, StepNames.Place(document, steps[i])), cancel);
            progress?.Report(new(i + 1, steps.Count, name, ended));
            if (ended is not StepRan) return new(i, steps.Count, name, ended);
        }
        return new(steps.Count, steps.Count, null, null);
    }

    private static void Write(NotebookDocument document, SessionEvent happened)
    {
        switch (happened)
        {
            case StepStarted started when document.Find(started.StepId) is not null:
                document.SetRunNumber(started.StepId, started.RunNumber);
                break;
            case OutputAdded output when document.Find(output.StepId) is not null:
                document.AddOutput(output.StepId, output.Output);
                break;
        }
    }
}
