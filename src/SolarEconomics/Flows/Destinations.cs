namespace SolarEconomics;

/// <summary>Where each kWh of generation went, interval by interval. Unit: kWh.</summary>
/// <remarks>Rule: generation serves the load first, then charges the battery, then is exported; the battery's discharge serves the load, and is
/// PV-sourced in proportion to what charged it so far. Storage losses are laid on the charge at the whole record's ratio, so that a month in which
/// the battery empties shows no gain. An attribution of the bills' difference, not a measurement.</remarks>
internal sealed class Destinations
{
    private Destinations(int count)
    {
        UsedDirectlyKwh = new double[count];
        UsedFromStorageKwh = new double[count];
        ExportedKwh = new double[count];
        LostKwh = new double[count];
    }

    internal double[] UsedDirectlyKwh { get; }

    internal double[] UsedFromStorageKwh { get; }

    internal double[] ExportedKwh { get; }

    /// <summary>Conversion and storage losses, and the standby that generation covered.</summary>
    internal double[] LostKwh { get; }

    internal static Destinations Of(EnergySet flows)
    {
        var result = new Destinations(flows.Grid.Count);
        var chargedKwh = new double[flows.Grid.Count];
        var storedKwh = 0.0;
        var storedFromPvKwh = 0.0;
        for (var i = 0; i < flows.Grid.Count; i++)
        {
            var generation = flows.GenerationKwh[i];
            var exported = Math.Min(flows.ExportKwh[i], generation);
            var charged = Math.Min(flows.ChargeKwh[i], generation - exported);
            storedKwh += flows.ChargeKwh[i];
            storedFromPvKwh += charged;
            var share = storedKwh > 0 ? storedFromPvKwh / storedKwh : 0;
            var standby = Math.Min(flows.StandbyKwh[i], generation - exported - charged);
            var delivered = Math.Max(0, flows.DischargeKwh[i] - (flows.ExportKwh[i] - exported)) * share;
            result.ExportedKwh[i] = exported;
            result.UsedDirectlyKwh[i] = generation - exported - charged - standby;
            result.UsedFromStorageKwh[i] = delivered;
            result.LostKwh[i] = standby;
            chargedKwh[i] = charged;
        }
        var allCharged = chargedKwh.Sum();
        var lossShare = allCharged > 0 ? 1 - (result.UsedFromStorageKwh.Sum() / allCharged) : 0;
        for (var i = 0; i < flows.Grid.Count; i++) result.LostKwh[i] += chargedKwh[i] * lossShare;
        return result;
    }
}
