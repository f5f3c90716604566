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

    /// <summary>What each array could have fed in, what was clipped and curtailed of it, and what it fed in; in the order of their devices.</summary>
    /// <remarks>What a shared inverter clips and gives in an interval falls on its arrays in proportion to what each brings in front of it; curtailment of the board on all arrays in
    /// proportion to what each brings to it. Clipped and curtailed add up to <see cref="FlowPath.ArrayCurtailed"/>.</remarks>
    public IReadOnlyList<ArrayYield> ByArray()
    {
        var taken = TakenShares.Of(this);
        return [.. FeedInDevice.Of(Conditions.Arrays).SelectMany(device => device.Arrays.Select(array => YieldOf(array, device, taken.Of(device.Coupling))))];
    }

    private ArrayYield YieldOf(ArraySupply array, FeedInDevice device, double[] taken)
    {
        var (potentialKwh, clippedKwh, fedInKwh) = (0.0, 0.0, 0.0);
        for (var i = 0; i < taken.Length; i++)
        {
            var inFrontKwh = device.InFrontKwh[i];
            if (inFrontKwh == 0) continue;
            var part = array.PotentialKwh.Span[i] / inFrontKwh;
            var (withoutLimit, given) = device.BehindKwh(i, Time.Hours[i]);
            potentialKwh += withoutLimit * part;
            clippedKwh += (withoutLimit - given) * part;
            fedInKwh += given * part * taken[i];
        }
        return new ArrayYield(array.Name, potentialKwh, clippedKwh, potentialKwh - clippedKwh - fedInKwh, fedInKwh);
    }

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
