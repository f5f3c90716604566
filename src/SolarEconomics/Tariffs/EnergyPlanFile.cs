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
        var periods = List(contract, "tariffPeriod", at).ToList();
        ReadClock(contract, periods);
        if (periods.Count == 0)
        {
            _problems.Add(_json.At(at, "no field \"tariffPeriod\" with anything in it", "at least one period with its prices"));
            return;
        }
        var rates = new List<(string Type, EnergyRate Rate)>();
        foreach (var (period, place) in periods)
        {
            var season = SeasonOf(period, place);
            ReadSupply(period, place, season);
            rates.AddRange(ReadRates(period, place, season).Select(rate => (Text(period, "type") ?? "OTHER", rate)));
            ReadDemand(period, place, season);
        }
        if (rates.Count > 0) _tariff = WithImport(rates);
        else _problems.Add(_json.At(at + "/tariffPeriod", "no price per kWh", "a field \"singleRate\" or \"timeOfUseRates\" with unit prices"));
        ReadFees(contract, at);
        ReadControlledLoad(contract, at);
        ReadFeedIn(contract, at);
        ReadDiscounts(contract, at);
        ReadEligibility(contract, at);
    }

    /// <summary>All rates as one part; where they claim hours twice, those of each type of charge, such as a network's and a retailer's, stand on top of each other.</summary>
    private Tariff WithImport(List<(string Type, EnergyRate Rate)> rates)
    {
        var joined = _tariff.With(new EnergyPart("import", EnergySide.Import, Named([.. rates.Select(r => r.Rate)])));
        var types = rates.GroupBy(r => r.Type, StringComparer.Ordinal).ToList();
        if (types.Count == 1 || !TariffCheck.Mistakes(joined).Any()) return joined;
        var apart = _tariff;
        foreach (var type in types)
            apart = apart.With(new EnergyPart(type == types[0] ? "import" : "import, " + type.Key.ToLowerInvariant().Replace('_', ' '), EnergySide.Import, Named([.. type.Select(r => r.Rate)])));
        return TariffCheck.Mistakes(apart).Any() ? joined : apart;
    }

    /// <summary>The form takes Australian eastern standard time where it names no clock; a period's own clock stands before the contract's.</summary>
    private void ReadClock(JsonElement contract, List<(JsonElement Item, string Place)> periods)
    {
        var general = Text(contract, "timeZone") ?? "AEST";
        var clock = periods.Count > 0 ? Text(periods[0].Item, "timeZone") ?? general : general;
        foreach (var (period, place) in periods)
            if ((Text(period, "timeZone") ?? general) != clock) _unpriced.Add(place + "/timeZone");
        if (clock != "LOCAL") _tariff = _tariff.OnClock(MarketClock);
    }

    private void ReadSupply(JsonElement period, string at, string? season)
    {
        foreach (var field in new[] { "dailySupplyCharge", "dailySupplyCharges" })
        {
            if (!period.TryGetProperty(field, out _) || Number(period, field, at) is not { } amount) continue;
            _tariff = _tariff.With(new SupplyCharge("supply charge", amount) { Season = season });
            return;
        }
        if (List(period, "bandedDailySupplyCharges", at).ToList() is [var band] && !band.Item.TryGetProperty("volume", out _) && Number(band.Item, "unitPrice", band.Place) is { } only)
        {
            // One band for all use is a daily charge; several depend on the use of a year, which the plan does not tell apart from here.
            _tariff = _tariff.With(new SupplyCharge("supply charge", only) { Season = season });
            return;
        }
        if (!period.TryGetProperty("singleRate", out var single) || single.ValueKind != JsonValueKind.Object) return;
        foreach (var field in new[] { "dailySupplyCharge", "dailySupplyCharges" })
            if (single.TryGetProperty(field, out _) && Number(single, field, at + "/singleRate") is { } amount)
                _tariff = _tariff.With(new SupplyCharge("supply charge", amount) { Season = season });
    }
}
