namespace SolarEconomics;

/// <summary>Some cases side by side, one slot each: what a year needs of them, and what it leaves. Every array has one value per slot.</summary>
internal sealed class SweepBlock(int slots)
{
    internal double[] SunScale { get; } = new double[slots];

    internal double[] UseScale { get; } = new double[slots];

    /// <summary>Standby of an interval.</summary>
    internal double[] StandbyKwh { get; } = new double[slots];

    /// <summary>The most that enters the cells in an interval.</summary>
    internal double[] MostMovedKwh { get; } = new double[slots];

    /// <summary>The most that leaves the cells in an interval, as a negative number.</summary>
    internal double[] LeastMovedKwh { get; } = new double[slots];

    internal double[] UsableKwh { get; } = new double[slots];

    internal double[] Into { get; } = Ones(slots);

    internal double[] OutOf { get; } = Ones(slots);

    internal double[] PerInto { get; } = Ones(slots);

    internal double[] PerOut { get; } = Ones(slots);

    /// <summary>Carried from interval to interval and from year to year.</summary>
    internal double[] StoredKwh { get; } = new double[slots];

    /// <summary>Sum of the year: feed-in less import, at the prices of the first year.</summary>
    internal double[] Earned { get; } = new double[slots];

    internal double[] ImportKwh { get; } = new double[slots];

    /// <summary>Sum of the year: taken out of the cells.</summary>
    internal double[] DrawnKwh { get; } = new double[slots];

    /// <summary>Whether all slots stand behind one and the same net flow.</summary>
    internal bool SharesNetFlow => IsOne(SunScale) && IsOne(UseScale) && IsOne(StandbyKwh);

    /// <summary>Keeps what a vector of slots left after a year.</summary>
    internal void Write<T>(int at, T stored, T earned, T import, T drawn)
        where T : struct, ILanes<T>
    {
        stored.CopyTo(StoredKwh.AsSpan(at));
        earned.CopyTo(Earned.AsSpan(at));
        import.CopyTo(ImportKwh.AsSpan(at));
        drawn.CopyTo(DrawnKwh.AsSpan(at));
    }

    private static bool IsOne(double[] values) => !values.AsSpan().ContainsAnyExcept(values[0]);

    private static double[] Ones(int slots)
    {
        var ones = new double[slots];
        Array.Fill(ones, 1);
        return ones;
    }
}
