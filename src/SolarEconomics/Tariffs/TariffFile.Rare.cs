using System.Text.Json;
using NodaTime;

namespace SolarEconomics;

/// <content>Reading the parts that few tariffs have.</content>
internal sealed partial class TariffFile
{
    private Tariff WithSeries(Tariff tariff, JsonElement at, string pointer, EnergySide side, decimal? tax = null)
    {
        var file = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(_path))!, at.GetProperty("file").GetString()!);
        if (tariff.Zone is not { } zone)
        {
            if (!_root.TryGetProperty("zone", out _)) _problems.Add(_json.At(pointer, "market prices in a file without a clock", "a field \"zone\" at the top of the file"));
            return tariff;
        }
        try
        {
            return tariff.With(new SeriesPrice(Name(at, "market price"), side, PriceSeries.Load(file, zone))
            {
                Factor = Decimal(at, "factor") ?? 1,
                AddPerKwh = Decimal(at, "addPerKwh") ?? 0,
                CapPerKwh = Decimal(at, "capPerKwh"),
                FloorPerKwh = Decimal(at, "floorPerKwh"),
                TaxFraction = tax,
            });
        }
        catch (RecordException e)
        {
            // Its own message names file and line; here it is one mistake among those of the tariff.
            _problems.Add(_json.At(pointer + "/file", $"prices that cannot be read ({e.Message})", "a table of start and price"));
            return tariff;
        }
    }

    private EventCharge Event(JsonElement at, string pointer) =>
        new(Name(at, "event"), Days(at, pointer), HoursOf(at, pointer), at.GetProperty("perKwh").GetDecimal());

    private EventRebate Rebate(JsonElement at, string pointer) => new(Name(at, "rebate"), Days(at, pointer), HoursOf(at, pointer), at.GetProperty("perKwh").GetDecimal(),
        at.TryGetProperty("baselineDays", out var days) ? (int)days.GetDecimal() : 10) { TaxFraction = 0 };

    private DemandCharge Demand(JsonElement at, string pointer)
    {
        var window = at.TryGetProperty("when", out var when) ? Window(when, pointer + "/when") : RateWindow.Always;
        var minutes = at.TryGetProperty("averagingMinutes", out var length) ? (int)length.GetDecimal() : 30;
        IReadOnlyList<DemandStep> steps = [.. Items(at, pointer, "steps").Select(s => new DemandStep(Decimal(s.Item, "upTo"), s.Item.GetProperty("price").GetDecimal()))];
        if (Decimal(at, "perKw") is null == (steps.Count == 0))
            _problems.Add(_json.At(pointer, steps.Count == 0 ? "neither \"perKw\" nor \"steps\"" : "both \"perKw\" and \"steps\"", "one of them"));
        return new DemandCharge(Name(at, "demand"), Decimal(at, "perKw") ?? 0, window, Per(at, ChargePeriod.Month), minutes)
        {
            MinimumKw = Decimal(at, "minimumKw") ?? 0,
            RatchetShare = Decimal(at, "ratchetShare") ?? 0,
            RatchetBills = at.TryGetProperty("ratchetBills", out var bills) ? (int)bills.GetDecimal() : 11,
            RatchetSeason = at.TryGetProperty("ratchetSeason", out var season) ? season.GetString() : null,
            EarlierKw = Decimal(at, "earlierKw") ?? 0,
            Unit = at.TryGetProperty("unit", out var unit) && unit.GetString() == "kVA" ? DemandUnit.KilovoltAmpere : DemandUnit.Kilowatt,
            KvaShare = Decimal(at, "kvaShare") ?? 0,
            Steps = steps,
            EachMonth = at.TryGetProperty("eachMonth", out var month) && month.GetBoolean(),
            EachDay = at.TryGetProperty("eachDay", out var each) && each.GetBoolean(),
        };
    }

    private static ConnectionCharge Connection(JsonElement at) => new(Name(at, "connection"), at.GetProperty("perUnit").GetDecimal(), at.GetProperty("unit").GetString() switch
    {
        "A" => ConnectionUnit.Ampere,
        "kVA" => ConnectionUnit.KilovoltAmpere,
        _ => ConnectionUnit.Kilowatt,
    }, at.GetProperty("size").GetDecimal(), Per(at, ChargePeriod.Month));

    private static Tariff WithReactive(Tariff tariff, JsonElement at)
    {
        if (at.TryGetProperty("reactive", out var reactive))
            tariff = tariff.With(new ReactiveCharge(Name(reactive, "reactive energy"), reactive.GetProperty("perKvarh").GetDecimal(), Decimal(reactive, "freeShare") ?? 0.5m));
        return at.TryGetProperty("powerFactor", out var factor)
            ? tariff.With(new PowerFactorCharge(Name(factor, "power factor"), factor.GetProperty("least").GetDecimal(), factor.GetProperty("fractionPerHundredth").GetDecimal(), Names(factor)))
            : tariff;
    }

    /// <summary>What holds for the tariff as a whole: whom it is for and how flows are counted.</summary>
    private static Tariff Terms(Tariff tariff, JsonElement at) => tariff with
    {
        Needs = at.TryGetProperty("needs", out var needs)
            ? needs.EnumerateArray().Where(n => n.ValueKind == JsonValueKind.String).Aggregate(TariffNeeds.None, (all, n) => all | Enum.Parse<TariffNeeds>(n.GetString()!.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true)) : TariffNeeds.None,
        IsClosedToNew = at.TryGetProperty("closedToNew", out var closed) && closed.GetBoolean(),
        NetsWithinMinutes = at.TryGetProperty("netWithinMinutes", out var minutes) ? (int)minutes.GetDecimal() : 0,
        EnergyAtChange = at.TryGetProperty("energyAtChange", out var split) && split.GetString() == "by days" ? EnergySplit.ByDays : EnergySplit.AsMetered,
        IsBuyAllSellAll = at.TryGetProperty("buyAllSellAll", out var all) && all.GetBoolean(),
    };

    private HolidayList Holidays(JsonElement at, string pointer)
    {
        var list = HolidayList.None;
        if (at.TryGetProperty("holidaysOf", out var of))
        {
            try
            {
                list = HolidayList.OfCountry(of.GetProperty("country").GetString()!, of.TryGetProperty("region", out var region) ? region.GetString() : null);
            }
            catch (UnknownNameException e)
            {
                Wrong(pointer + "/holidaysOf", e);
            }
        }
        return at.TryGetProperty("holidays", out _) ? list.With(Dates(at, pointer, "holidays")) : list;
    }

    private List<LocalDate> Days(JsonElement at, string pointer) => Dates(at, pointer, "days");

    private List<LocalDate> Dates(JsonElement at, string pointer, string field) =>
        [.. Items(at, pointer, field).Select(d => Date(d.Item.GetString()!, d.Place))];

    private HourSpan[] HoursOf(JsonElement at, string pointer) =>
        [.. at.GetProperty("hours").EnumerateArray().Select((h, i) => Hours(h.GetString()!, FormattableString.Invariant($"{pointer}/hours/{i}")))];

    private static IReadOnlyList<string> Names(JsonElement at) => at.TryGetProperty("of", out var of) ? [.. of.EnumerateArray().Select(n => n.GetString()!)] : [];

    private static string? Condition(JsonElement at) => at.TryGetProperty("condition", out var condition) ? condition.GetString() : null;

    private static Proration Proration(JsonElement at) => !at.TryGetProperty("proration", out var proration) ? SolarEconomics.Proration.ByDays : proration.GetString() switch
    {
        "by thirtieths" => SolarEconomics.Proration.ByThirtieths,
        "whole" => SolarEconomics.Proration.Whole,
        _ => SolarEconomics.Proration.ByDays,
    };
}
