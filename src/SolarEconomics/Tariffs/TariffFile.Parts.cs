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
        foreach (var (size, _) in Items(at, pointer, "connection")) tariff = tariff.With(Connection(size));
        var import = Rates(at, pointer, "import");
        if (import.Count > 0) tariff = tariff.With(Import(at, import));
        if (at.TryGetProperty("importSeries", out var series)) tariff = WithSeries(tariff, series, pointer + "/importSeries", EnergySide.Import);
        foreach (var (rate, place) in Items(at, pointer, "importOnTop"))
            tariff = tariff.With(OnTop(rate, Rate(rate, place)));
        if (at.TryGetProperty("importTiers", out var tiers)) tariff = tariff.With(Tiers(tiers));
        if (_isWhole && !at.TryGetProperty("importSeries", out _) && !tariff.Parts.Any(p => p is EnergyPart or TieredCharge or NetMetering))
            _problems.Add(_json.At(pointer, "no price of import", "a field \"import\", \"importTiers\" or \"importSeries\" with prices per kWh"));
        if (Rates(at, pointer, "controlledLoad") is { Count: > 0 } apart) tariff = tariff.With(new EnergyPart("controlled load", EnergySide.ControlledLoad, apart));
        foreach (var (called, place) in Items(at, pointer, "events")) tariff = tariff.With(Event(called, place));
        foreach (var (demand, place) in Items(at, pointer, "demand")) tariff = tariff.With(Demand(demand, place));
        tariff = WithReactive(tariff, at);
        foreach (var (levy, _) in Items(at, pointer, "levies")) tariff = tariff.With(Share(levy, 1));
        foreach (var (discount, _) in Items(at, pointer, "discounts")) tariff = tariff.With(Share(discount, -1));
        foreach (var (discount, _) in Items(at, pointer, "fixedDiscounts")) tariff = Fixed(tariff, discount, "discount", sign: -1, paysFor: "discount");
        if (at.TryGetProperty("minimumBill", out var minimum))
            tariff = tariff.With(new MinimumBill(Name(minimum, "minimum bill"), minimum.GetProperty("amount").GetDecimal(), Per(minimum, ChargePeriod.Bill)));
        return Credits(tariff, at, pointer);
    }

    /// <summary>What lowers the bill: export, rebates, payments in advance, and the rules on credit.</summary>
    private Tariff Credits(Tariff tariff, JsonElement at, string pointer)
    {
        decimal? exportTax = Decimal(at, "exportTax");
        if (Rates(at, pointer, "export") is { Count: > 0 } export)
            tariff = tariff.With(new EnergyPart("export", EnergySide.Export, export) { TaxFraction = exportTax, MostKw = Decimal(at, "exportLimitKw") });
        if (at.TryGetProperty("exportSeries", out var series)) tariff = WithSeries(tariff, series, pointer + "/exportSeries", EnergySide.Export, exportTax);
        // A charge on export is a price below zero paid for it, with the tax of a charge.
        if (Rates(at, pointer, "exportCharges") is { Count: > 0 } charges)
            tariff = tariff.With(new EnergyPart("export charge", EnergySide.Export, [.. charges.Select(r => r.Scaled(-1))]) { TaxFraction = tariff.Tax });
        if (Rates(at, pointer, "curtailed") is { Count: > 0 } curtailed) tariff = tariff.With(new EnergyPart("curtailed", EnergySide.Curtailed, curtailed));
        foreach (var (rebate, place) in Items(at, pointer, "eventRebates")) tariff = tariff.With(Rebate(rebate, place));
        foreach (var (limit, _) in Items(at, pointer, "creditLimits"))
            tariff = tariff.With(new CreditLimit(Name(limit, "credit limit"), limit.GetProperty("amount").GetDecimal(), Per(limit, ChargePeriod.Bill), Names(limit)));
        foreach (var (paid, _) in Items(at, pointer, "prepayments")) tariff = Fixed(tariff, paid, "paid in advance", sign: -1, paysFor: "payment in advance", tax: 0);
        if (!at.TryGetProperty("creditKept", out var kept)) return tariff;
        int? month = kept.TryGetProperty("expiresInMonth", out var number) ? (int)number.GetDecimal() : null;
        return tariff.With(new CreditKept(Name(kept, "credit"), !kept.TryGetProperty("carried", out var carried) || carried.GetBoolean(), month));
    }

    private static TariffPart Import(JsonElement at, IReadOnlyList<EnergyRate> rates)
    {
        if (!at.TryGetProperty("netMetering", out var net)) return new EnergyPart("import", EnergySide.Import, rates);
        int? month = net.TryGetProperty("settlesInMonth", out var number) ? (int)number.GetDecimal() : null;
        return new NetMetering("import", rates, month, Decimal(net, "cashOutPerKwh") ?? 0) { ExpiresAfterMonths = net.TryGetProperty("expiresAfterMonths", out var after) ? (int)after.GetDecimal() : null };
    }

    private static Tariff Fixed(Tariff tariff, JsonElement at, string name, int sign = 1, string paysFor = "being connected", decimal? tax = null)
    {
        foreach (var (field, per) in FixedFields)
        {
            if (Decimal(at, field) is not { } amount) continue;
            tariff = tariff.With(new SupplyCharge(Name(at, name), sign * amount, per)
            {
                Proration = Proration(at),
                OnlyWithControlledLoad = at.TryGetProperty("onlyWithControlledLoad", out var only) && only.GetBoolean(),
                PaysFor = at.TryGetProperty("paysFor", out var what) ? what.GetString()! : paysFor,
                Condition = Condition(at),
                TaxFraction = tax,
            });
        }
        return tariff;
    }

    private static EnergyPart OnTop(JsonElement at, EnergyRate rate) => new(rate.Name, EnergySide.Import, [rate])
    {
        QuantityFactor = Decimal(at, "quantityFactor") ?? 1,
        QuantityDigits = at.TryGetProperty("quantityDigits", out var digits) ? (int)digits.GetDecimal() : null,
    };

    private static TieredCharge Tiers(JsonElement at) => new(Name(at, "import"),
        [.. at.GetProperty("tiers").EnumerateArray().Select(t => new BillTier(Decimal(t, "upToKwh"), Steps(t), Decimal(t, "fixed") ?? 0))], BlocksPer(at, "per"));

    private static PercentCharge Share(JsonElement at, int sign) =>
        new(Name(at, "share"), sign * at.GetProperty("fraction").GetDecimal(), Names(at)) { Condition = Condition(at) };

    private IReadOnlyList<EnergyRate> Rates(JsonElement at, string pointer, string field) =>
        [.. Items(at, pointer, field).Select(r => NotBelowZero(Rate(r.Item, r.Place), r.Place))];

    private EnergyRate NotBelowZero(EnergyRate rate, string pointer)
    {
        if (rate.PerKwh < 0 || (rate.Blocks?.Steps.Any(s => s.PerKwh < 0) ?? false))
            _problems.Add(_json.At(pointer, $"a price below zero in \"{rate.Name}\"", "a price of 0 or more; what is charged for export stands in \"exportCharges\", a discount in \"discounts\""));
        return rate;
    }

    private EnergyRate Rate(JsonElement at, string pointer)
    {
        var perKwh = Decimal(at, "perKwh");
        var inBlocks = at.TryGetProperty("blocks", out _);
        if (perKwh is null != inBlocks)
            _problems.Add(_json.At(pointer, perKwh is null ? "neither \"perKwh\" nor \"blocks\"" : "both \"perKwh\" and \"blocks\"", "one of them"));
        RateWindow[] windows = [.. Items(at, pointer, "when").Select(w => Window(w.Item, w.Place))];
        var blocks = inBlocks ? new RateBlocks(Steps(at), BlocksPer(at, "blocksPer")) { RunsOn = at.TryGetProperty("blocksRunOn", out var on) && on.GetBoolean() } : null;
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
        "season" => BlockPeriod.Season,
        _ => BlockPeriod.Bill,
    };

    private static ChargePeriod Per(JsonElement at, ChargePeriod usual) =>
        at.TryGetProperty("per", out var per) ? Enum.Parse<ChargePeriod>(per.GetString()!, ignoreCase: true) : usual;

    private static string Name(JsonElement at, string usual) => at.TryGetProperty("name", out var name) ? name.GetString()! : usual;

    private static decimal? Decimal(JsonElement at, string field) => at.TryGetProperty(field, out var value) ? value.GetDecimal() : null;

    private static IEnumerable<(JsonElement Item, string Place)> Items(JsonElement at, string pointer, string field) =>
        at.TryGetProperty(field, out var list)
            ? list.EnumerateArray().Select((item, i) => (item, FormattableString.Invariant($"{pointer}/{field}/{i}"))).Where(i => i.item.ValueKind != JsonValueKind.Null) : [];
}
