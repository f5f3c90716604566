namespace SolarEconomics.Notebook;

/// <summary>Tells how far a step's long work is, with the time left at the pace so far: not for work that is over before it could be read, and not more often than eyes follow.</summary>
/// <param name="time">The clock.</param>
/// <param name="tell">Hears the share done and the seconds left.</param>
internal sealed class ProgressTeller(TimeProvider time, Action<double, double> tell) : IProgress<double>
{
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private readonly Lock gate = new();
    private long began;
    private long toldAt;
    private double furthest;
    private bool hasTold;

    public void Report(double value)
    {
        lock (gate)
        {
            // The piece before was shown and is over; what follows it may tell nothing of itself.
            if (value is <= 0 or >= 1) { if (hasTold) tell(1, 0); Begin(); return; }
            // Several threads tell in any order; work does not go back.
            furthest = Math.Max(furthest, value);
            var took = time.GetElapsedTime(began);
            if (took < Patience || (hasTold && time.GetElapsedTime(toldAt) < Pause)) return;
            (hasTold, toldAt) = (true, time.GetTimestamp());
            tell(furthest, took.TotalSeconds * (1 - furthest) / furthest);
        }
    }

    private void Begin() => (began, furthest, hasTold) = (time.GetTimestamp(), 0, false);
}
