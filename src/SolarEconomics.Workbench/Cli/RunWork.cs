using SolarEconomics.Notebook;
using Spectre.Console;
using ISession = SolarEconomics.Notebook.ISession;

namespace SolarEconomics.Workbench;

/// <summary>The work of <c>run</c>: steps, progress, answers and the file.</summary>
internal static class RunWork
{
    public static async Task<int> Do(NotebookDocument document, ISession session, RunOptions options, Io io, CancellationToken stop)
    {
        var result = io.IsTerminal
            ? await WithBar(document, session, io, stop)
            : await NotebookRunner.RunAsync(document, session, new StepLines(io.Error), stop);
        if (result.Worked) await RunAnswers.Print(document, io.Out);
        else await io.Error.WriteLineAsync(Say(result));
        var isSaved = options.Save is null || await Save(document, Path.GetFullPath(options.Save, io.Folder), io);
        return result.Worked && isSaved ? Exit.Fine : Exit.Failed;
    }

    private static async Task<bool> Save(NotebookDocument document, string path, Io io)
    {
        try
        {
            document.Save(path);
            await io.Error.WriteLineAsync($"Saved as {path}");
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            await io.Error.WriteLineAsync($"The steps ran, but the notebook was not saved. {e.Message}");
            return false;
        }
    }

    private static string Say(RunResult result) => result.Failure switch
    {
        StepFailed failed => $"Failed at {result.FailedAt}.\n{failed.Error.Name}: {failed.Error}",
        StepStopped stopped => $"Ended at {result.FailedAt}. {stopped.Words}",
        _ => $"Ended at {result.FailedAt}.",
    };

    private static async Task<RunResult> WithBar(NotebookDocument document, ISession session, Io io, CancellationToken stop)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(io.Error) });
        return await console.Progress()
            .Columns(new TaskDescriptionColumn { Alignment = Justify.Left }, new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .StartAsync(async drawing =>
            {
                var bar = drawing.AddTask("Starting the session");
                return await NotebookRunner.RunAsync(document, session, new Bar(bar), stop);
            });
    }

    private sealed class Bar(ProgressTask bar) : IProgress<RunProgress>
    {
        public void Report(RunProgress value)
        {
            bar.MaxValue = value.Count;
            bar.Value = value.Ended is null ? value.Number - 1 : value.Number;
            bar.Description = Markup.Escape(value.Name);
        }
    }
}
