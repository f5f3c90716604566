namespace SolarEconomics;

/// <summary>Feed-in first: exports all it may, stores only what would be curtailed, and gives that back as soon as use or the export limit takes it.</summary>
/// <remarks>Right where a feed-in rate is above the price of import.</remarks>
public sealed record FeedInFirst : Control
{
    /// <inheritdoc/>
    public override string Name => "feed-in first";

    /// <inheritdoc/>
    public override Order Decide(Situation now)
    {
        ArgumentNullException.ThrowIfNull(now);
        return now.OtherwiseCurtailedKwh > 0
            ? Order.Charge(Math.Min(now.OtherwiseCurtailedKwh, now.MostChargeKwh))
            : Order.Discharge(now.MostDischargeToGridKwh);
    }
}
