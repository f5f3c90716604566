using System.CommandLine;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary><c>open [NOTEBOOK]</c>: serves the page to this machine and prints the one address that lets its reader in.</summary>
internal static class OpenVerb
{
    public static Command Make(Io io)
    {
        var verb = new Command("open", "Open a notebook in the browser, or choose one by the question it answers. "
            + $"Which code you let run, and earlier versions, are kept in {StateFolder.OfThisUser().Path}; deleting that folder forgets both.");
        AlsoWithoutItsName(verb, io);
        return verb;
    }

    /// <summary>Gives a command the arguments and the work of <c>open</c>; the program itself opens when no verb is named.</summary>
    public static void AlsoWithoutItsName(Command command, Io io)
    {
        var noBrowser = new Option<bool>("--no-browser") { Description = "Only print the address." };
        var notebook = new Argument<string?>("NOTEBOOK")
        {
            Description = "The .ipynb file. Left out: the page lists the notebooks it finds.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        notebook.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: ['-', ..] wrong }]) given.AddError($"Found {wrong}, expected the name of a notebook or --no-browser.");
        });
        command.Options.Add(noBrowser);
        if (command is not RootCommand) command.Arguments.Add(notebook);
        command.SetAction((parsed, stop) => Do(
            new OpenOptions(command is RootCommand ? null : parsed.GetValue(notebook), parsed.GetValue(noBrowser)), io, stop));
    }

    internal static async Task<int> Do(OpenOptions options, Io io, CancellationToken stop)
    {
        var file = options.Notebook is null ? null : Path.GetFullPath(options.Notebook, io.Folder);
        if (file is not null && !File.Exists(file))
        {
            await io.Error.WriteLineAsync($"Found no file {file}, expected a notebook (.ipynb). Without a name, the page lists the notebooks it finds.");
            return Exit.NotStarted;
        }
        // The page answers first; a session's process warms up once the reader looks at it.
        var sessions = new Lazy<SessionStarter>(() => new SessionStarter(SessionVerb.Program, keepSpare: true));
        await using var host = await PageHost.StartAsync(Room.Around(file ?? io.Folder), new NotebookDesk(new Shared(asked => sessions.Value.Open(asked), TimeProvider.System, StateFolder.OfThisUser())), stop);
        var address = host.AddressFor(file);
        await io.Out.WriteLineAsync(address);
        await io.Error.WriteLineAsync("The address lets one browser in, once. Ctrl+C ends the program.");
        if (!options.NoBrowser && !Browser.TryOpen(address)) await io.Error.WriteLineAsync("No browser could be started: copy the address into one.");
        try { await host.UntilStopped(stop); }
        finally { if (sessions.IsValueCreated) await sessions.Value.DisposeAsync(); }
        return Exit.Fine;
    }
}
