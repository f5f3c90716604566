namespace SolarEconomics.Notebook;

/// <summary>Measures a session's process once a second and ends it at its limit.</summary>
internal sealed class MemoryMeter : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly long limitBytes;
    private readonly Func<ChildProcess?> child;
    private readonly EventRelay relay;
    private readonly Timer timer;
    private long last;

    internal MemoryMeter(long limitBytes, Func<ChildProcess?> child, EventRelay relay)
    {
        (this.limitBytes, this.child, this.relay) = (limitBytes, child, relay);
        timer = new Timer(_ => Measure(), null, Pause, Pause);
    }

    public void Dispose() => timer.Dispose();

    private void Measure()
    {
        if (child() is not { } measured) return;
        var used = measured.MeasureMemory();
        if (limitBytes > 0 && used > limitBytes) measured.End(EndReason.OutOfMemory);
        // A change that nobody would see is not worth a message to every page.
        if (Math.Abs(used - last) < 4 << 20) return;
        last = used;
        relay.Raise(new MemoryMeasured(used, limitBytes));
    }
}
