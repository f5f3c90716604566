namespace SolarEconomics;

/// <summary>Keeps a reserve for outages under another control, in the months that need it, and gives it when the grid is out.</summary>
/// <param name="Inner">The control that decides about the rest.</param>
/// <param name="Share">Charge level that is kept. Range: 0 to 1.</param>
/// <remarks>How long it lasts is the kept energy over the use in the outage: look at <see cref="FlowTotals.UnservedKwh"/> of a run with outages.</remarks>
public sealed record BackupReserve(Control Inner, double Share) : Control
{
    /// <inheritdoc/>
    public override string Name => Inner.Name + " with a reserve";

    /// <summary>The control that decides about the rest.</summary>
    public Control Inner { get; init => field = value ?? throw new ArgumentNullException(nameof(Inner)); } = Inner ?? throw new ArgumentNullException(nameof(Inner));

    /// <summary>Charge level that is kept.</summary>
    public double Share { get; init => field = Require.Fraction(value, nameof(Share)); } = Require.Fraction(Share, nameof(Share));

    /// <summary>Months in which it is kept, 1 to 12. Default: empty, all of them.</summary>
    public IReadOnlyList<int> Months
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            foreach (var month in value) Require.Within(month, 1, 12, "number of a month; 1 is January", nameof(Months));
            field = value;
        }
    } = [];

    /// <summary>Whether a missing reserve is bought from the grid at once. Default: false, the sun fills it.</summary>
    public bool RefillsFromGrid { get; init; }

    /// <inheritdoc/>
    public override Order Decide(Situation now)
    {
        ArgumentNullException.ThrowIfNull(now);
        var order = Inner.Decide(now);
        if (now.GridIsOut || (Months.Count > 0 && !Months.Contains(now.Month))) return order;
        if (RefillsFromGrid && now.StoredShare < Share)
            return order with { DischargeKwh = 0, ChargeKwh = Math.Max(order.ChargeKwh, Math.Min(now.MostChargeFromGridKwh, now.ChargeToReachKwh(Share))) };
        return order with { DischargeKwh = Math.Min(order.DischargeKwh, now.DischargeDownToKwh(Share)) };
    }
}
