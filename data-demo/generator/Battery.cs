namespace AlderWeir;

/// <summary>The battery with its own inverter on the AC side. Energies are whole milliwatt-hours, so the balance closes exactly.</summary>
/// <remarks>Its rule is plain: take what is left over, give what is short, never charge from the grid.</remarks>
internal sealed class Battery
{
    internal const double UsableKwh = 9.6;
    private const long CapacityMwh = 9_600_000;
    private const long PerStepMwh = 416_667; // 5 kW for five minutes
    private const long InPerMille = 955;
    private const long OutPerMille = 955;

    internal bool Present { get; set; }

    /// <summary>Energy inside, above the lowest level allowed. Unit: mWh.</summary>
    internal long StockMwh { get; private set; }

    internal bool Full => Present && StockMwh == CapacityMwh;

    /// <summary>Takes as much of a surplus as it can; returns what it drew at its AC side.</summary>
    internal long Charge(long surplusMwh)
    {
        if (!Present) return 0;
        var roomMwh = CapacityMwh - StockMwh;
        var drawnToFillMwh = ((roomMwh * 1000) + InPerMille - 1) / InPerMille;
        var drawnMwh = Math.Min(Math.Min(surplusMwh, PerStepMwh), drawnToFillMwh);
        StockMwh += Math.Min(roomMwh, drawnMwh * InPerMille / 1000);
        return drawnMwh;
    }

    /// <summary>Gives as much of a shortage as it can; returns what it gave at its AC side.</summary>
    internal long Discharge(long shortMwh)
    {
        if (!Present) return 0;
        var givenMwh = Math.Min(Math.Min(shortMwh, PerStepMwh), StockMwh * OutPerMille / 1000);
        StockMwh -= Math.Min(StockMwh, ((givenMwh * 1000) + OutPerMille - 1) / OutPerMille);
        return givenMwh;
    }
}
