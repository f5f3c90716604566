using System.Text.Json;

namespace SolarEconomics;

/// <content>What an energy plan asks for demand.</content>
internal sealed partial class EnergyPlanFile
{
    private void ReadDemand(JsonElement period, string at, string? season)
    {
        foreach (var (charge, place) in List(period, "demandCharges", at))
        {
            DemandUnit? unit = (Text(charge, "measureUnit") ?? "KW") switch { "KW" => DemandUnit.Kilowatt, "KVA" => DemandUnit.KilovoltAmpere, _ => null };
            if (unit is null || Number(charge, "amount", place) is not { } amount || Window(charge, place, season) is not { } window) continue;
            var per = Text(charge, "chargePeriod") switch { "DAY" => ChargePeriod.Day, "MONTH" => ChargePeriod.Month, _ => ChargePeriod.Bill };
            var measured = Text(charge, "measurementPeriod");
            _tariff = _tariff.With(new DemandCharge(Text(charge, "displayName") ?? "demand", amount, window, per)
            {
                Unit = unit.Value,
                EachDay = measured == "DAY" && per == ChargePeriod.Day,
                EachMonth = measured == "MONTH",
                MinimumKw = charge.TryGetProperty("minDemand", out _) ? Number(charge, "minDemand", place) ?? 0 : 0,
            });
            if (charge.TryGetProperty("maxDemand", out _)) _unpriced.Add(place + "/maxDemand");
        }
    }
}
