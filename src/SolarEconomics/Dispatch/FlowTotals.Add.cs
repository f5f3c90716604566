namespace SolarEconomics;

/// <content>Adding up intervals.</content>
public sealed partial class FlowTotals
{
    private const double Edge = 1e-3;

    /// <summary>Adds the intervals from one to another, the last excluded.</summary>
    internal static FlowTotals Of(EnergyFlows flows, double[] arrayShares, int from, int to)
    {
        var kwh = new double[Enum.GetValues<FlowPath>().Length];
        for (var k = 0; k < kwh.Length; k++) kwh[k] = BandSums.Total(flows[(FlowPath)k][from..to]);
        var (potential, hours, unservedHours, byBattery) = (0.0, 0.0, 0.0, 0.0);
        var (full, empty, drawn, given) = (0.0, 0.0, 0.0, 0.0);
        var (usable, reserve) = (flows.System.Battery?.UsableKwh ?? 0, flows.System.Battery?.ReserveKwh ?? 0);
        for (var i = from; i < to; i++)
        {
            var length = flows.Time.Hours[i];
            hours += length;
            potential += flows.PotentialKwh(i);
            byBattery += flows[FlowPath.BatteryToUse][i] * arrayShares[i];
            if (flows[FlowPath.Unserved][i] > 1e-9) unservedHours += length;
            if (usable == 0) continue;
            var stored = flows.StoredKwh[i + 1];
            if (stored >= usable * (1 - Edge)) full += length;
            else if (stored <= reserve + (usable * Edge)) empty += length;
            var taken = flows.RestedKwh(i) - stored;
            if (taken <= 0) continue;
            drawn += taken;
            given += taken - flows[FlowPath.DischargeLost][i];
        }
        var run = GeneratorRun.Of(flows, from, to);
        return new FlowTotals(flows.Time.LocalStartOf(from), hours, kwh)
        {
            PotentialKwh = potential,
            WantedKwh = BandSums.Total(flows.WantedKwh[from..to]),
            UnservedHours = unservedHours,
            StoredChangeKwh = flows.StoredKwh[to] - flows.StoredKwh[from],
            ArrayByBatteryToUseKwh = byBattery,
            Cycles = usable > 0 ? drawn / usable : 0,
            ThroughputKwh = given,
            HoursFull = full,
            HoursEmpty = empty,
            GeneratorHours = run.Hours,
            GeneratorStarts = run.Starts,
            FuelLitres = run.Litres,
            GeneratorCost = run.Cost,
        };
    }
}
