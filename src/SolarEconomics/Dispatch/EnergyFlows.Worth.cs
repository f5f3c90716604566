namespace SolarEconomics;

/// <content>What the flows were worth.</content>
public sealed partial class EnergyFlows
{
    /// <summary>What each kWh displaced, at the prices of the conditions: import at that hour's price, feed-in, the generator's fuel, nothing.</summary>
    /// <param name="currency">Currency of the prices.</param>
    /// <param name="wearPerKwh">Wear of the battery per kWh at its terminals, in units of the currency: see <see cref="BatteryWear"/>. Default: 0.</param>
    /// <exception cref="InvalidOperationException">The conditions hold no prices and the plant has no generator.</exception>
    /// <remarks>Forgone export is valued only up to the export limit of its interval: a kWh that would have been curtailed costs nothing to store.
    /// Source: storage-2.</remarks>
    public FlowWorth Worth(Currency currency, double wearPerKwh = 0)
    {
        Require.AtLeastZero(wearPerKwh, "currency per kWh", nameof(wearPerKwh));
        if (Conditions.ImportPricePerKwh.IsEmpty && System.Generator is null) throw Throw.NoPrices();
        return FlowWorth.Of(this, currency, wearPerKwh);
    }
}
