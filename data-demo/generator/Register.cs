namespace AlderWeir;

/// <summary>A meter's register that shows whole watt-hours: the record holds differences of what it shows, so totals stay right to a watt-hour.</summary>
internal sealed class Register(Func<int, double> kwhOf)
{
    private double _kwh;

    /// <summary>Counts one half hour on, and returns by how many watt-hours the display moved.</summary>
    internal long MoveWh(int half)
    {
        var before = ShownWh;
        _kwh += kwhOf(half);
        return ShownWh - before;
    }

    // A millionth of a watt-hour keeps sums such as 0.1 + 0.2 on the right side of a whole number.
    private long ShownWh => (long)Math.Floor((_kwh * 1000) + 1e-6);
}
