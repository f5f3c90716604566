using System.Text.Json;

namespace SolarEconomics;

/// <content>Reading the parts of one version.</content>
internal sealed partial class TariffFile
{
    private static readonly (string Field, ChargePeriod Per)[] FixedFields =
        [("perDay", ChargePeriod.Day), ("perMonth", ChargePeriod.Month), ("perYear", ChargePeriod.Year), ("perBill", ChargePeriod.Bill)];

    /// <summary>Parts in the order of the bill: fixed charges, import, power, levies and discounts, minimum, export.</summary>
    private Tariff Parts(Tariff tariff, JsonElement at, string pointer)
    {
        if (at.TryGetProperty("supply", out var supply)) tariff = Fixed(tariff, supply, "supply charge");
        foreach (var (fee, _) in Items(at, pointer, "fees")) tariff = Fixed(tariff, fee, "fee");
        var import = Rates(at, pointer, "import");
        if (import.Count > 0) tariff = tariff.With(Import(at, import));
        foreach (var (rate, place) in Items(at, pointer, "importOnTop"))
            tariff = tariff.With(OnTop(rate, Rate(rate, place)));
        if (at.TryGetProperty("importTiers", out var tiers)) tariff = tariff.With(Tiers(tiers));
        if (!tariff.Parts.Any(p => p is EnergyPart or TieredCharge or NetMetering))
            _problems.Add(_json.At(pointer, "no price of import", "a field \"import\" or \"importTiers\" with prices per kWh"));
        foreach (var (demand, place) in Items(at, pointer, "demand")) tariff = tariff.With(Demand(demand, place));
        foreach (var (levy, _) in Items(at, pointer, "levies")) tariff = tariff.With(Share(levy, 1));
        foreach (var (discount, _) in Items(at, pointer, "discounts")) tariff = tariff.With(Share(discount, -1));
        if (at.TryGetProperty("minimumBill", out var minimum))
            tariff = tariff.With(new MinimumBill(Name(minimum, "minimum bill"), minimum.GetProperty("amount").GetDecimal(), Per(minimum, ChargePeriod.Bill)));
        if (!at.TryGetProperty("export", out _)) return tariff;
        decimal? exportTax = at.TryGetProperty("exportTax", out var fraction) ? fraction.GetDecimal() : null;
        return tariff.With(new EnergyPart("export", EnergySide.Export, Rates(at, pointer, "export")) { TaxFraction = exportTax });
    }

    private static TariffPart Import(JsonElement at, IReadOnlyList<EnergyRate> rates)
    {
        if (!at.TryGetProperty("netMetering", out var net)) return new EnergyPart("import", EnergySide.Import, rates);
        int? month = net.TryGetProperty("settlesInMonth", out var number) ? (int)number.GetDecimal() : null;
        return new NetMetering("import", rates, month, Decimal(net, "cashOutPerKwh") ?? 0);
    }

    private static Tariff Fixed(Tariff tariff, JsonElement at, string name)
    {
        foreach (var (field, per) in FixedFields)
            if (Decimal(at, field) is { } amount) tariff = tariff.With(new SupplyCharge(Name(at, name), amount, per));
        return tariff;
    }

    private static EnergyPart OnTop(JsonElement at, EnergyRate rate) => new(rate.Name, EnergySide.Import, [rate])
    {
        QuantityFactor = Decimal(at, "quantityFactor") ?? 1,
        QuantityDigits = at.TryGetProperty("quantityDigits", out var digits) ? (int)digits.GetDecimal() : null,
    };

    private static TieredCharge Tiers(JsonElement at) => new(Name(at, "import"),
        [.. at.GetProperty("tiers").EnumerateArray().Select(t => new BillTier(Decimal(t, "upToKwh"), Steps(t), Decimal(t, "fixed") ?? 0))], BlocksPer(at, "per"));

    private DemandCharge Demand(JsonElement at, string pointer)
    {
        var window = at.TryGetProperty("when", out var when) ? Window(when, pointer + "/when") : RateWindow.Always;
        var minutes = at.TryGetProperty("averagingMinutes", out var length) ? (int)length.GetDecimal() : 30;
        return new DemandCharge(Name(at, "demand"), at.GetProperty("perKw").GetDecimal(), window, Per(at, ChargePeriod.Month), minutes)
        {
            MinimumKw = Decimal(at, "minimumKw") ?? 0,
            RatchetShare = Decimal(at, "ratchetShare") ?? 0,
            RatchetBills = at.TryGetProperty("ratchetBills", out var bills) ? (int)bills.GetDecimal() : 11,
            EachDay = at.TryGetProperty("eachDay", out var each) && each.GetBoolean(),
        };
    }

    private static PercentCharge Share(JsonElement at, int sign) => new(Name(at, "share"), sign * at.GetProperty("fraction").GetDecimal(),
        at.TryGetProperty("of", out var of) ? [.. of.EnumerateArray().Select(n => n.GetString()!)] : []);

    private IReadOnlyList<EnergyRate> Rates(JsonElement at, string pointer, string field) =>
        [.. Items(at, pointer, field).Select(r => Rate(r.Item, r.Place))];

    private EnergyRate Rate(JsonElement at, string pointer)
    {
        var perKwh = Decimal(at, "perKwh");
        var inBlocks = at.TryGetProperty("blocks", out _);
        if (perKwh is null != inBlocks)
            _problems.Add(_json.At(pointer, perKwh is null ? "neither \"perKwh\" nor \"blocks\"" : "both \"perKwh\" and \"blocks\"", "one of them"));
        RateWindow[] windows = [.. Items(at, pointer, "when").Select(w => Window(w.Item, w.Place))];
        var blocks = inBlocks ? new RateBlocks(Steps(at), BlocksPer(at, "blocksPer")) : null;
        return new EnergyRate(Name(at, "rate"), perKwh ?? blocks?.Steps[0].PerKwh ?? 0, windows) { Blocks = blocks };
    }

    private static IReadOnlyList<RateBlock> Steps(JsonElement at) =>
        [.. at.GetProperty("blocks").EnumerateArray().Select(b => new RateBlock(Decimal(b, "upToKwh"), b.GetProperty("perKwh").GetDecimal()))];

    private static BlockPeriod BlocksPer(JsonElement at, string field) => !at.TryGetProperty(field, out var per) ? BlockPeriod.Bill : per.GetString() switch
    {
        "day" => BlockPeriod.Day,
        "days of bill" => BlockPeriod.DaysOfBill,
        "month" => BlockPeriod.Month,
        "quarter" => BlockPeriod.Quarter,
        "thirty days" => BlockPeriod.ThirtyDays,
        "year" => BlockPeriod.Year,
        _ => BlockPeriod.Bill,
    };

    private static ChargePeriod Per(JsonElement at, ChargePeriod usual) =>
        at.TryGetProperty("per", out var per) ? Enum.Parse<ChargePeriod>(per.GetString()!, ignoreCase: true) : usual;

    private static string Name(JsonElement at, string usual) => at.TryGetProperty("name", out var name) ? name.GetString()! : usual;

    private static decimal? Decimal(JsonElement at, string field) => at.TryGetProperty(field, out var value) ? value.GetDecimal() : null;

    private static IEnumerable<(JsonElement Item, string Place)> Items(JsonElement at, string pointer, string field) =>
        at.TryGetProperty(field, out var list)
            ? list.EnumerateArray().Select((item, i) => (item, FormattableString.Invariant($"{pointer}/{field}/{i}"))) : [];
}
