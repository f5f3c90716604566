using System.Diagnostics;

namespace SolarEconomics;

/// <summary>One piece of long work, and how far it is: told to whoever the caller named, and to whoever listens around it.</summary>
/// <remarks>
/// Long methods of the library begin one by themselves, so that a notebook's page shows share done and time left without a word in the notebook. Only the outermost
/// piece is told around: a year inside twenty years says nothing of its own. Code of a step does the same for its own loops:
/// <c>using (var work = WorkProgress.Begin()) { … work.Report(0.4); … }</c>. Reports may come from any thread; begin and dispose on one.
/// </remarks>
public sealed class WorkProgress : IProgress<double>, IDisposable
{
    /// <summary>Work that is over sooner needs no first answer: the full one is there before a first one were read. Unit: s.</summary>
    private const double Patience = 0.5;

    private static readonly AsyncLocal<WorkListener?> s_listener = new();
    private readonly IProgress<double>? _named;
    private readonly WorkListener? _around;
    private readonly long _began = Stopwatch.GetTimestamp();
    private bool _hasPreviewed;

    private WorkProgress(IProgress<double>? named)
    {
        (_named, _around) = (named, s_listener.Value);
        // Pieces inside this one tell nothing of their own, but stop with it.
        s_listener.Value = _around is null ? null : new WorkListener(null) { Stop = _around.Stop };
        _around?.Progress?.Report(0);
    }

    /// <summary>Ends the work where its code looks: asked for around it, beside the token of its caller.</summary>
    public CancellationToken Stop => _around?.Stop ?? CancellationToken.None;

    /// <summary>Whether somebody would read a first answer.</summary>
    internal bool HasPreviewReader => _around?.Preview is not null;

    /// <summary>Has all long work tell how far it is, until the result is disposed. Follows the flow of the code, into threads that it starts too.</summary>
    /// <param name="listener">Hears 0 when a piece of work begins, shares between, and 1 when it ends, however it ends.</param>
    public static IDisposable Around(IProgress<double> listener)
    {
        ArgumentNullException.ThrowIfNull(listener);
        return Around(new WorkListener(listener));
    }

    /// <summary>Has all long work tell how far it is and give a first answer, until the result is disposed. Follows the flow of the code, into threads that it starts too.</summary>
    /// <param name="listener">What is wanted of the work.</param>
    public static IDisposable Around(WorkListener listener)
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
        if (value is > 0 and < 1) _around?.Progress?.Report(value);
    }

    /// <summary>Whether a first answer is wanted now: somebody waits for one, has none yet, and at the pace so far the whole takes longer than a reader waits.</summary>
    /// <param name="share">Share done so far. Range: 0 to 1.</param>
    public bool WantsPreview(double share) =>
        HasPreviewReader && !_hasPreviewed && share is > 0 and < 1 && Stopwatch.GetElapsedTime(_began).TotalSeconds > Patience * share;

    /// <summary>Gives a first answer to whoever waits around the work; a second one is not told.</summary>
    /// <param name="answer">The answer, in its own words a preview.</param>
    public void TellPreview(IFinding answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (_hasPreviewed) return;
        _hasPreviewed = true;
        _around?.Preview?.Invoke(answer);
    }

    /// <summary>Ends the piece of work.</summary>
    public void Dispose()
    {
        _around?.Progress?.Report(1);
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

    private sealed class Listening(WorkListener? before) : IDisposable
    {
        public void Dispose() => s_listener.Value = before;
    }
}
