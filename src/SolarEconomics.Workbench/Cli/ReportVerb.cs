using System.CommandLine;
using System.Text;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary><c>report NOTEBOOK --bare --out FILE.html</c>: works a notebook out and writes its steps as one page that works with no network.</summary>
internal static class ReportVerb
{
    public static Command Make(Io io)
    {
        var notebook = new Argument<string>("NOTEBOOK") { Description = "The .ipynb file." };
        var to = new Option<string>("--out") { Description = "The page to write.", HelpName = "FILE.html", Required = true };
        var bare = new Option<bool>("--bare") { Description = "The notebook's steps alone.", Required = true };
        var verb = new Command("report", """
            Work a notebook out and write it as one page that works with no network.

            Example:
              SolarEconomics.Workbench report notebooks/01-has-it-paid-for-itself.ipynb --bare --out report.html
            """);
        verb.Arguments.Add(notebook);
        verb.Options.Add(bare);
        verb.Options.Add(to);
        verb.SetAction((parsed, stop) => Do(new ReportOptions(parsed.GetValue(notebook)!, parsed.GetValue(to)!), io, stop));
        return verb;
    }

    internal static async Task<int> Do(ReportOptions options, Io io, CancellationToken stop)
    {
        var path = Path.GetFullPath(options.Notebook, io.Folder);
        var target = Path.GetFullPath(options.To, io.Folder);
        // Working out may take minutes: a place that cannot be written to is said before it, not after.
        if (!Directory.Exists(Path.GetDirectoryName(target)))
        {
            await io.Error.WriteLineAsync($"--out {options.To}: found no folder {Path.GetDirectoryName(target)}, expected one that is there.");
            return Exit.NotStarted;
        }
        var document = NotebookDocument.Load(path);
        await using var starter = new SessionStarter(SessionVerb.Program, keepSpare: false);
        await using var session = starter.Open(new SessionOptions { Folder = Path.GetDirectoryName(path)!, Culture = document.Culture });
        var result = await NotebookRunner.RunAsync(document, session, new StepLines(io.Error), stop);
        if (!result.Worked)
        {
            await io.Error.WriteLineAsync($"Failed at {result.FailedAt}, so no report was written. Open the notebook, or run it, to see what went wrong.");
            return Exit.Failed;
        }
        AtomicFile.Write(target, Encoding.UTF8.GetBytes(ReportPage.Write(document, Path.GetFileNameWithoutExtension(path))));
        await io.Error.WriteLineAsync($"Written as {target}");
        return Exit.Fine;
    }
}
