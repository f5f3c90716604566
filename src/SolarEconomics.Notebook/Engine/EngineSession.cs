using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace SolarEconomics.Notebook;

/// <summary>A session inside this process. It cannot outlive what its code does to the process; the workbench runs it in a child.</summary>
/// <remarks>One per process at a time: console and current folder belong to the whole process.</remarks>
public sealed class EngineSession : ISession
{
    private readonly EventRelay relay = new();
    private readonly StepQueue queue;
    private readonly ConcurrentDictionary<string, TaskCompletionSource<string>> questions = new(StringComparer.Ordinal);
    private readonly TableShelf tables = new();
    private readonly PrintBuffer prints;
    private EngineKernel? engine;
    private Task warm = Task.CompletedTask;
    private CultureInfo culture = CultureInfo.InvariantCulture;
    private EngineRun? run;
    private string stepId = "";
    private int runNumber;

    private EngineSession()
    {
        prints = new PrintBuffer((stream, text) => relay.Raise(new OutputAdded(stepId, Outputs.Printed(stream, text))));
        queue = new StepQueue(relay);
    }

    /// <inheritdoc/>
    public SessionState State => relay.State;

    /// <inheritdoc/>
    public IDisposable Listen(Action<SessionEvent> hear) => relay.Listen(hear);

    /// <summary>Starts a session and has the engine compile its first lines.</summary>
    /// <param name="options">Folder and culture; the memory limit is for a child process only.</param>
    public static async Task<EngineSession> StartAsync(SessionOptions options)
    {
        var session = Start(options);
        await session.warm;
        return session;
    }

    /// <summary>Starts a session that warms up by itself; steps wait until it has.</summary>
    internal static EngineSession Start(SessionOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        EngineKernel.QuietEngineFormatting();
        var session = new EngineSession();
        session.Adopt(options.Folder, options.Culture);
        session.warm = Task.Run(session.WarmAsync);
        return session;
    }

    /// <summary>Gives the session the folder and the culture of the notebook that it works for.</summary>
    internal void Adopt(string folder, string cultureName)
    {
        Environment.CurrentDirectory = folder;
        culture = NotebookCulture.Named(cultureName);
    }

    /// <inheritdoc/>
    public Task<StepEnded> RunAsync(RunStep step, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(step);
        return queue.Add(
            step,
            async stop =>
            {
                await warm;
                return await WorkOutAsync(step, stop);
            },
            cancel);
    }

    /// <inheritdoc/>
    public async Task<StopOutcome> StopAsync()
    {
        queue.ForgetWaiting();
        if (run is not { } working) return StopOutcome.NothingToStop;
        relay.Become(SessionState.Stopping);
        working.Stop();
        await working.CodeEnded;
        return StopOutcome.Stopped;
    }

    /// <inheritdoc/>
    public async Task RestartAsync()
    {
        await StopAsync();
        await warm;
        relay.Become(SessionState.Starting);
        engine?.Dispose();
        runNumber = 0;
        await WarmAsync();
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyList<Completion>> CompleteAsync(string code, int position, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(code);
        return State == SessionState.Ready && engine is { } ready ? await ready.CompleteAsync(code, position, cancel) : [];
    }

    /// <inheritdoc/>
    public Task<TablePage?> ReadTableAsync(TableQuery query, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(query);
        return Task.Run(() => tables.Read(query), cancel);
    }

    /// <inheritdoc/>
    public void AnswerInput(string inputId, string text)
    {
        ArgumentNullException.ThrowIfNull(inputId);
        if (questions.TryRemove(inputId, out var question)) question.TrySetResult(text);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        await warm.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        engine?.Dispose();
        prints.Dispose();
    }

    private async Task WarmAsync()
    {
        // Half of the engine's start is its workspace, the other half the compiler: two processors do both at once.
        var compiler = Task.Run(EngineKernel.WarmCompilerAsync);
        engine = await Task.Run(() => new EngineKernel());
        await compiler;
        await RunQuietly(EngineKernel.Usings);
        // The first value costs the most time: the reader's own first one is then quick.
        await RunQuietly("1 + 1");
        relay.Become(SessionState.Ready);
    }

    private async Task RunQuietly(string code)
    {
        StepError? error = null;
        using var quiet = new EngineRun(h => error ??= (h as EngineFailure)?.Error, Enter);
        await engine!.RunAsync(code, quiet);
        if (error is not null) throw Throw.EngineDidNotStart(error);
    }

    private async Task<StepEnded> WorkOutAsync(RunStep step, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        StepError? error = null;
        var stopped = false;
        stepId = step.StepId;
        var number = ++runNumber;
        tables.Forget(step.StepId);
        using var working = new EngineRun(Hear, Enter);
        using var cancelling = cancel.Register(working.Stop);
        run = working;
        relay.Become(SessionState.Working);
        relay.Raise(new StepStarted(step.StepId, number));
        await engine!.RunAsync(StepCode.Named(step), working);
        run = null;
        prints.EndStep();
        if (working.StopAsked.IsCancellationRequested) stopped = true;
        if (error is not null && !stopped) relay.Raise(new OutputAdded(step.StepId, Outputs.Failed(error)));
        StepEnded ended = stopped ? new StepStopped(step.StepId, Throw.StoppedByReader, watch.Elapsed)
            : error is not null ? new StepFailed(step.StepId, error, watch.Elapsed)
            : new StepRan(step.StepId, number, watch.Elapsed);
        relay.Raise(ended);
        relay.Become(SessionState.Ready);
        return ended;

        void Hear(EngineHappening happening)
        {
            switch (happening)
            {
                case EngineFailure failure:
                    error ??= failure.Error;
                    break;
                case EngineStopped:
                    stopped = true;
                    break;
                case EngineValue value:
                    prints.Flush();
                    var answer = RecordTable.OrValue(value.Value);
                    var shown = ResultFormatter.Format(answer, culture);
                    tables.Keep(step.StepId, answer, shown, culture);
                    relay.Raise(new OutputAdded(step.StepId, value.IsResult ? Outputs.Result(shown, number) : Outputs.Shown(shown)));
                    break;
            }
        }
    }

    private Surroundings Enter() => new(new PrintWriter(prints, "stdout"), new PrintWriter(prints, "stderr"), new AskingReader(Ask), culture,
        new WorkListener(new ProgressTeller(TimeProvider.System, TellProgress)) { Preview = TellPreview, Stop = run?.StopAsked ?? CancellationToken.None });

    private void TellProgress(double share, double secondsLeft)
    {
        // Work that outlives its step on a thread of its own has nobody left who waits for it.
        if (run is not null) relay.Raise(new ProgressMade(stepId, share, secondsLeft));
    }

    private void TellPreview(IFinding answer)
    {
        if (run is not null) relay.Raise(new PreviewMade(stepId, Outputs.Shown(ResultFormatter.Format(answer, culture))));
    }

    private string Ask()
    {
        prints.Flush();
        var id = Guid.NewGuid().ToString("N");
        var answer = new TaskCompletionSource<string>(TaskCreationOptions.RunContinuationsAsynchronously);
        questions[id] = answer;
        relay.Raise(new InputAsked(stepId, id, "", IsSecret: false));
        return answer.Task.WaitAsync(run?.StopAsked ?? CancellationToken.None).GetAwaiter().GetResult();
    }
}
