using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What an outlook, its payback, its curve and its bridge say of themselves. A year of equal days is worth 146.00: 109.50 saved and 36.50 paid for export.</summary>
public sealed class OutlookWordsTests
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;
    private static readonly WorthToDate Year = YearSite.Worth();

    [Fact]
    public void An_outlook_says_its_present_value_its_return_and_its_position()
    {
        var said = Year.Outlook(YearSite.Plain with { Years = 4 }).Say(Plain);
        // Undiscounted: four years of 146.00 (and of one day in 2024) less 1,000.
        Assert.Equal("−€416", said.Figure);
        Assert.StartsWith("net present value at the first purchase, at 0.0 % a year; a return of −", said.Words, StringComparison.Ordinal);
        Assert.EndsWith(" a year; €416 still open after 4 years, undiscounted.", said.Words, StringComparison.Ordinal);
        Assert.EndsWith(" a year; €1,922 ahead after 20 years, undiscounted.", Year.Outlook(YearSite.Plain).Say(Plain).Words, StringComparison.Ordinal);
        Assert.Equal([Cautions.Money], said.Cautions);
        Assert.Equal(
        [
            "Horizon 4 years from the first purchase; ageing 0 % a year of what is left; import price 0.0 %, feed-in 0.0 %, costs 0.0 % a year.",
            "Running costs €0 a year at today's prices, the mean of the ledger so far.", "No replacement is assumed.",
            "The future repeats what the records say of each calendar month; generation lost to age is taken from use and export in proportion.",
        ], said.Notes);
    }

    [Fact]
    public void A_table_shows_each_year_by_category()
    {
        var table = Assert.Single(Year.Outlook(YearSite.Plain with { Years = 3, RunningCostsPerYear = 20, ResidualValue = 50, Replacements = [new Replacement("inverter", 2.5, 400)] }).Say(Plain).Tables);
        Assert.Equal("Flows by year from the first purchase (EUR of the day)", table.Caption);
        Assert.Equal(["Year from", "Investment", "Savings", "Feed-in", "Running", "Replacement", "Income", "Position", "From"], table.Columns);
        Assert.Equal(["1 Jan 2023", "−€1,000", "€110", "€37", "€0", "€0", "€0", "−€854", "records"], table.Rows[0]);
        Assert.Equal(["1 Jan 2024", "€0", "€110", "€37", "−€20", "€0", "€0", "−€728", "outlook"], table.Rows[1]);
        Assert.Equal(["−€400", "€50", "−€952", "outlook"], table.Rows[2].Skip(5));
        Assert.Equal(3, table.Rows.Count);
    }

    [Fact]
    public void Every_assumption_that_is_made_stands_in_a_note()
    {
        var a = YearSite.Plain with
        {
            Years = 12, PriceGrowth = 0.03, FeedInGrowth = 0.01, CostGrowth = 0.02, RunningCostsPerYear = 20, Replacements = [new Replacement("inverter", 8, 400), new Replacement("fan", 9.5, 25)],
            WearingParts = [new WearingPart("pump", 80, WeibullDistribution.OfMean(9, 3), YearSite.First)], PriceSteps = [new PriceStep(new LocalDate(2026, 1, 1), 1.08, 0.9)],
            FeedInGuarantee = new FeedInGuarantee(new LocalDate(2030, 1, 1), 0.04m), FeedInTaxRate = 0.2, AvoidedSupplyChargePerYear = 100, YieldFactor = 0.95, Ageing = Ageing.Compound(0.01),
        };
        Assert.Equal(
        [
            "Horizon 12 years from the first purchase; ageing 1 % a year of what is left; import price 3.0 %, feed-in 1.0 %, costs 2.0 % a year.",
            "Running costs €20 a year at today's prices, as stated.",
            "Replacements: inverter after 8.0 years, €400; fan after 9.5 years, €25.",
            "pump: replaced as it fails, mean life 9.0 years, €80 each; the expected cost is spread over the years.",
            "From 1 Jan 2026 import prices 8.0 % and feed-in −10.0 % beside the growth.",
            "The guaranteed feed-in rate ends on 1 Jan 2030; after it €0.04 a kWh at today's prices.",
            "20.0 % of what is paid for export goes in tax, as stated.",
            "Supply charges of €100 a year are avoided, as stated: the connection is given up.",
            "Future generation 95.0 % of what the records say.",
            "The future repeats what the records say of each calendar month; generation lost to age is taken from use and export in proportion.",
        ], Year.Outlook(a).Say(Plain).Notes);
    }

    [Theory]
    [InlineData(SolveEnd.NoSignChange, "the flows never change sign")]
    [InlineData(SolveEnd.NoRealRoot, "no rate brings the flows to 0")]
    [InlineData(SolveEnd.SeveralRoots, "several rates bring the flows to 0: 10.0 %, 20.0 %")]
    [InlineData(SolveEnd.NotConverged, "the search did not settle")]
    [InlineData(SolveEnd.Root, "one rate")]
    public void How_the_search_for_a_rate_ended_is_said(SolveEnd end, string words) =>
        Assert.Equal(words, OutlookWords.EndInWords(new IrrResult([Rate.Nominal(0.1), Rate.Nominal(0.2)], end, 1, 0, 2), CultureInfo.InvariantCulture));

    [Fact]
    public void A_payback_says_its_day_and_what_the_straight_line_says()
    {
        var payback = Year.Outlook(YearSite.Plain).Payback;
        var said = payback.Say(Plain);
        // 1,000 at 0.40 a day are 2,500 days: 6 November 2029. The straight line: 1,000 at 219.15 a year.
        Assert.Equal("6.8 years", said.Figure);
        Assert.Equal("after the first purchase, on 6 Nov 2029, and for good from then on. With money at 0.0 % a year: 6.8 years. The straight line says 4.6 years: it prices every kWh as if it had been bought.", said.Words);
        Assert.Equal((new LocalDate(2029, 11, 6), 20), (payback.LastingDate, payback.HorizonYears));
        Assert.Equal(["Undiscounted, in money of the day, all receipts and running costs in."], said.Notes);
        Assert.Equal([Cautions.Money], said.Cautions);
    }

    [Fact]
    public void Several_rates_are_written_as_the_reader_writes_numbers() => Assert.Equal(
        "several rates bring the flows to 0: 10,0 %, 20,0 %",
        OutlookWords.EndInWords(new IrrResult([Rate.Nominal(0.1), Rate.Nominal(0.2)], SolveEnd.SeveralRoots, 1, 0, 2), CultureInfo.GetCultureInfo("de-DE")));

    [Fact]
    public void A_payback_that_later_costs_undo_says_the_first_time_too()
    {
        // 400 more at 0.40 a day are 1,000 days more: 2 August 2032.
        var said = Year.Outlook(YearSite.Plain with { Replacements = [new Replacement("inverter", 8, 400)], DiscountRate = 0.2 }).Payback.Say(Plain);
        Assert.StartsWith("after the first purchase, on 2 Aug 2032, and for good from then on. A first time after 6.8 years, before later costs opened the account again. With money at 20.0 % a year: not within 20 years.",
            said.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_payback_beyond_the_horizon_says_what_is_open()
    {
        // 9,000 less 20 years, 7,305 days, at 0.40: 6,078.
        var said = YearSite.Worth(9_000).Outlook(YearSite.Plain with { DiscountRate = 0.05 }).Payback.Say(Plain);
        Assert.Equal("Not within 20 years", said.Figure);
        Assert.Equal("of the first purchase: at the horizon €6,078 are still open. With money at 5.0 % a year: not within 20 years. The straight line says 41.1 years: it prices every kWh as if it had been bought.", said.Words);
        Assert.Equal([Cautions.Money], said.Cautions);
    }

    [Fact]
    public void The_curve_runs_month_by_month_from_the_purchase_to_the_horizon()
    {
        var outlook = Year.Outlook(YearSite.Plain with { Years = 3 });
        var curve = outlook.CashCurve();
        Assert.Equal(37, curve.Points.Count);
        Assert.Equal([new LocalDate(2023, 1, 1), new LocalDate(2023, 2, 1)], curve.Points.Take(2).Select(p => p.Date));
        Assert.Equal((new LocalDate(2026, 1, 1), -1_000m + 438.40m), (curve.Points[^1].Date, curve.Points[^1].Position.Amount));
        Assert.Equal((-1_000m, -1_000m + 12.40m), (curve.Points[0].Position.Amount, curve.Points[1].Position.Amount));
        Assert.Equal(31 / 365.25, curve.Points[1].Years, 12);
        Assert.Equal([true, false], curve.Points.Skip(12).Take(2).Select(p => p.IsRecorded));
        // The straight line: 219.15 a year.
        Assert.Equal(37, curve.StraightLine.Count);
        Assert.Equal(-1_000 + (219.15 * 1096 / 365.25), (double)curve.StraightLine[^1].Position.Amount, 0.02);
        Assert.Equal(1_000 / 219.15, curve.StraightLinePaybackYears!.Value, 4);
        Assert.Equal("Flows by year from the first purchase (EUR of the day)", Assert.Single(curve.Say(Plain).Tables).Caption);
        Assert.Equal(("Not within 3 years", 3), (curve.Say(Plain).Figure, curve.Payback.HorizonYears));
    }

    [Fact]
    public void The_bridge_of_an_outlook_says_each_correction_and_the_payback_after_it()
    {
        var said = Year.Outlook(YearSite.Plain with { Replacements = [new Replacement("inverter", 5, 400)] }).Bridge().Say(Plain);
        Assert.Equal("€400 still open", said.Figure);
        Assert.Equal("on the day that the recorded pace calls paid back, after 6.8 years. Modules yield less with age (0 % a year of what is left): €0. Parts replaced by then (inverter): −€400. " +
            "The latest prices, growing by 0.0 % a year (feed-in 0.0 %, costs 0.0 %): €0. Money later is worth less: at 0.0 % a year, €0.", said.Words);
        var table = Assert.Single(said.Tables);
        Assert.Equal("Cash position on that day, one correction after another (EUR)", table.Caption);
        Assert.Equal("Lasting payback", table.Columns[^1]);
        // 1,400 at 0.40 a day: 3,500 days.
        Assert.Equal(
        [
            ["Straight line", "€0", "", "", ""], ["Ageing", "€0", "€0", "€0 to €0", "paid back after 6.8 years, 6 Nov 2029"], ["Replacements", "−€400", "−€400", "−€400 to −€400", "paid back after 9.6 years, 2 Aug 2032"],
            ["Price path", "€0", "€0", "€0 to €0", "paid back after 9.6 years, 2 Aug 2032"], ["Time value", "€0", "€0", "€0 to €0", "paid back after 9.6 years, 2 Aug 2032"], ["Honest answer", "−€400", "", "", ""],
        ], table.Rows);
        Assert.Equal(["Each correction is the difference of two full recomputations of all years.", "No effect of the value to date stands in this bridge."], said.Notes);
        Assert.Equal([Cautions.Money], said.Cautions);
    }

    [Fact]
    public void A_bridge_that_is_not_paid_back_stands_at_the_horizon()
    {
        var said = YearSite.Worth(9_000).Outlook(YearSite.Plain).Bridge().Say(Plain);
        Assert.Equal("€6,078 still open", said.Figure);
        Assert.StartsWith("at the horizon, after 20.0 years; the recorded pace alone is not paid back by then. ", said.Words, StringComparison.Ordinal);
        Assert.Contains("No replacement is assumed; an inverter or a battery seldom lasts to the horizon.", said.Words, StringComparison.Ordinal);
        Assert.All(said.Tables[0].Rows.Skip(1).SkipLast(1), row => Assert.Equal("after the horizon, short by €6,078 at its end", row[^1]));
        // Where more is spent each year than comes in, the position falls to the end.
        var falling = YearSite.Worth(9_000).Outlook(YearSite.Plain with { RunningCostsPerYear = 200 }).Bridge().Say(Plain);
        Assert.StartsWith("never, short by ", falling.Tables[0].Rows[1][^1], StringComparison.Ordinal);
        Assert.EndsWith(" at the end of life", falling.Tables[0].Rows[1][^1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_flow_of_an_outlook_is_the_net_of_its_years()
    {
        var outlook = Year.Outlook(YearSite.Plain with { Years = 3 });
        Assert.Equal([-854.00, 146.40, 146.00], outlook.Flow.Span.ToArray().Select(a => Math.Round(a, 2)));
        Assert.Equal(["2023 -854.00", "2024 146.40", "2025 146.00"], outlook.YearsAhead.Select(y => FormattableString.Invariant($"{y.Start.Year} {y.Net.Amount:0.00}")));
    }
}
