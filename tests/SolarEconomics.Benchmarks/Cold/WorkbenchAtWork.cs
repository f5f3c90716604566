using System.Diagnostics;
using System.Net;
using System.Net.WebSockets;
using System.Text.Json.Nodes;

namespace SolarEconomics.Benchmarks;

/// <summary>The program as its reader meets it: started by <c>dotnet …dll open</c>, its page fetched, its steps worked out over the page's own line.</summary>
internal sealed class WorkbenchAtWork : IDisposable
{
    private static readonly TimeSpan s_patience = TimeSpan.FromMinutes(2);
    private readonly Process _process;
    private readonly CookieContainer _cookies = new();
    private readonly HttpClient _browser;
    private readonly ClientWebSocket _talk = new();
    private readonly Stopwatch _sinceStart = Stopwatch.StartNew();

    private WorkbenchAtWork(string notebook)
    {
        _browser = new HttpClient(new HttpClientHandler { CookieContainer = _cookies }) { Timeout = s_patience };
        _process = Process.Start(new ProcessStartInfo("dotnet", [Dll, "open", notebook, "--no-browser"]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw new InvalidOperationException("dotnet did not start.");
        _process.ErrorDataReceived += (_, _) => { };
        _process.BeginErrorReadLine();
    }

    /// <summary>The program of the same build as this one.</summary>
    internal static string Dll => AppContext.BaseDirectory.Replace("tests" + Path.DirectorySeparatorChar + "SolarEconomics.Benchmarks", "src" + Path.DirectorySeparatorChar + "SolarEconomics.Workbench", StringComparison.Ordinal) + "SolarEconomics.Workbench.dll";

    /// <summary>Waits on a notebook, in the order in which a reader meets them: address answering, notebook told, first answer, all answers.</summary>
    internal static async Task<Waits> Time(string notebook)
    {
        using var program = new WorkbenchAtWork(notebook);
        var address = new Uri(await program._process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program ended without an address."));
        (await program._browser.GetAsync(address)).EnsureSuccessStatusCode();
        var answering = program._sinceStart.Elapsed.TotalSeconds;
        var steps = await program.Join(address);
        var told = program._sinceStart.Elapsed.TotalSeconds;
        var code = steps.Where(s => (string?)s!["kind"] == "code").Select(s => (string)s!["id"]!).ToList();
        await program.WorkOutAll();
        await program.Until(code[0]);
        var answered = program._sinceStart.Elapsed.TotalSeconds;
        var ownWork = 0.0;
        foreach (var id in code[1..]) ownWork += await program.Until(id);
        var all = program._sinceStart.Elapsed.TotalSeconds;
        return new Waits(answering, told, answered - told, (all - answered - ownWork) / (code.Count - 1), all - told);
    }

    private async Task<JsonArray> Join(Uri address)
    {
        var named = address.Query.TrimStart('?').Split('&').Single(part => part.StartsWith("notebook=", StringComparison.Ordinal));
        _talk.Options.Cookies = _cookies;
        _talk.Options.SetRequestHeader("Origin", address.GetLeftPart(UriPartial.Authority));
        await _talk.ConnectAsync(new Uri($"ws://{address.Authority}/talk?{named}"), CancellationToken.None);
        while (true)
        {
            var heard = await Hear();
            if ((string?)heard["message"] == "opened") return heard["notebook"]!["steps"]!.AsArray();
        }
    }

    private Task WorkOutAll() => _talk.SendAsync("""{"message":"workOut","extent":"everything"}"""u8.ToArray(), WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);

    private readonly Dictionary<string, double> _worked = new(StringComparer.Ordinal);

    /// <summary>Waits until a step has its answer, and gives the seconds of its own work.</summary>
    private async Task<double> Until(string step)
    {
        while (!_worked.ContainsKey(step))
        {
            var heard = await Hear();
            if ((string?)heard["message"] != "stepChanged") continue;
            var (id, state) = ((string)heard["step"]!["id"]!, (string)heard["step"]!["state"]!);
            if (state == "failed") throw new InvalidOperationException($"Step {id} failed: {heard}");
            if (state == "done" && heard["step"]!["seconds"] is { } seconds) _worked[id] = (double)seconds;
        }
        return _worked[step];
    }

    private async Task<JsonNode> Hear()
    {
        using var patience = new CancellationTokenSource(s_patience);
        using var message = new MemoryStream();
        var buffer = new byte[1 << 16];
        while (true)
        {
            var part = await _talk.ReceiveAsync(buffer, patience.Token);
            if (part.MessageType != WebSocketMessageType.Text) throw new InvalidOperationException($"The program ended the conversation: {part.MessageType} {_talk.CloseStatus}.");
            message.Write(buffer, 0, part.Count);
            if (part.EndOfMessage) return JsonNode.Parse(message.ToArray())!;
        }
    }

    public void Dispose()
    {
        _talk.Dispose();
        _browser.Dispose();
        _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }
}
