namespace SolarEconomics;

/// <summary>Which share of each interval's discharge was charged by the arrays: what is inside is mixed, so discharge takes every source in proportion.</summary>
internal static class StorageTrace
{
    /// <summary>Share of arrays inside the cells as each interval's discharge begins. What was inside at the start counts as the arrays' where the arrays charge at all.</summary>
    internal static double[] ArrayShares(EnergyFlows flows)
    {
        var toDc = flows.System.Converter.ToDc;
        var stored = flows.StoredKwh;
        var shares = new double[flows.Time.Count];
        var (fromArrays, fromOthers) = (stored[0], 0.0);
        for (var i = 0; i < shares.Length; i++)
        {
            var inside = fromArrays + fromOthers;
            shares[i] = inside > 0 ? fromArrays / inside : 1;
            var rested = flows.RestedKwh(i);
            var gained = stored[i + 1] - rested;
            if (gained > 0)
            {
                var others = (flows[FlowPath.GridToBattery][i] + flows[FlowPath.GeneratorToBattery][i]) * toDc;
                var othersShare = Math.Clamp(others / flows.ChargedKwh(i), 0, 1);
                (fromArrays, fromOthers) = ((rested * shares[i]) + (gained * (1 - othersShare)), (rested * (1 - shares[i])) + (gained * othersShare));
            }
            else (fromArrays, fromOthers) = (stored[i + 1] * shares[i], stored[i + 1] * (1 - shares[i]));
        }
        return shares;
    }
}
