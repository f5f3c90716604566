namespace SolarEconomics;

/// <content>Pricing the flows hour by hour.</content>
public sealed partial class FlowWorth
{
    private static readonly (FlowPath Path, StoodInFor StoodInFor, int Sign)[] s_priced =
    [
        (FlowPath.ArrayToUse, StoodInFor.Import, 1), (FlowPath.BatteryToUse, StoodInFor.Import, 1),
        (FlowPath.ArrayToExport, StoodInFor.FeedIn, 1), (FlowPath.BatteryToExport, StoodInFor.FeedIn, 1), (FlowPath.ArrayCurtailed, StoodInFor.Nothing, 0),
        (FlowPath.GridToUse, StoodInFor.Import, -1), (FlowPath.GridToStandby, StoodInFor.Import, -1), (FlowPath.GridToBattery, StoodInFor.Import, -1),
        (FlowPath.GeneratorToUse, StoodInFor.Fuel, -1), (FlowPath.GeneratorToStandby, StoodInFor.Fuel, -1), (FlowPath.GeneratorToBattery, StoodInFor.Fuel, -1),
    ];

    internal static FlowWorth Of(EnergyFlows flows, Currency currency, double wearPerKwh)
    {
        var totals = flows.Totals;
        var fuelPerKwh = totals.GeneratorKwh > 0 ? totals.GeneratorCost / totals.GeneratorKwh : FuelAtHalfLoad(flows.System.Generator);
        Money Amount(double units) => Money.Nominal((decimal)units, currency);
        var rows = new List<DestinationWorth>();
        foreach (var (path, stoodInFor, sign) in s_priced)
        {
            if (totals[path] == 0) continue;
            var means = flows.System.Grid.IsOffGrid && stoodInFor is StoodInFor.Import ? StoodInFor.Fuel : stoodInFor;
            rows.Add(new DestinationWorth(path, totals[path], means, Amount(sign * Priced(flows, path, means, fuelPerKwh))));
        }
        decimal Of(FlowPath path) => rows.Where(r => r.Path == path).Sum(r => r.Worth.Amount);
        var charging = (decimal)ForgoneExport(flows) - Of(FlowPath.GridToBattery) - Of(FlowPath.GeneratorToBattery);
        return new FlowWorth
        {
            Destinations = rows,
            FromStorage = Money.Nominal(Of(FlowPath.BatteryToUse) + Of(FlowPath.BatteryToExport), currency),
            Charging = Money.Nominal(charging, currency),
            Standby = Amount(StandbyOfStorage(flows, fuelPerKwh)),
            Wear = Amount(totals.ThroughputKwh * wearPerKwh),
            FromStorageKwh = totals[FlowPath.BatteryToUse] + totals[FlowPath.BatteryToExport],
        };
    }

    private static double Priced(EnergyFlows flows, FlowPath path, StoodInFor stoodInFor, double fuelPerKwh)
    {
        var prices = stoodInFor is StoodInFor.FeedIn ? flows.Conditions.ExportPricePerKwh.Span : flows.Conditions.ImportPricePerKwh.Span;
        if (stoodInFor is StoodInFor.Fuel) return flows.Totals[path] * fuelPerKwh;
        if (stoodInFor is StoodInFor.Nothing || prices.IsEmpty) return 0;
        var kwh = flows[path];
        var sum = 0.0;
        for (var i = 0; i < kwh.Length; i++) sum += kwh[i] * prices[i];
        return sum;
    }

    /// <summary>What charging from the arrays would have earned as export, as far as the limit of that interval had room.</summary>
    private static double ForgoneExport(EnergyFlows flows)
    {
        var prices = flows.Conditions.ExportPricePerKwh.Span;
        if (prices.IsEmpty || flows.System.Grid.IsOffGrid) return 0;
        var sum = 0.0;
        for (var i = 0; i < prices.Length; i++)
        {
            var kwh = flows.ChargedByArraysAtBoardKwh(i);
            if (kwh > 0) sum += Math.Min(kwh, flows.ExportRoomKwh(i)) * prices[i];
        }
        return sum;
    }

    /// <summary>What the standby of battery and converter cost: the import or fuel that fed it, and the use or export that it took from the arrays.
    /// What the battery fed is in its charging already.</summary>
    private static double StandbyOfStorage(EnergyFlows flows, double fuelPerKwh)
    {
        var system = flows.System;
        if (system.StandbyW == 0 || system.Battery is not { UsableKwh: > 0 } battery) return 0;
        var bought = system.Grid.IsOffGrid ? StoodInFor.Fuel : StoodInFor.Import;
        var cost = Priced(flows, FlowPath.GridToStandby, bought, fuelPerKwh) + Priced(flows, FlowPath.GeneratorToStandby, StoodInFor.Fuel, fuelPerKwh);
        var (buy, sell) = (flows.Conditions.ImportPricePerKwh, flows.Conditions.ExportPricePerKwh);
        for (var i = 0; i < flows.Time.Count; i++)
        {
            var fromArrays = flows[FlowPath.ArrayToStandby][i];
            if (fromArrays <= 0) continue;
            var keptFromUse = Math.Min(fromArrays, Math.Max(0, flows.WantedKwh[i] - flows[FlowPath.ArrayToUse][i]));
            cost += keptFromUse * (bought is StoodInFor.Fuel ? fuelPerKwh : buy.IsEmpty ? 0 : buy.Span[i]);
            if (!sell.IsEmpty && !system.Grid.IsOffGrid) cost += Math.Min(fromArrays - keptFromUse, flows.ExportRoomKwh(i)) * sell.Span[i];
        }
        return cost * (battery.StandbyW + system.Converter.StandbyW) / system.StandbyW;
    }

    private static double FuelAtHalfLoad(Generator? generator) => generator is null ? 0
        : generator.Fuel.LitresPerKwhAt(generator.RatedKw, generator.RatedKw / 2) * generator.FuelPricePerLitre;
}
