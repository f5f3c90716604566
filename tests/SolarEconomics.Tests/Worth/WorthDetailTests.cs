using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Shares of devices, costs of failures, days at the edge, and what the notes say of odd records.</summary>
// Oracles: a naive twin over devices, by hand on one day or a year of equal days.
public sealed class WorthDetailTests
{
    private static readonly Currency s_euro = Currency.Of("EUR");
    private static readonly Channel s_import = SmallSite.Hours("import", FlowKind.Import, (20, 1.0));
    private static readonly Channel s_export = SmallSite.Hours("export", FlowKind.Export, (12, 1.0));
    private static readonly Channel s_roof = SmallSite.Hours("roof", FlowKind.Generation, (12, 2.0));

    [Fact]
    public void Each_device_has_its_share_of_every_hour_s_worth()
    {
        var worth = MixedSite.Worth();
        var (flows, prices) = (worth.Flows, worth.Prices);
        // Naive: hour by hour what the home kept of the plant at the import price and what it sold at the export price, by what each roof made then.
        double Share(string device) => Enumerable.Range(0, flows.Grid.Count).Where(i => flows.GenerationKwh[i] > 0).Sum(i =>
        {
            var kept = flows.GenerationKwh[i] + flows.DischargeKwh[i] - flows.ExportKwh[i] - flows.ChargeKwh[i] - flows.StandbyKwh[i];
            return ((kept * prices.Import[i]) + (flows.ExportKwh[i] * prices.Export[i])) * flows.ByDevice[device][i] / (flows.ByDevice["south"][i] + flows.ByDevice["shed"][i]);
        });
        var (south, shed) = (Share("south"), Share("shed"));
        var devices = worth.ByDevice;
        Assert.Equal(["south", "shed"], devices.Select(d => d.Device));
        Assert.Equal((double)worth.Value!.Value.Amount * south / (south + shed), (double)devices[0].Value.Amount, 0.011);
        Assert.Equal(worth.Value.Value.Amount, devices.Sum(d => d.Value.Amount));
        Assert.Equal(flows.ByDevice["shed"].Sum(), devices[1].GeneratedKwh, 9);
        // 2,900 + 60 + 18.50; 640 less the sale of 45.
        Assert.Equal([2_978.50m, 595m], devices.Select(d => d.Paid!.Value.Amount));
        Assert.Equal([null], Worth.ToDate(SmallSite.Site(), SmallSite.Of(s_import, s_export, s_roof), SmallSite.Flat(0.30m, 0.10m)).ByDevice.Select(d => d.Paid));
    }

    [Fact]
    public void Money_that_is_none_and_loans_are_paid_for_no_device()
    {
        var worth = YearSite.Worth(1_000m, At(2, LedgerKind.Finance, 50) with { Device = "roof" }, At(3, LedgerKind.WarrantyRefused, 70) with { Device = "ROOF" }, At(4, LedgerKind.Part, 20) with { Device = "Roof" });
        Assert.Equal(20m, Assert.Single(worth.ByDevice).Paid!.Value.Amount);
    }

    [Fact]
    public void A_failure_counts_receipts_from_its_first_day_until_90_days_after_its_last()
    {
        var down = new DateSpan(new LocalDate(2023, 3, 10), new LocalDate(2023, 3, 12));
        LedgerEntry Part(LocalDate on, decimal amount) => new(on, LedgerKind.Part, Money.Nominal(amount, s_euro)) { Device = "roof" };
        var worth = YearSite.Worth(1_000m, Part(down.Start.PlusDays(-1), 1), Part(down.Start, 2), Part(down.End.PlusDays(89), 4), Part(down.End.PlusDays(90), 8),
            new LedgerEntry(down.Start, LedgerKind.SpareUsed, Money.Nominal(16, s_euro)) { Device = "roof" }, Part(down.Start, 32) with { Device = "shed" }, Part(down.Start, 64) with { Device = null },
            new LedgerEntry(down.Start, LedgerKind.Insurance, Money.Nominal(128, s_euro)) { Device = "roof" });
        Assert.Equal(2m + 4m + 16m, worth.CostOfFailure("roof", down).Repair.Amount);
    }

