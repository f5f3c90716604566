namespace SolarEconomics.Notebook;

/// <summary>A C# session of one notebook: it remembers what its steps declared.</summary>
/// <remarks>Safe to call from several threads. Steps run one at a time, in the order of the calls.</remarks>
public interface ISession : IAsyncDisposable
{
    /// <summary>Hears all that happens from now on, in order, one event at a time.</summary>
    /// <param name="hear">Called for each event; returns quickly, as the session waits for it.</param>
    /// <returns>Dispose it to hear no more.</returns>
    IDisposable Listen(Action<SessionEvent> hear);

    /// <summary>What the session is doing now.</summary>
    SessionState State { get; }

    /// <summary>Works a step out after those asked for before it. Outputs come as events.</summary>
    /// <param name="step">The step.</param>
    /// <param name="cancel">Stops the step, or takes it out of the queue.</param>
    /// <returns>How the run ended; it never throws for what the step's code does.</returns>
    Task<StepEnded> RunAsync(RunStep step, CancellationToken cancel = default);

    /// <summary>Stops the step at work and forgets those that wait.</summary>
    Task<StopOutcome> StopAsync();

    /// <summary>Starts afresh: variables are gone, waiting steps are forgotten.</summary>
    Task RestartAsync();

    /// <summary>Ways to go on typing at a place in a step's code; empty while a step is at work.</summary>
    /// <param name="code">The code of the step as typed so far.</param>
    /// <param name="position">Place of the caret in it, counted in UTF-16 units from 0.</param>
    /// <param name="cancel">Gives up.</param>
    Task<IReadOnlyList<Completion>> CompleteAsync(string code, int position, CancellationToken cancel = default);

    /// <summary>Rows of a table that a step answered with; <see langword="null"/> where the session does not hold it any more.</summary>
    /// <param name="query">Which rows, in which order.</param>
    /// <param name="cancel">Gives up.</param>
    Task<TablePage?> ReadTableAsync(TableQuery query, CancellationToken cancel = default);

    /// <summary>Answers an <see cref="InputAsked"/>.</summary>
    /// <param name="inputId">Name of the question.</param>
    /// <param name="text">The line of text.</param>
    void AnswerInput(string inputId, string text);
}
