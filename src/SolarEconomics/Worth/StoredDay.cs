namespace SolarEconomics;

/// <summary>What a battery did on one day from six in the morning to six, and what of it hangs on its capacity; or sums of such days.</summary>
/// <param name="DischargeKwh">Delivered. Unit: kWh.</param>
/// <param name="Avoided">Purchases avoided by it less what its charge from the grid cost. Unit: currency.</param>
/// <param name="FeedIn">What the charge would have been paid for as export, less what was paid for exported discharge. Unit: currency.</param>
/// <param name="ExportedKwh">The kWh of <paramref name="FeedIn"/>.</param>
internal readonly record struct StoredDay(double DischargeKwh, double Avoided, double FeedIn, double ExportedKwh)
{
    public static StoredDay operator +(StoredDay a, StoredDay b) =>
        new(a.DischargeKwh + b.DischargeKwh, a.Avoided + b.Avoided, a.FeedIn + b.FeedIn, a.ExportedKwh + b.ExportedKwh);

    public static StoredDay operator *(StoredDay a, double factor) => new(a.DischargeKwh * factor, a.Avoided * factor, a.FeedIn * factor, a.ExportedKwh * factor);

    /// <summary>One interval: charge comes from the plant first, export from the plant first.</summary>
    internal static StoredDay Of(EnergySet flows, EvidencePrices prices, int i)
    {
        var (charge, discharge) = (flows.ChargeKwh[i], flows.DischargeKwh[i]);
        var fromPlant = Math.Min(charge, flows.GenerationKwh[i]);
        var exported = Math.Min(discharge, Math.Max(0, flows.ExportKwh[i] - (flows.GenerationKwh[i] - fromPlant)));
        return new StoredDay(discharge, prices.Import[i] * (discharge - exported - (charge - fromPlant)), prices.Export[i] * (fromPlant - exported), fromPlant - exported);
    }
}
