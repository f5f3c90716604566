using System.Text.Json;

namespace SolarEconomics;

/// <content>What an energy plan pays for export.</content>
internal sealed partial class EnergyPlanFile
{
    private void ReadFeedIn(JsonElement contract, string at)
    {
        // Several feed-in entries are alternatives or government schemes: the first that can be priced counts, the others are listed.
        // A retailer's own rate is open to all; a government's scheme is for those who have it.
        foreach (var (entry, place) in List(contract, "solarFeedInTariff", at)
            .OrderBy(e => Text(e.Item, "payerType") == "GOVERNMENT").ThenBy(e => Text(e.Item, "endDate") is not null))
        {
            if (_tariff.EnergyParts(EnergySide.Export).Any()) return;
            var rates = new List<EnergyRate>();
            if (entry.TryGetProperty("singleTariff", out var single) && single.ValueKind == JsonValueKind.Object
                && Rate(single, place + "/singleTariff", "feed-in", []) is { } flat) rates.Add(flat);
            foreach (var (timed, timedPlace) in TimedFeedIn(entry, place))
                if (HasTimes(timed) && Rate(timed, timedPlace, "feed-in, " + Word(timed), Windows(timed, "timeVariations", timedPlace, season: null)) is { } rate) rates.Add(rate);
            if (rates.Count == 0) continue;
            // Hours that a timed feed-in does not name are paid nothing.
            if (rates.TrueForAll(r => r.Windows.Count > 0)) rates.Add(EnergyRate.Flat("feed-in, other hours", 0));
            _tariff = _tariff.With(new EnergyPart("export", EnergySide.Export, Named(rates)));
        }
    }

    /// <summary>Timed feed-in stands as a list in the newer form and as one value in the older.</summary>
    private static IEnumerable<(JsonElement Timed, string Place)> TimedFeedIn(JsonElement entry, string at)
    {
        if (!entry.TryGetProperty("timeVaryingTariffs", out var timed)) return [];
        return timed.ValueKind == JsonValueKind.Object ? [(timed, at + "/timeVaryingTariffs")] : List(entry, "timeVaryingTariffs", at);
    }

    private static bool HasTimes(JsonElement timed) =>
        timed.TryGetProperty("timeVariations", out var times) && times.ValueKind == JsonValueKind.Array && times.GetArrayLength() > 0;
}
