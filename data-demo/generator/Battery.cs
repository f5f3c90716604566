namespace AlderWeir;

/// <summary>The battery with its own inverter on the AC side. Energies are whole grains, so the balance closes exactly.</summary>
/// <remarks>Its rule is plain: take what is left over, give what is short, never charge from the grid.</remarks>
internal sealed class Battery
{
    internal const double UsableKwh = 9.6;
    private const long CapacityGrains = 115_200_000; // 9.6 kWh
    private const long PerStepGrains = 5_000_000; // 5 kW
    private const long InPerMille = 955;
    private const long OutPerMille = 955;

    internal bool Present { get; set; }

    /// <summary>Energy inside, above the lowest level allowed. Unit: grains.</summary>
    internal long StockGrains { get; private set; }

    internal bool Full => Present && StockGrains == CapacityGrains;

    /// <summary>Takes as much of a surplus as it can; returns what it drew at its AC side.</summary>
    internal long Charge(long surplusGrains)
    {
        if (!Present) return 0;
        var roomGrains = CapacityGrains - StockGrains;
        var drawnToFillGrains = ((roomGrains * 1000) + InPerMille - 1) / InPerMille;
        var drawnGrains = Math.Min(Math.Min(surplusGrains, PerStepGrains), drawnToFillGrains);
        StockGrains += Math.Min(roomGrains, drawnGrains * InPerMille / 1000);
        return drawnGrains;
    }

    /// <summary>Gives as much of a shortage as it can; returns what it gave at its AC side.</summary>
    internal long Discharge(long shortGrains)
    {
        if (!Present) return 0;
        var givenGrains = Math.Min(Math.Min(shortGrains, PerStepGrains), StockGrains * OutPerMille / 1000);
        StockGrains -= Math.Min(StockGrains, ((givenGrains * 1000) + OutPerMille - 1) / OutPerMille);
        return givenGrains;
    }
}
