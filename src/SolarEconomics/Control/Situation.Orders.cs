namespace SolarEconomics;

/// <content>Orders and amounts that are always possible, so that a control is a line.</content>
public sealed partial class Situation
{
    /// <summary>Efficiency from the board to the battery's terminals.</summary>
    public double BoardToBatteryEfficiency => _converter.ToDc;

    /// <summary>Efficiency from the battery's terminals to the board.</summary>
    public double BatteryToBoardEfficiency => _converter.ToAc;

    /// <summary>Round trip from the board through the cells and back.</summary>
    /// <remarks>Equation: to DC × charging × discharging × to AC.</remarks>
    public double RoundTripAtBoard => _converter.ToDc * _battery.RoundTripEfficiency * _converter.ToAc;

    /// <summary>Store the surplus, as far as the battery takes it.</summary>
    public Order Store() => Order.Charge(Math.Min(SurplusKwh, MostChargeKwh));

    /// <summary>Cover the shortfall, as far as the battery gives it.</summary>
    public Order Cover() => Order.Discharge(Math.Min(ShortfallKwh, MostDischargeKwh));

    /// <summary>Store a surplus or cover a shortfall, whichever there is.</summary>
    public Order StoreOrCover() => SurplusKwh > 0 ? Store() : Cover();

    /// <summary>What has to go in at the terminals to reach a charge level, as far as the battery takes it; 0 where it is that full already.</summary>
    /// <param name="share">Charge level. Range: 0 to 1.</param>
    public double ChargeToReachKwh(double share) =>
        Math.Min(MostChargeKwh, Math.Max(0, (share * UsableKwh) - StoredKwh) / _battery.ChargeEfficiency);

    /// <summary>What can come out at the terminals before a charge level is reached, as far as the battery gives it; 0 where it is lower already.</summary>
    /// <param name="share">Charge level. Range: 0 to 1.</param>
    public double DischargeDownToKwh(double share) =>
        Math.Min(MostDischargeKwh, Math.Max(0, StoredKwh - (share * UsableKwh)) * _battery.DischargeEfficiency);
}
