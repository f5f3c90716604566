using System.Text.Json.Nodes;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A session that needs no compiler: it answers with the code it was given, fails on <c>fail</c>, hangs on <c>hang</c>, tells how far it is, gives a first answer and then hangs on <c>slow</c>, asks on <c>ask</c>, and on <c>die</c> its process is gone and replaced.</summary>
internal sealed class FakeSession : ISession
{
    private readonly List<Action<SessionEvent>> listeners = [];
    private TaskCompletionSource? hanging;
    private TaskCompletionSource<string>? asking;

    public List<string> Ran { get; } = [];

    public int Restarts { get; private set; }

    public int Closes { get; private set; }

    public List<string> Answers { get; } = [];

    public SessionState State => SessionState.Ready;

    public IDisposable Listen(Action<SessionEvent> hear)
    {
        listeners.Add(hear);
        return new Hearing(() => listeners.Remove(hear));
    }

    public async Task<StepEnded> RunAsync(RunStep step, CancellationToken cancel = default)
    {
        Ran.Add(step.StepId);
        if (step.Code.Contains("slow", StringComparison.Ordinal))
        {
            Tell(new ProgressMade(step.StepId, 0.25, 6));
            Tell(new PreviewMade(step.StepId, new JsonObject { ["output_type"] = "display_data", ["data"] = new JsonObject { ["text/plain"] = "about 7" }, ["metadata"] = new JsonObject() }));
        }
        if (step.Code.Contains("hang", StringComparison.Ordinal) || step.Code.Contains("slow", StringComparison.Ordinal))
        {
            hanging = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            await hanging.Task;
            return new StepStopped(step.StepId, "Stopped by you.", TimeSpan.Zero);
        }
        if (step.Code.Contains("ask", StringComparison.Ordinal))
        {
            asking = new TaskCompletionSource<string>(TaskCreationOptions.RunContinuationsAsynchronously);
            Tell(new InputAsked(step.StepId, "input-1", "How many panels? ", IsSecret: false));
            await asking.Task;
        }
        if (step.Code.Contains("die", StringComparison.Ordinal))
        {
            Tell(new SessionEnded(EndReason.Killed, "The session's process was ended from outside; your notebook is whole."));
            return new StepStopped(step.StepId, "The session ended.", TimeSpan.Zero);
        }
        if (step.Code.Contains("fail", StringComparison.Ordinal))
        {
            Tell(new OutputAdded(step.StepId, new JsonObject { ["output_type"] = "error", ["ename"] = "CS0103", ["evalue"] = "No such name.", ["traceback"] = new JsonArray("CS0103: No such name.", "this step, line 1") }));
            return new StepFailed(step.StepId, new StepError("CS0103", "No such name.", ["this step, line 1"]), TimeSpan.Zero);
        }
        Tell(new OutputAdded(step.StepId, new JsonObject { ["output_type"] = "execute_result", ["data"] = new JsonObject { ["text/plain"] = step.Code }, ["metadata"] = new JsonObject(), ["execution_count"] = Ran.Count }));
        return new StepRan(step.StepId, Ran.Count, TimeSpan.FromMilliseconds(20));
    }

    public Task<StopOutcome> StopAsync()
    {
        hanging?.TrySetResult();
        return Task.FromResult(hanging is null ? StopOutcome.NothingToStop : StopOutcome.Stopped);
    }

    public Task RestartAsync()
    {
        Restarts++;
        return Task.CompletedTask;
    }

    public Task<IReadOnlyList<Completion>> CompleteAsync(string code, int position, CancellationToken cancel = default) =>
        Task.FromResult<IReadOnlyList<Completion>>([new Completion("Payback", "Property")]);

    public Task<TablePage?> ReadTableAsync(TableQuery query, CancellationToken cancel = default) => Task.FromResult<TablePage?>(null);

    public void AnswerInput(string inputId, string text)
    {
        Answers.Add(text);
        asking?.TrySetResult(text);
    }

    public ValueTask DisposeAsync()
    {
        Closes++;
        return ValueTask.CompletedTask;
    }

    private void Tell(SessionEvent told) => listeners.ForEach(hear => hear(told));

    private sealed class Hearing(Action end) : IDisposable
    {
        public void Dispose() => end();
    }
}
