namespace SolarEconomics;

/// <summary>For an export limit: stores in the morning only what the limit would curtail, so that the battery is not full at noon.</summary>
public sealed record RoomForNoon : Control
{
    /// <inheritdoc/>
    public override string Name => "room kept for noon";

    /// <summary>Local hour of the day from which all surplus is stored. Range: 0 to 24. Default: 13.</summary>
    public double StoreAllFromHour { get; init => field = Require.Within(value, 0, 24, "hour of the day", nameof(StoreAllFromHour)); } = 13;

    /// <summary>Below this charge level all surplus is stored at any hour. Range: 0 to 1. Default: 0.3.</summary>
    public double StoreAllBelowShare { get; init => field = Require.Fraction(value, nameof(StoreAllBelowShare)); } = 0.3;

    /// <inheritdoc/>
    public override Order Decide(Situation now)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (now.SurplusKwh <= 0 || now.HourOfDay >= StoreAllFromHour || now.StoredShare < StoreAllBelowShare) return now.StoreOrCover();
        return Order.Charge(Math.Min(now.OtherwiseCurtailedKwh, now.MostChargeKwh));
    }
}
