using System.Text.Json;

namespace SolarEconomics;

/// <summary>Reads an energy plan in the open form of the Australian Consumer Data Right (<c>getGenericPlan</c>).</summary>
/// <remarks>Prices there are before GST, which is 10 %; feed-in bears none. Source: plan-1.</remarks>
internal sealed partial class EnergyPlanFile
{
    private const decimal Gst = 0.10m;
    private const string MarketClock = "Australia/Brisbane"; // UTC+10 all year
    private readonly CheckedJson _json;
    private readonly List<Problem> _problems = [];
    private readonly HashSet<string> _priced = new(StringComparer.Ordinal);
    private readonly HashSet<string> _unpriced = new(StringComparer.Ordinal);
    private Tariff _tariff;

    private EnergyPlanFile(CheckedJson json, string name)
    {
        _json = json;
        // The sheet states no rounding: lines stay exact and the total is rounded.
        _tariff = Tariff.Named(name, "AUD", TariffHistory.AllTime).Taxed(Gst).Rounded(RoundingMode.HalfUp, RoundingPlace.Bill);
    }

    internal static bool IsPlan(JsonElement root) =>
        root.ValueKind == JsonValueKind.Object && Detail(root) is { ValueKind: JsonValueKind.Object } data
        && (data.TryGetProperty("electricityContract", out _) || data.TryGetProperty("planId", out _));

    /// <summary>The plan itself, with or without the wrapper of the answer.</summary>
    private static JsonElement Detail(JsonElement root) => root.TryGetProperty("data", out var data) ? data : root;

    /// <exception cref="RecordException">The plan has no electricity, or a number in it cannot be read.</exception>
    /// <exception cref="TariffException">Its hours contradict each other.</exception>
    internal static TariffHistory Read(CheckedJson json)
    {
        var data = Detail(json.Root);
        var top = json.Root.TryGetProperty("data", out _) ? "/data" : "";
        if (!data.TryGetProperty("electricityContract", out var contract) || contract.ValueKind != JsonValueKind.Object)
            json.ThrowIfAny([json.At(top, "a plan without an electricity contract", "a field \"electricityContract\" with its prices")]);
        var name = data.TryGetProperty("displayName", out var text) && text.ValueKind == JsonValueKind.String ? text.GetString()! : "Energy plan";
        var file = new EnergyPlanFile(json, name);
        file.ReadContract(contract, top + "/electricityContract");
        json.ThrowIfAny(file._problems);
        file.ApplyHolidays(PlanPlace.StateOf(data));
        file.Sweep(data, top);
        var history = TariffHistory.Of(file._tariff);
        return history.From([.. file._unpriced.Select(Dotted).Order(StringComparer.Ordinal)], PlanPlace.ZoneOf(data));
    }

    private void ReadContract(JsonElement contract, string at)
    {
        // The form takes Australian eastern standard time where it names no clock.
        if (Text(contract, "timeZone") != "LOCAL" && !List(contract, "tariffPeriod", at).Any(p => Text(p.Item, "timeZone") == "LOCAL")) _tariff = _tariff.OnClock(MarketClock);
        var periods = List(contract, "tariffPeriod", at).ToList();
        if (periods.Count == 0)
        {
            _problems.Add(_json.At(at, "no field \"tariffPeriod\" with anything in it", "at least one period with its prices"));
            return;
        }
        var rates = new List<EnergyRate>();
        foreach (var (period, place) in periods)
        {
            var season = SeasonOf(period, place);
            ReadSupply(period, place, season);
            rates.AddRange(ReadRates(period, place, season));
            ReadDemand(period, place, season);
        }
        if (rates.Count > 0) _tariff = _tariff.With(new EnergyPart("import", EnergySide.Import, Named(rates)));
        else _problems.Add(_json.At(at + "/tariffPeriod", "no price per kWh", "a field \"singleRate\" or \"timeOfUseRates\" with unit prices"));
        ReadControlledLoad(contract, at);
        ReadFeedIn(contract, at);
        ReadDiscounts(contract, at);
    }

    private void ReadSupply(JsonElement period, string at, string? season)
    {
        foreach (var field in new[] { "dailySupplyCharge", "dailySupplyCharges" })
        {
            if (!period.TryGetProperty(field, out _) || Number(period, field, at) is not { } amount) continue;
            _tariff = _tariff.With(new SupplyCharge("supply charge", amount) { Season = season });
            return;
        }
        if (!period.TryGetProperty("singleRate", out var single) || single.ValueKind != JsonValueKind.Object) return;
        foreach (var field in new[] { "dailySupplyCharge", "dailySupplyCharges" })
            if (single.TryGetProperty(field, out _) && Number(single, field, at + "/singleRate") is { } amount)
                _tariff = _tariff.With(new SupplyCharge("supply charge", amount) { Season = season });
    }

    private void ReadDemand(JsonElement period, string at, string? season)
    {
        foreach (var (charge, place) in List(period, "demandCharges", at))
        {
            var unit = Text(charge, "measureUnit") ?? "KW";
            if (unit != "KW" || Number(charge, "amount", place) is not { } amount || Window(charge, place, season) is not { } window) continue;
            var per = Text(charge, "chargePeriod") switch { "DAY" => ChargePeriod.Day, "MONTH" => ChargePeriod.Month, _ => ChargePeriod.Bill };
            _tariff = _tariff.With(new DemandCharge(Text(charge, "displayName") ?? "demand", amount, window, per)
            {
                EachDay = Text(charge, "measurementPeriod") == "DAY" && per == ChargePeriod.Day,
                MinimumKw = charge.TryGetProperty("minDemand", out _) ? Number(charge, "minDemand", place) ?? 0 : 0,
            });
            if (charge.TryGetProperty("maxDemand", out _)) _unpriced.Add(place + "/maxDemand");
        }
    }
}
