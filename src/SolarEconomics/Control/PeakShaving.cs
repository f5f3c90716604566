namespace SolarEconomics;

/// <summary>Peak shaving for a demand charge: import stays below a power as long as the battery lasts, and the battery is refilled below it.</summary>
/// <param name="MostImportKw">The power to stay below. Unit: kW, mean over an interval.</param>
public sealed record PeakShaving(double MostImportKw) : Control
{
    /// <inheritdoc/>
    public override string Name => "peak shaving";

    /// <summary>The power to stay below. Unit: kW, mean over an interval.</summary>
    public double MostImportKw { get; init => field = Require.PowerKw(value); } = Require.PowerKw(MostImportKw, 0, nameof(MostImportKw));

    /// <summary>Charge level that is kept ready for peaks, refilled from the grid below the power; what lies above serves self-consumption. Range: 0 to 1. Default: 1.</summary>
    public double KeptShare { get; init => field = Require.Fraction(value, nameof(KeptShare)); } = 1;

    /// <inheritdoc/>
    public override Order Decide(Situation now)
    {
        ArgumentNullException.ThrowIfNull(now);
        var allowedKwh = MostImportKw * now.Hours;
        var aboveKwh = now.ShortfallAtBoardKwh - allowedKwh;
        if (aboveKwh > 0)
        {
            var needed = aboveKwh / now.ShortfallAtBoardKwh * now.ShortfallKwh;
            return Order.Discharge(Math.Min(now.MostDischargeKwh, Math.Max(needed, Math.Min(now.ShortfallKwh, now.DischargeDownToKwh(KeptShare)))));
        }
        if (now.SurplusKwh > 0) return now.Store();
        if (now.StoredShare > KeptShare) return Order.Discharge(Math.Min(now.ShortfallKwh, now.DischargeDownToKwh(KeptShare)));
        var underKwh = -aboveKwh * now.BoardToBatteryEfficiency;
        return Order.Charge(Math.Min(Math.Min(now.MostChargeFromGridKwh, underKwh), now.ChargeToReachKwh(KeptShare)));
    }
}
