namespace SolarEconomics;

/// <summary>A sum that keeps the digits which plain addition drops, so that totals print as the record's own decimals add up.</summary>
/// <remarks>Source: readings-sum (Neumaier's variant of compensated summation).</remarks>
internal struct CompensatedSum
{
    private double _sum;
    private double _lost;

    internal void Add(double value)
    {
        var next = _sum + value;
        _lost += Math.Abs(_sum) >= Math.Abs(value) ? _sum - next + value : value - next + _sum;
        _sum = next;
    }

    internal readonly double Total => _sum + _lost;
}
