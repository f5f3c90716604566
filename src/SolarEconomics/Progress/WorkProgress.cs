namespace SolarEconomics;

/// <summary>One piece of long work, and how far it is: told to whoever the caller named, and to whoever listens around it.</summary>
/// <remarks>
/// Long methods of the library begin one by themselves, so that a notebook's page shows share done and time left without a word in the notebook. Only the outermost
/// piece is told around: a year inside twenty years says nothing of its own. Code of a step does the same for its own loops:
/// <c>using (var work = WorkProgress.Begin()) { … work.Report(0.4); … }</c>. Reports may come from any thread; begin and dispose on one.
/// </remarks>
public sealed class WorkProgress : IProgress<double>, IDisposable
{
    private static readonly AsyncLocal<IProgress<double>?> s_listener = new();
    private readonly IProgress<double>? _named;
    private readonly IProgress<double>? _around;

    private WorkProgress(IProgress<double>? named)
    {
        (_named, _around) = (named, s_listener.Value);
        s_listener.Value = null;
        _around?.Report(0);
    }

    /// <summary>Has all long work tell how far it is, until the result is disposed. Follows the flow of the code, into threads that it starts too.</summary>
    /// <param name="listener">Hears 0 when a piece of work begins, shares between, and 1 when it ends, however it ends.</param>
    public static IDisposable Around(IProgress<double> listener)
    {
        ArgumentNullException.ThrowIfNull(listener);
        var before = s_listener.Value;
        s_listener.Value = listener;
        return new Listening(before);
    }

    /// <summary>Begins a piece of work; dispose it at its end.</summary>
    /// <param name="named">Hears the shares too, as they are; may be <see langword="null"/>.</param>
    public static WorkProgress Begin(IProgress<double>? named = null) => new(named);

    /// <summary>Tells how far the work is.</summary>
    /// <param name="value">Share done. Range: 0 to 1.</param>
    public void Report(double value)
    {
        _named?.Report(value);
        if (value is > 0 and < 1) _around?.Report(value);
    }

    /// <summary>Ends the piece of work.</summary>
    public void Dispose()
    {
        _around?.Report(1);
        s_listener.Value = _around;
    }

    /// <summary>One of several like pieces, one after another: its own share counts as its part of the whole.</summary>
    /// <param name="at">Which one, from 0.</param>
    /// <param name="of">How many there are.</param>
    /// <param name="named">Hears the piece's own share; may be <see langword="null"/>.</param>
    internal IProgress<double> Part(int at, int of, IProgress<double>? named) => new OnePart(this, at, of, named);

    private sealed class OnePart(WorkProgress whole, int at, int of, IProgress<double>? named) : IProgress<double>
    {
        public void Report(double value)
        {
            named?.Report(value);
            whole.Report((at + value) / of);
        }
    }

    private sealed class Listening(IProgress<double>? before) : IDisposable
    {
        public void Dispose() => s_listener.Value = before;
    }
}
