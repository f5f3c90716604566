using System.CommandLine;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary><c>run NOTEBOOK</c>: works a notebook out from the top, without a page.</summary>
internal static class RunVerb
{
    public static Command Make(Io io)
    {
        var notebook = new Argument<string>("NOTEBOOK") { Description = "The .ipynb file." };
        var save = new Option<string?>("--save") { Description = "Write the notebook with its answers to this file.", HelpName = "FILE" };
        var set = new Option<string[]>("--set")
        {
            Description = "Work with another value of an assumption; a rate is a fraction, 5 % is 0.05. Can be given several times.",
            HelpName = "name=value",
            AllowMultipleArgumentsPerToken = true,
        };
        var list = new Option<bool>("--list") { Description = "Only list the assumptions, with unit and range." };
        var verb = new Command("run", "Work a notebook out from the top and end well only if every step does.");
        verb.Arguments.Add(notebook);
        foreach (var option in new Option[] { save, set, list }) verb.Options.Add(option);
        verb.SetAction((parsed, stop) => Do(
            new RunOptions(parsed.GetValue(notebook)!, parsed.GetValue(save), parsed.GetValue(set) ?? [], parsed.GetValue(list)), io, stop));
        return verb;
    }

    internal static async Task<int> Do(RunOptions options, Io io, CancellationToken stop)
    {
        var path = Path.GetFullPath(options.Notebook, io.Folder);
        if (await RunInput.Read(path, options, io) is not { } document) return Exit.NotStarted;
        if (options.List) return await AssumptionList.Print(NotebookAssumptions.Of(document), io);
        // Asked for by name, its code was let run: the page need not ask again.
        new LetRun(StateFolder.OfThisUser(), TimeProvider.System).Remember(document);
        await using var starter = new SessionStarter(SessionVerb.Program, keepSpare: false);
        await using var session = starter.Open(new SolarEconomics.Notebook.SessionOptions { Folder = Path.GetDirectoryName(path)!, Culture = document.Culture });
        return await RunWork.Do(document, session, options, io, stop);
    }
}
