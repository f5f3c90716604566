namespace SolarEconomics;

/// <content>Sums by month and year.</content>
public sealed partial class EnergyFlows
{
    private readonly Lock _lock = new();
    private double[]? _arrayShares;
    private FlowTotals? _totals;

    /// <summary>All intervals together.</summary>
    public FlowTotals Totals => _totals ??= Between(0, Time.Count);

    /// <summary>Some intervals together.</summary>
    /// <param name="from">The first interval.</param>
    /// <param name="to">The interval after the last.</param>
    public FlowTotals Between(int from, int to)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(from);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(to, Time.Count);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(to, from);
        lock (_lock) _arrayShares ??= StorageTrace.ArrayShares(this);
        return FlowTotals.Of(this, _arrayShares, from, to);
    }

    /// <summary>Each calendar month of the place.</summary>
    public IReadOnlyList<FlowTotals> ByMonth() => By(month => month);

    /// <summary>Each calendar year of the place.</summary>
    public IReadOnlyList<FlowTotals> ByYear() => By(month => month / 12);

    /// <summary>What was not served, laid on the parts of the load by name, one value per interval. Unit: kWh.</summary>
    /// <remarks>What switched itself off at low charge comes first, then the highest <see cref="LoadPart.SheddingOrder"/>; what waiting loads missed is no part's.</remarks>
    public IReadOnlyDictionary<string, double[]> UnservedByPart() => LoadShedding.ByPart(this);

    /// <summary>What each device lost: arrays' inverters and controllers, converter, battery.</summary>
    public LossesByDevice Losses() => LossesByDevice.Of(this);

    private List<FlowTotals> By(Func<int, int> key)
    {
        var months = Time.Clock.MonthNumber;
        var parts = new List<FlowTotals>();
        for (int from = 0, to; from < months.Length; from = to)
        {
            to = from;
            while (to < months.Length && key(months[to]) == key(months[from])) to++;
            parts.Add(Between(from, to));
        }
        return parts;
    }
}
