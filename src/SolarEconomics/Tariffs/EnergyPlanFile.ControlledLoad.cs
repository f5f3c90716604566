using System.Text.Json;

namespace SolarEconomics;

/// <content>What an energy plan asks for a controlled load.</content>
internal sealed partial class EnergyPlanFile
{
    /// <summary>Several entries are circuits of which a home has one: the first that can be priced counts, the others are listed.</summary>
    private void ReadControlledLoad(JsonElement contract, string at)
    {
        foreach (var (entry, place) in List(contract, "controlledLoad", at))
        {
            if (_tariff.PricesControlledLoad) return;
            // Rates that hold for some dates only would leave the other days without a price.
            if (Text(entry, "startDate") is not null || Text(entry, "endDate") is not null) continue;
            var rates = new List<EnergyRate>();
            if (entry.TryGetProperty("singleRate", out var single) && single.ValueKind == JsonValueKind.Object)
            {
                if (Rate(single, place + "/singleRate", "controlled load", []) is { } flat) rates.Add(flat);
                ReadControlledSupply(single, place + "/singleRate");
            }
            foreach (var (timed, timedPlace) in List(entry, "timeOfUseRates", place))
            {
                // A time that only words tell ("as the network switches") takes the hours that no other rate claims.
                var hasHours = List(timed, "timeOfUse", timedPlace).Any(t => Text(t.Item, "startTime") is not null);
                if (Rate(timed, timedPlace, "controlled load, " + Word(timed), hasHours ? Windows(timed, "timeOfUse", timedPlace, season: null) : []) is { } rate) rates.Add(rate);
                ReadControlledSupply(timed, timedPlace);
            }
            if (rates.Count == 1) rates[0] = rates[0] with { Windows = [] };
            if (rates.Count > 0) _tariff = _tariff.With(new EnergyPart("controlled load", EnergySide.ControlledLoad, Named(rates)));
        }
    }

    private void ReadControlledSupply(JsonElement owner, string at)
    {
        if (owner.TryGetProperty("dailySupplyCharge", out _) && Number(owner, "dailySupplyCharge", at) is { } amount && amount != 0)
            _tariff = _tariff.With(new SupplyCharge("controlled load supply", amount) { OnlyWithControlledLoad = true });
    }
}
