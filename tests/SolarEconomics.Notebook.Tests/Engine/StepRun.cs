using System.Text.Json.Nodes;

namespace SolarEconomics.Notebook.Tests;

/// <summary>What came of one step: all events of its run, and how it ended.</summary>
internal sealed record StepRun(IReadOnlyList<SessionEvent> Events, StepEnded Ended)
{
    private static int made;

    public IReadOnlyList<JsonObject> Outputs => [.. Events.OfType<OutputAdded>().Select(o => o.Output)];

    /// <summary>Printed text of one stream, joined.</summary>
    public string Printed(string stream = "stdout") => string.Concat(
        Outputs.Where(o => (string?)o["output_type"] == "stream" && (string?)o["name"] == stream).SelectMany(o => (JsonArray)o["text"]!).Select(l => (string?)l));

    /// <summary>The one result in a MIME type.</summary>
    public string Result(string mime = "text/plain") =>
        MultilineText.Read(Assert.Single(Outputs, o => (string?)o["output_type"] == "execute_result")["data"]![mime]);

    public static async Task<StepRun> Of(ISession session, string code, string place = "step 7", CancellationToken cancel = default)
    {
        var id = $"s{Interlocked.Increment(ref made)}";
        var events = new List<SessionEvent>();
        void Keep(SessionEvent e)
        {
            if (e is not StepEvent step || step.StepId == id) events.Add(e);
        }
        using var listening = session.Listen(Keep);
        // A step that never ends is a failure to report, not a test run to wait for.
        var ended = await session.RunAsync(new RunStep(id, code, place), cancel).WaitAsync(TimeSpan.FromMinutes(2), CancellationToken.None);
        return new(events, ended);
    }
}