    [Fact]
    public void A_failure_may_fill_the_records_from_end_to_end_and_must_lie_within_them()
    {
        var worth = YearSite.Worth();
        var (start, end) = (worth.Period.Start, worth.Period.End);
        foreach (var days in new[] { new DateSpan(start, start.PlusDays(1)), new DateSpan(end.PlusDays(-1), end) })
            Assert.Equal(2, worth.CostOfFailure("roof", days).LostKwh, 9);
        foreach (var days in new[] { new DateSpan(start, start), new DateSpan(start.PlusDays(-1), start.PlusDays(2)), new DateSpan(end.PlusDays(-1), end.PlusDays(1)) })
            Assert.Throws<RecordException>(() => worth.CostOfFailure("roof", days));
        // All days of a month down: there is no like day in it.
        Assert.Contains("roof", Assert.Throws<RecordException>(() => worth.CostOfFailure("roof", new DateSpan(new LocalDate(2023, 2, 1), new LocalDate(2023, 3, 1)))).Message, StringComparison.Ordinal);
        // Stated, nothing needs be like it: 50 kWh at 0.20, the mean of half used at 0.30 and half sold at 0.10.
        Assert.Equal(10m, worth.CostOfFailure("roof", new DateSpan(new LocalDate(2023, 2, 1), new LocalDate(2023, 3, 1)), 50).LostEnergy.Amount);
        Assert.Contains("kWh", Assert.ThrowsAny<ArgumentException>(() => worth.CostOfFailure("roof", new DateSpan(start, end), -1)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_months_down_lose_the_like_days_of_both_and_a_day_without_any_is_no_like_day()
    {
        // 2 kWh a day but 6 in July, and nothing at all on 1 August: 3 days of July at 6 and 2 of August at 2.
        var worth = Days(d => d.Month == 7 ? 6 : d == new LocalDate(2023, 8, 1) ? 0 : 2);
        var cost = worth.CostOfFailure("roof", new DateSpan(new LocalDate(2023, 7, 29), new LocalDate(2023, 8, 3)));
        Assert.Equal((3 * 6) + (2 * 2), cost.LostKwh, 9);
    }

    [Fact]
    public void What_needs_a_ledger_or_a_value_says_so()
    {
        var noLedger = Worth.ToDate(SmallSite.Site(new Device("roof", MeasurementPoint.InverterAcOut)), SmallSite.Of(s_import, s_export, s_roof), SmallSite.Flat(0.30m, 0.10m));
        var noValue = Worth.ToDate(SmallSite.Site(new Device("roof", MeasurementPoint.InverterAcOut)), SmallSite.Of(s_import, s_export), SmallSite.Flat(0.30m, 0.10m), Ledger.From(new LedgerEntry(SmallSite.Day, LedgerKind.Purchase, Money.Nominal(9, s_euro))));
        var day = new DateSpan(SmallSite.Day, SmallSite.Day.PlusDays(1));
        foreach (var ask in new Func<WorthToDate, object>[] { w => w.Recovery, w => w.Outlook(), w => w.CostOfFailure("roof", day) })
        {
            Assert.StartsWith("a small site: found no ledger", Assert.Throws<RecordException>(() => ask(noLedger)).Message, StringComparison.Ordinal);
            Assert.StartsWith("a small site: found ", Assert.Throws<RecordException>(() => ask(noValue)).Message, StringComparison.Ordinal);
        }
        Assert.Null(noValue.CashSoFar);
        Assert.Null(noValue.WithOwnHours(Money.Nominal(5, s_euro)).CashSoFar);
        Assert.Null(noValue.ValueAfterRunningCosts);
        Assert.Throws<RecordException>(() => noValue.Bridge());
        Assert.Throws<RecordException>(() => noValue.ValueInMoneyOf(PriceIndex.Of([(new YearMonth(2024, 6), 100.0)]), 2024));
        Assert.Null(noValue.XirrSoFar);
    }

    [Fact]
    public void Sums_of_months_are_those_of_the_whole_and_money_of_the_last_day_counts()
    {
        var worth = MixedSite.Worth();
        var energy = worth.Energy;
        Assert.Equal(worth.Flows.ImportKwh.Sum(), energy.ImportedKwh, 6);
        Assert.Equal(worth.Months.Sum(m => m.CensoredHours), energy.CensoredHours, 9);
        Assert.Equal((energy.UsedDirectlyKwh + energy.UsedFromStorageKwh) / energy.GeneratedKwh, energy.SelfConsumption!.Value, 12);
        Assert.Null((energy with { GeneratedKwh = 0 }).SelfConsumption);
        Assert.Equal(425 / 365.25, worth.RecordYears, 12);
        Assert.Equal(worth.Value - worth.RunningCosts, worth.ValueAfterRunningCosts);
        Assert.Equal(Enumerable.Repeat("savings", 14), worth.CashSoFar!.Amounts.Where(a => a.Origin == "savings").Select(a => a.Origin));
        // The last day of the records counts, the day after does not.
        var end = YearSite.Worth().Period.End;
        var sum = YearSite.Worth().CashSoFar!.Total.Amount;
        Assert.Equal(sum - 5, YearSite.Worth(1_000m, new LedgerEntry(end.PlusDays(-1), LedgerKind.Repair, Money.Nominal(5, s_euro))).CashSoFar!.Total.Amount);
        Assert.Equal(sum, YearSite.Worth(1_000m, new LedgerEntry(end, LedgerKind.Repair, Money.Nominal(5, s_euro))).CashSoFar!.Total.Amount);
    }

    [Fact]
    public void One_price_may_be_stated_for_the_straight_line_and_the_bridge()
    {
        var worth = Worth.ToDate(YearSite.Place, YearSite.Records(), YearSite.Tariffs, YearSite.Paid(1_000), new WorthOptions { OnePricePerKwh = 0.50m });
        Assert.Equal((365m, 0.50m), (worth.StraightLine!.Value.Amount, worth.StraightLine.PricePerKwh));
        var bridge = worth.Bridge(CultureInfo.GetCultureInfo("de-DE"));
        Assert.Equal((365m, 146m), (bridge.Start.Amount, bridge.End.Amount));
        Assert.Equal(["Value to date: from counters times one price to what it has been worth", "Counters × one price", "Worth so far"], [bridge.Title, bridge.StartLabel, bridge.EndLabel]);
        Assert.Equal(string.Join("\n",
        [
            "The displays add up to 730 kWh; 730 kWh were made here and reached the board: 0 €.", "365 kWh were exported at the feed-in rate and 0 kWh lost; only the rest avoided a purchase: −146 €.",
            "The plant itself took 0 kWh, bought or taken from its own generation: 0 €.", "The prices in force at each hour, instead of one price of 0,50 € a kWh for all time: −73 €.",
            "Tax on 0,0 % of the use is reclaimed, so avoiding it saved nothing: 0 €.", "Running, repairing and insuring the plant in the period: 0 €.",
        ]), string.Join('\n', bridge.Corrections.Select(c => c.Sentence.Replace('\u00a0', ' ').Replace('\u202f', ' '))));
        Assert.Equal(bridge.End.Amount, bridge.Start.Amount + bridge.Corrections.Sum(c => c.ShapleyPart.Amount));
    }

    [Fact]
    public void The_cents_of_a_rounded_start_are_taken_up_by_the_first_part()
    {
        // 10.004 rounds to 10.00: the end of 13.0 is 3.00 away, printed and by Shapley.
        var words = new ToDateBridgeWords(YearSite.Worth(), 1, 1, CultureInfo.InvariantCulture);
        var runs = new BridgeRuns(2, subset => 10.004m + ((subset & 1) != 0 ? 1.002m : 0) + ((subset & 2) != 0 ? 1.994m : 0));
        var bridge = BridgeWriter.Write("t", "a", "b", runs, [CorrectionKind.Tax, CorrectionKind.Standby], s_euro, words, (subset, value) => FormattableString.Invariant($"{subset}: {value}"));
        Assert.Equal((10.00m, 13.00m), (bridge.Start.Amount, bridge.End.Amount));
        Assert.Equal([1.01m, 1.99m], bridge.Corrections.Select(c => c.Part.Amount));
        Assert.Equal([1.01m, 1.99m], bridge.Corrections.Select(c => c.ShapleyPart.Amount));
        Assert.Equal(["1: 11.006", "3: 13.000"], bridge.Corrections.Select(c => c.Standing));
    }

    [Fact]
    public void What_is_not_priced_and_what_is_no_price_of_an_hour_stands_in_the_notes()
    {
        var blocks = TariffHistory.Of(Tariff.Named("blocks", "EUR", new LocalDate(2020, 1, 1)).With(new EnergyPart("import", EnergySide.Import,
            [EnergyRate.InBlocks("use", new RateBlocks([new RateBlock(1, 0.2m), new RateBlock(null, 0.3m)]))])).Export("export", 0.1m));
        var notes = Worth.ToDate(SmallSite.Site(), SmallSite.Of(s_import, s_export, s_roof), blocks.From(["a fee"], null)).Notes;
        Assert.Contains("Not priced from the tariff file: a fee", notes);
        Assert.Contains(notes, n => n.StartsWith("The tariff also has parts that are no price of an hour, such as blocks", StringComparison.Ordinal));
        Assert.DoesNotContain(MixedSite.Worth().Notes, n => n.StartsWith("The tariff also has parts", StringComparison.Ordinal));
    }

    [Fact]
    public void A_battery_that_nobody_read_leaves_bounds()
    {
        var roof = new Device("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 5, InService = SmallSite.Day };
        var battery = new Device("store", MeasurementPoint.InverterAcOut) { UsableKwh = 3, InService = SmallSite.Day };
        var unread = Worth.ToDate(SmallSite.Site(roof, battery), SmallSite.Of(s_import, s_export, s_roof), SmallSite.Flat(0.30m, 0.10m));
        Assert.Contains(unread.Notes, n => n.StartsWith("From ", StringComparison.Ordinal) && n.EndsWith("bounds from the price of each kWh with every unknown at its worst and at its best, as nobody read the battery; no flows need reach them.", StringComparison.Ordinal));
        Assert.Contains("bounds", unread.Say(CultureInfo.InvariantCulture).Tables.Single(t => t.Caption.StartsWith("What the records allow", StringComparison.Ordinal)).Rows.Select(r => r[3]));
    }

    [Fact]
    public void Where_no_single_rate_of_return_is_found_the_words_say_why()
    {
        // Nothing was ever spent that did not come back at once: all money comes in.
        var worth = YearSite.Worth(1_000m, At(1, LedgerKind.Grant, 1_500));
        Assert.Contains(worth.Say(CultureInfo.InvariantCulture).Tables[1].Rows, r => r[1].StartsWith("none: ", StringComparison.Ordinal));
        Assert.Contains("no single rate of return (", worth.Outlook(YearSite.Plain).Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_end_within_a_day_hold_that_day()
    {
        Channel Until(Channel c, int hours) => new(c.Name, c.Flow, [.. Enumerable.Range(0, hours).Select(i => c.Starts[i])], [.. Enumerable.Range(0, hours).Select(i => c.Ends[i])], c.Kwh[..hours].ToArray(), new Quality[hours]) { Device = c.Device };
        var worth = Worth.ToDate(SmallSite.Site(), SmallSite.Of(Until(s_import, 21), Until(s_export, 21), Until(s_roof, 21)), SmallSite.Flat(0.30m, 0.10m));
        Assert.Equal(new DateSpan(SmallSite.Day, SmallSite.Day.PlusDays(1)), worth.Period);
    }

    [Fact]
    public void Own_hours_on_a_device_put_it_up_until_its_own_first_day()
    {
        // South went into service on 1 November 2022, the shed on 10 April 2023; hours without a device follow the first of them.
        LedgerEntry Hours(LocalDate on, string? device) => MixedSite.Entry(on, LedgerKind.OwnHours, 0) with { OwnHours = 1, Device = device };
        decimal Invested(params LedgerEntry[] hours) => Worth.ToDate(MixedSite.Place, MixedSite.Records(), MixedSite.Tariffs, Ledger.From([MixedSite.Entry(MixedSite.First, LedgerKind.Purchase, 100), .. hours])).WithOwnHours(Money.Nominal(10, s_euro)).Recovery.Invested.Amount - 100;
        var (first, later) = (MixedSite.First, new LocalDate(2023, 4, 10));
        Assert.Equal([10m, 0, 10, 0, 10, 0], new[] { Hours(first, "south"), Hours(first.PlusDays(1), "south"), Hours(later, "Shed"), Hours(later.PlusDays(1), "shed"), Hours(first, null), Hours(later, null) }.Select(h => Invested(h)));
    }

    private static LedgerEntry At(int month, LedgerKind kind, decimal amount) => new(new LocalDate(2023, month, 1), kind, Money.Nominal(amount, s_euro));

    /// <summary>The year site with another amount made at noon on each day, half of it sent.</summary>
    private static WorthToDate Days(Func<LocalDate, double> kwh)
    {
        Channel Daily(string name, FlowKind flow, double share)
        {
            Instant[] starts = [.. Enumerable.Range(0, 365 * 24).Select(h => YearSite.First.AtMidnight().InUtc().ToInstant() + Duration.FromHours(h))];
            return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. Enumerable.Range(0, 365 * 24).Select(h => h % 24 == 12 ? share * kwh(YearSite.First.PlusDays(h / 24)) : 0)], new Quality[365 * 24])
            {
                Device = flow == FlowKind.Generation ? name : null,
            };
        }
        return Worth.ToDate(YearSite.Place, new Readings([Daily("roof", FlowKind.Generation, 1), Daily("export", FlowKind.Export, 0.5), Daily("import", FlowKind.Import, 0)], [], []), YearSite.Tariffs, YearSite.Paid(1_000));
    }
}
