using System.Text.Json;
using System.Text.Json.Nodes;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>An open notebook with a fake session, and one page that looks at it: what the page was told last is what the test reads.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private readonly PageLine line = new();
    private readonly OpenNotebook notebook;

    /// <summary>Opens a notebook, whose code may run.</summary>
    public OpenPage(string path, Shared? shared = null, bool letRun = true, TimeProvider? time = null)
    {
        Shared = shared ?? new Shared(_ => Session, time ?? TimeProvider.System, Scratch.StateBeside(path));
        if (letRun) Shared.LetRun.Remember(NotebookDocument.Load(path));
        notebook = new OpenNotebook(path, Shared);
        notebook.Join(line);
    }

    public Shared Shared { get; }

    public FakeSession Session { get; } = new();

    public JsonNode? Versions { get; private set; }

    public JsonNode Notebook { get; private set; } = new JsonObject();

    public List<string> Notices { get; } = [];

    public JsonNode? Completed { get; private set; }

    /// <summary>Asks, and waits until what was asked is done and told.</summary>
    public async Task AskAsync(params PageCommand[] commands)
    {
        foreach (var command in commands) notebook.Ask(command, line);
        await UntilAsync(() => !Busy);
    }

    /// <summary>Asks, and does not wait.</summary>
    public void Ask(PageCommand command) => notebook.Ask(command, line);

    /// <summary>Waits until all that was asked and all that rang is done.</summary>
    public async Task SettleAsync()
    {
        // A timer that rang first runs on the pool, then comes into the notebook's loop.
        await Task.Delay(5);
        await notebook.SettledAsync();
    }

    /// <summary>Waits until the page was told something; fails after ten seconds with what it was told instead.</summary>
    public async Task UntilAsync(Func<bool> isSo)
    {
        for (var turn = 0; turn < 400; turn++)
        {
            await notebook.SettledAsync();
            await Task.Delay(25);
            Read();
            if (turn > 1 && isSo()) return;
        }
        Assert.Fail($"Told instead: {Notebook.ToJsonString()}");
    }

    public bool Busy => (bool?)Notebook["work"]?["busy"] ?? true;

    public string StateOf(string id) => (string)Step(id)["state"]!;

    public IReadOnlyList<string> States => [.. Notebook["steps"]!.AsArray().Where(step => (string)step!["kind"]! == "code").Select(step => (string)step!["state"]!)];

    public JsonNode Step(string id) => Notebook["steps"]!.AsArray().First(step => (string)step!["id"]! == id)!;

    public ValueTask DisposeAsync() => notebook.DisposeAsync();

    /// <summary>Does with each message what the page does with it.</summary>
    private void Read()
    {
        while (line.Outgoing.TryRead(out var written))
        {
            var told = JsonSerializer.Deserialize<JsonObject>(written)!;
            switch ((string)told["message"]!)
            {
                case "opened": Notebook = told["notebook"]!.DeepClone(); break;
                case "stepChanged":
                    var steps = Notebook["steps"]!.AsArray();
                    for (var at = 0; at < steps.Count; at++) if ((string)steps[at]!["id"]! == (string)told["step"]!["id"]!) steps[at] = told["step"]!.DeepClone();
                    break;
                case "workChanged": Notebook["work"] = told["work"]!.DeepClone(); break;
                case "assumptionsChanged": Notebook["assumptions"] = told["assumptions"]!.DeepClone(); break;
                case "saved": Notebook["saved"] = told["words"]!.DeepClone(); break;
                case "sessionChanged": Notebook["session"] = told["session"]!.DeepClone(); break;
                case "notice": Notices.Add((string)told["words"]!); break;
                case "completed": Completed = told; break;
                case "versionsFound": Versions = told["versions"]; break;
            }
        }
    }
}
