using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What the value to date and the outlook say of themselves. A year of equal days is worth 365 · (0.30 + 0.10) = 146.00; counters times one price say 730 · 0.30 = 219.00.</summary>
public sealed class WorthWordsTests
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;
    private static readonly Currency Euro = Currency.Of("EUR");
    private static readonly WorthToDate Year = YearSite.Worth();
    private static readonly WorthToDate WithReceipts = YearSite.Worth(1_000m, Entry(2, LedgerKind.Grant, 200), Entry(6, LedgerKind.Repair, 30), Entry(7, LedgerKind.Sale, 12));
    private static readonly WorthToDate NothingOnGeneration =
        Worth.ToDate(SmallSite.Site(), SmallSite.Of(SmallSite.Hours("import", FlowKind.Import, (20, 1.0)), SmallSite.Hours("export", FlowKind.Export, (12, 30.0))), SmallSite.Flat(0.30m, 0.10m));

    [Fact]
    public void The_value_says_its_days_its_range_and_what_is_still_open()
    {
        var said = Year.Say(Plain);
        Assert.Equal("€146", said.Figure);
        Assert.Equal("from 1 Jan 2023 to 31 Dec 2023, between €146 and €146 as the records allow. Counters times one price say €219. All receipts in, €854 are still open. No further record would narrow it.", said.Words);
        Assert.Equal([Cautions.Money, Cautions.Records], said.Cautions);
        Assert.Equal(Year.Notes, said.Notes);
        Assert.EndsWith("All receipts in, €46 are ahead. No further record would narrow it.", YearSite.Worth(100).Say(Plain).Words, StringComparison.Ordinal);
        Assert.Contains("as the records allow; €116 after running costs of €30. Counters", WithReceipts.Say(Plain).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_tells_the_generation_the_value_is_at_least_the_export_and_the_record_to_add_is_named()
    {
        // 30 kWh sent at 0.10.
        var said = NothingOnGeneration.Say(Plain);
        Assert.Equal("at least €3", said.Figure);
        Assert.Equal("from 3 Jun 2024 to 3 Jun 2024; the records cannot tell more: nothing says how much was generated, so what was used on site is unknown. " +
            "What would narrow it most: generation by interval, or the readings of the inverter's lifetime counter.", said.Words);
        Assert.Equal([Cautions.Money, Cautions.Records], said.Cautions);
        Assert.Equal(NothingOnGeneration.Notes, said.Notes);
        Assert.Empty(NothingOnGeneration.ByDevice);
    }

    [Fact]
    public void A_table_says_where_the_generation_went()
    {
        var table = Year.Say(Plain).Tables[0];
        Assert.Equal(("Where the generation went", "Destination, Energy, Share"), (table.Caption, string.Join(", ", table.Columns)));
        Assert.Equal(
        [
            ["Used on site at once", "365 kWh", "50.0 %"], ["Used on site from the battery", "0 kWh", "0.0 %"], ["Exported", "365 kWh", "50.0 %"],
            ["Lost in storage, conversion and standby", "0 kWh", "0.0 %"], ["All generation at the board", "730 kWh", "100.0 %"], ["Curtailed", "none on record", ""],
        ], table.Rows);
    }

    [Fact]
    public void A_table_says_what_was_paid_and_came_back_with_the_rate_of_return_so_far()
    {
        var table = WithReceipts.Say(Plain).Tables[1];
        Assert.Equal(("Cash from the first purchase to 31 Dec 2023 (EUR)", "What, Amount"), (table.Caption, string.Join(", ", table.Columns)));
        // Each month's savings arrive when it ends: 0.40 a day.
        List<(LocalDate Day, double Amount)> flow =
        [
            (YearSite.First, -1_000), (new LocalDate(2023, 2, 1), 200), (new LocalDate(2023, 6, 1), -30), (new LocalDate(2023, 7, 1), 12),
            .. Enumerable.Range(1, 12).Select(m => (YearSite.First.PlusMonths(m), 0.4 * DateTime.DaysInMonth(2023, m))),
        ];
        var ordered = flow.OrderBy(f => f.Day).ToList();
        var rate = TimeValue.Xirr([.. ordered.Select(f => f.Amount)], [.. ordered.Select(f => f.Day)]);
        Assert.Equal(
        [
            ["Purchases less grants", "−€800"], ["Running, repairs, insurance", "−€30"], ["Sales and other income", "€12"], ["Value of the energy", "€146"], ["Cash so far", "−€672"],
            ["Rate of return so far, as if the plant were worth nothing today", Wording.Percent(rate, Plain) + " a year"],
        ], table.Rows);
    }

    [Fact]
    public void Sold_today_the_rate_of_return_counts_what_the_plant_brings()
    {
        var rows = YearSite.Worth(1_000m, resaleToday: 900).Say(Plain).Tables[1].Rows;
        Assert.Equal("Rate of return so far, sold today for €900", rows[^1][0]);
        // 146 in the course of the year and 900 at its end for 1,000: 900 + 146 is 4.6 % more, somewhat more as it comes earlier.
        Assert.InRange(double.Parse(rows[^1][1].Split(' ')[0], Plain), 4.6, 5.0);
    }

    [Fact]
    public void A_table_says_what_each_kind_of_record_allows()
    {
        var table = Year.Say(Plain).Tables[2];
        Assert.Equal(("What the records allow (EUR)", "Records used, Lowest, Highest, Ends"), (table.Caption, string.Join(", ", table.Columns)));
        Assert.Equal(["counters and prices", "monthly totals", "interval generation", "interval import, export and generation"], table.Rows.Select(r => r[0]));
        Assert.Equal(["interval import, export and generation", "€146", "€146", "flows"], table.Rows[3]);
        Assert.Equal(3, Year.Say(Plain).Tables.Count);
    }

    [Fact]
    public void A_table_says_how_much_each_further_record_would_narrow_the_range()
    {
        // Of the two hours that made something, the reading of noon is missing, when 1 kWh was sent.
        var roof = new Device("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 5, InService = SmallSite.Day };
        var worth = Worth.ToDate(SmallSite.Site(roof), SmallSite.Of(SmallSite.Hours("import", FlowKind.Import, (20, 1.0)), SmallSite.Hours("export", FlowKind.Export, (12, 1.0)),
            SmallSite.Hours("roof", FlowKind.Generation, (11, 1.0), (12, double.NaN))), SmallSite.Flat(0.30m, 0.10m));
        var said = worth.Say(Plain);
        var by = Wording.Whole(worth.Range.Width!.Value, Plain);
        Assert.EndsWith($" What would narrow it most: interval readings of roof for the 1 day without (by {by}).", said.Words, StringComparison.Ordinal);
        var table = said.Tables[^1];
        Assert.Equal(("What would narrow it (EUR)", "Further record, Narrower by"), (table.Caption, string.Join(", ", table.Columns)));
        Assert.Equal(["interval readings of roof for the 1 day without", by], table.Rows[0]);
        Assert.Contains("roof: 1 hour without a reading; bounded by its counter and the clear sky.", worth.Notes);
    }

    [Fact]
    public void A_kWh_of_a_device_is_worth_its_share_of_the_value()
    {
        var roof = Assert.Single(WithReceipts.ByDevice);
        Assert.Equal(("roof", 730.0, 146.00m, 0.20m), (roof.Device, roof.GeneratedKwh, roof.Value.Amount, roof.ValuePerKwh!.Value.Amount));
        Assert.Equal(0m, roof.Paid!.Value.Amount);
        Assert.Null((roof with { GeneratedKwh = 0 }).ValuePerKwh);
    }

    [Fact]
    public void What_was_spent_and_came_back_is_said_with_what_would_be_gone_for_good()
    {
        var said = WithReceipts.Recovery.Say(Plain);
        Assert.Equal(("€672", "is still to recover: €830 were spent, €158 have come back. What is spent is spent: it counts for no decision from here on."), (said.Figure, said.Words));
        Assert.Equal(("Spent and come back (EUR, money of the day)", "What, Amount"), (said.Tables[0].Caption, string.Join(", ", said.Tables[0].Columns)));
        Assert.Equal([["Purchases less grants", "€800"], ["Running costs", "€30"], ["Value of the energy", "€146"], ["Sales and other income", "€12"], ["Still to recover", "€672"]], said.Tables[0].Rows);
        Assert.Equal([Cautions.Money], said.Cautions);
        Assert.EndsWith("Sold today, €600 of what was invested would be gone for good.", YearSite.Worth(1_000m, resaleToday: 400).Recovery.Say(Plain).Words, StringComparison.Ordinal);
        var ahead = YearSite.Worth(100).Recovery.Say(Plain);
        Assert.Equal("€46", ahead.Figure);
        Assert.StartsWith("have come back beyond what was spent: €146 against €100.", ahead.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_failure_says_its_receipts_and_its_lost_energy()
    {
        var worth = YearSite.Worth(1_000m, Entry(6, LedgerKind.Part, 30.5m) with { Device = "roof" });
        var said = worth.CostOfFailure("roof", new DateSpan(new LocalDate(2023, 6, 1), new LocalDate(2023, 6, 4)), lostKwh: 50).Say(Plain);
        // 50 kWh at 0.20, the mean of half used at 0.30 and half sold at 0.10.
        Assert.Equal(("€41", "is what the failure of roof cost: €31 for parts and work, €10 for 50 kWh that were not made in 3 days (1 Jun 2023 to 3 Jun 2023)."), (said.Figure, said.Words));
        Assert.Equal(("Receipts of the failure (EUR)", "Day, Kind, Amount"), (said.Tables[0].Caption, string.Join(", ", said.Tables[0].Columns)));
        Assert.Equal([["1 Jun 2023", "part", "€30.50"]], said.Tables[0].Rows);
        Assert.Equal(["Lost energy as stated.", "Receipts of the device from the first day down to 90 days after the last; a refused claim moves no money."], said.Notes);
        Assert.Equal([Cautions.Money, Cautions.Records], said.Cautions);
    }

    [Fact]
    public void The_bridge_to_the_value_says_its_largest_correction_and_lists_all()
    {
        var said = WithReceipts.Bridge().Say(Plain);
        Assert.Equal("€116", said.Figure);
        Assert.Equal("so far, where counters times one price say €219. The largest correction: 365 kWh were exported at the feed-in rate and 0 kWh lost; only the rest avoided a purchase: −€73.", said.Words);
        Assert.Equal("Value to date, one correction after another (EUR)", said.Tables[0].Caption);
        Assert.Equal(["Correction", "In this order", "Average over all orders", "Range over all orders", "Payback at this pace, and open at the straight line's date"], said.Tables[0].Columns);
        // 800 paid: 219.15 a year pay it in 3.65 years; at two thirds of the pace a third, 267, is open then.
        Assert.Equal(
        [
            ["Straight line", "€219", "", "", ""], ["Counted elsewhere", "€0", "€0", "€0 to €0", "3.7 years, €0 open"], ["Sold or lost, not used", "−€73", "−€73", "−€73 to −€73", "5.5 years, €267 open"],
            ["Standby", "€0", "€0", "€0 to €0", "5.5 years, €267 open"], ["Prices then", "€0", "€0", "€0 to €0", "5.5 years, €267 open"], ["Tax reclaimed", "€0", "€0", "€0 to €0", "5.5 years, €267 open"],
            ["Running costs", "−€30", "−€30", "−€30 to −€30", "6.9 years, €376 open"], ["Honest answer", "€116", "", "", ""],
        ], said.Tables[0].Rows);
        Assert.Equal(2, said.Notes.Count);
    }

    private static LedgerEntry Entry(int month, LedgerKind kind, decimal amount) => new(new LocalDate(2023, month, 1), kind, Money.Nominal(amount, Euro));
}
