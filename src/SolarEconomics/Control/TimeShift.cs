namespace SolarEconomics;

/// <summary>Time-of-use shifting: charges from the grid in cheap hours what dearer hours of the next day are worth, else self-consumption first.</summary>
/// <remarks>An hour is cheap when a kWh bought in it is worth more than it costs: highest price of the next 24 hours × round trip at the board − price now
/// > <see cref="ThresholdPerKwh"/>. It reads the prices ahead, never the sun or the use ahead. Source: storage-2.</remarks>
public sealed record TimeShift : Control
{
    /// <inheritdoc/>
    public override string Name => "time-of-use shifting";

    /// <summary>The least gain for which it buys: wear and the wish for a margin. Unit: currency per kWh bought. Default: 0.</summary>
    public double ThresholdPerKwh { get; init => field = Require.Finite(value, nameof(ThresholdPerKwh)); }

    /// <summary>Up to which charge level it buys, so that the sun finds room. Range: 0 to 1. Default: 1.</summary>
    public double BuyUpToShare { get; init => field = Require.Fraction(value, nameof(BuyUpToShare)); } = 1;

    /// <summary>No discharge while the price of import is below, so that the charge lasts for the peak. Unit: currency per kWh. Default: none.</summary>
    public double? HoldBelowPrice { get; init => field = value is { } price ? Require.Finite(price, nameof(HoldBelowPrice)) : null; }

    /// <inheritdoc/>
    public override Order Decide(Situation now)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (!now.HasPrices) throw Throw.NoPricesToShift();
        var price = now.ImportPricePerKwh;
        var gain = (now.HighestImportPriceNextDay * now.RoundTripAtBoard) - price;
        if (gain > ThresholdPerKwh && !now.GridIsOut)
        {
            var wish = Math.Min(now.MostChargeFromGridKwh, now.ChargeToReachKwh(BuyUpToShare));
            return Order.Charge(Math.Max(now.Store().ChargeKwh, wish));
        }
        return now.ShortfallKwh > 0 && price < HoldBelowPrice && !now.GridIsOut ? Order.Rest : now.StoreOrCover();
    }
}
