namespace SolarEconomics.Workbench.Tests;

/// <summary>A clock that stands still until it is moved; timers ring when it passes them. It can also be set back, as clocks are.</summary>
internal sealed class ManualTime : TimeProvider
{
    private readonly Lock gate = new();
    private readonly List<Bell> bells = [];
    private DateTimeOffset now = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private TimeSpan gone;

    public override DateTimeOffset GetUtcNow() => now;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => gone.Ticks;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    /// <summary>Sets the wall clock to another time; nothing has gone by.</summary>
    public void Set(DateTimeOffset to) => now = to;

    public void GoOn(TimeSpan by)
    {
        List<Bell> due;
        lock (gate)
        {
            gone += by;
            now += by;
            due = [.. bells.Where(bell => bell.At <= gone)];
            bells.RemoveAll(due.Contains);
        }
        due.ForEach(bell => bell.Ring());
    }

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        var bell = new Bell(this, () => callback(state));
        bell.Change(dueTime, period);
        return bell;
    }

    private sealed class Bell(ManualTime time, Action ring) : ITimer
    {
        public TimeSpan At { get; private set; }

        public void Ring() => ring();

        public bool Change(TimeSpan dueTime, TimeSpan period)
        {
            lock (time.gate)
            {
                time.bells.Remove(this);
                if (dueTime == Timeout.InfiniteTimeSpan) return true;
                At = time.gone + dueTime;
                time.bells.Add(this);
            }
            return true;
        }

        public void Dispose()
        {
            lock (time.gate) time.bells.Remove(this);
        }

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
