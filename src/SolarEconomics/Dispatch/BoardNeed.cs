namespace SolarEconomics;

/// <summary>What the board still needs in an interval; every source in turn takes its share off. Unit: kWh.</summary>
internal struct BoardNeed(double standbyKwh, double useKwh, double chargeKwh)
{
    internal double StandbyKwh { get; private set; } = standbyKwh;

    internal double UseKwh { get; private set; } = useKwh;

    internal double ChargeKwh { get; private set; } = chargeKwh;

    /// <summary>Serves the plant's standby, then the use, then the charging.</summary>
    internal BoardShare Serve(double kwh, bool mayCharge)
    {
        var toStandby = Math.Min(kwh, StandbyKwh);
        var toUse = Math.Min(kwh - toStandby, UseKwh);
        var toCharge = mayCharge ? Math.Min(kwh - toStandby - toUse, ChargeKwh) : 0;
        StandbyKwh -= toStandby;
        UseKwh -= toUse;
        ChargeKwh -= toCharge;
        return new BoardShare(toStandby, toUse, toCharge, kwh - toStandby - toUse - toCharge);
    }
}
