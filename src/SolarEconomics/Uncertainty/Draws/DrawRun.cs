using System.Runtime.ExceptionServices;

namespace SolarEconomics;

/// <summary>Takes draws in chunks on several threads. What a draw gives depends on its number alone, so threads and chunks change nothing.</summary>
internal static class DrawRun
{
    /// <summary>Draws of one piece of work: small enough that stopping is felt at once.</summary>
    private const int Chunk = 1024;
    private const int FirstLook = 4096;

    /// <summary>The first look where a draw takes a good part of a millisecond.</summary>
    internal const int FirstLookOfSlowDraws = 256;
    private const int SmallestChunk = 64;

    /// <summary>Fills draws until all are taken or the mean of the watched values is precise enough.</summary>
    /// <param name="options">How many, from which seed.</param>
    /// <param name="fill">Takes the draws from a first one on, a number of them.</param>
    /// <param name="watched">The values whose standard error the stop rule looks at.</param>
    /// <param name="progress">Told the share of draws taken; may be <see langword="null"/>.</param>
    /// <param name="cancel">Stops between chunks.</param>
    /// <param name="preview">The answer from the first draws, a number of them, for whoever waits around long work; <see langword="null"/> where none is given.</param>
    /// <param name="firstLook">After so many draws the first answer is given; the stop rule keeps its own looks, so that who listens changes no result.</param>
    /// <returns>Draws taken.</returns>
    internal static int Take(DrawOptions options, Action<int, int> fill, double[] watched, IProgress<double>? progress, CancellationToken cancel, Func<int, IFinding>? preview = null,
        int firstLook = FirstLook)
    {
        using var work = WorkProgress.Begin(progress);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel, work.Stop);
        var (taken, stopLook) = (0, options.StopAtStandardError is null ? options.MostDraws : Math.Min(options.MostDraws, FirstLook));
        while (taken < options.MostDraws)
        {
            var until = taken == 0 && preview is not null && work.HasPreviewReader ? Math.Min(stopLook, firstLook) : stopLook;
            Take(taken, until, options, fill, work, stop.Token);
            taken = until;
            if (taken == stopLook)
            {
                if (options.StopAtStandardError is { } enough && new DrawnValues(watched, taken).StandardError <= enough) break;
                stopLook = (int)Math.Min(options.MostDraws, 2L * taken);
            }
            if (preview is not null && work.WantsPreview((double)taken / options.MostDraws)) work.TellPreview(preview(taken));
        }
        return taken;
    }

    private static void Take(int from, int until, DrawOptions options, Action<int, int> fill, WorkProgress work, CancellationToken cancel)
    {
        var threads = options.Threads ?? Environment.ProcessorCount;
        var size = Math.Clamp((until - from + threads - 1) / threads, SmallestChunk, Chunk);
        var chunks = (until - from + size - 1) / size;
        var done = from;
        void Do(int chunk)
        {
            cancel.ThrowIfCancellationRequested();
            var first = from + (chunk * size);
            var count = Math.Min(size, until - first);
            fill(first, count);
            var now = Interlocked.Add(ref done, count);
            work.Report((double)now / options.MostDraws);
        }
        if (threads == 1)
        {
            for (var chunk = 0; chunk < chunks; chunk++) Do(chunk);
        }
        else
        {
            try
            {
                Parallel.For(0, chunks, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancel }, Do);
            }
            catch (AggregateException error)
            {
                // What a draw throws is the caller's own message, the same as on one thread.
                ExceptionDispatchInfo.Throw(error.InnerExceptions[0]);
            }
        }
    }
}
