using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>At which value of one input, or of two, an option is worth just as much as doing nothing.</summary>
// Oracles: by hand (flows of three days, a year of like days), the option compared anew at each value found, TimeValue's rates of return, properties. Published: none for such options.
public sealed class OptionBreakEvenTests
{
    private static readonly LocalDate Start = new(2024, 1, 1);
    private static readonly Currency Eur = Currency.Of("EUR");
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain);
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    // 2 kWh more each noon, all exported at 0.10, over 6,940 days to 2043: 1,388.00 for 300.
    private static readonly SwapOption Doubled = new("twice the modules", new PanelSwap("roof", NewKwp: 4, Cost: 300, On: Start));

    [Fact]
    public void The_discount_rate_of_three_flows_is_that_of_a_quadratic() // 210/x + 210/x² = 400: x = (210 + √(210² + 4 · 400 · 210)) / 800
    {
        var even = Outlook.BreakEven(OutlookInput.DiscountRate.Between(0, 0.5), OutlookMeasure.WorthOf(Flow("by hand", (0, -400), (365, 210), (730, 210))));
        Assert.Equal(BreakEvenEnd.Found, even.End);
        Assert.Equal(((210 + Math.Sqrt((210.0 * 210) + (4 * 400 * 210))) / 800) - 1, even.Values[0], 9);
    }

    [Fact]
    public void The_discount_rate_is_the_rate_of_return_of_the_option() => Gen.Select(Gen.Int[100, 900], Gen.Int[30, 200].Array[12]).Sample((price, yearly) =>
    {
        var option = Flow("any", [(0, -price), .. yearly.Select((y, k) => ((k + 1) * 365, (decimal)y))]);
        var even = Outlook.BreakEven(OutlookInput.DiscountRate.Between(-0.4, 1), OutlookMeasure.WorthOf(option));
        _ = TimeValue.TryXirr(option.Flow, out var irr);
        if (irr.Roots[0].PerYear is > -0.4 and < 1) Assert.Equal(irr.Roots[0].PerYear, even.Values[0], 6);
        else Assert.NotEqual(BreakEvenEnd.Found, even.End);
    }, iter: 10);

    [Fact]
    public void Two_rates_of_return_are_both_found_and_said() // −100 · (x − 1.1)(x − 1.2) / x² = −100 + 230/x − 132/x²
    {
        var even = Outlook.BreakEven(OutlookInput.DiscountRate.Between(0, 0.5), OutlookMeasure.WorthOf(Flow("twice", (0, -100), (365, 230), (730, -132))));
        Assert.Equal(BreakEvenEnd.Several, even.End);
        Assert.Equal(0.1, even.Values[0], 8);
        Assert.Equal(0.2, even.Values[1], 8);
        Assert.StartsWith("are the values of the discount rate at which the worth of twice beside doing nothing is 0, so that one limit does not say where it pays: −€2 at the low end, −€5 at the high end.",
            even.Say(Plain).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Tax_feed_in_level_and_yield_of_a_swap_are_those_by_hand() // 1,388 · (1 − tax) = 300, and 1,388 · level = 300
    {
        var worth = OutlookMeasure.WorthOf(Doubled);
        Assert.Equal(1 - (300 / 1388.0), Outlook.BreakEven(OutlookInput.FeedInTaxRate.Between(0, 1), worth).Values[0], 6);
        Assert.Equal(300 / 1388.0, Outlook.BreakEven(OutlookInput.FeedInPriceLevel.Between(0, 2), worth).Values[0], 6);
        Assert.Equal(300 / 1388.0, Outlook.BreakEven(OutlookInput.YieldFactor.Between(0, 2), worth).Values[0], 6);
    }

    [Fact]
    public void A_rise_of_the_supply_charge_pays_for_leaving_the_tariff() // 0.05 a day over 6,940 days are 347; 500 − 347 = 153 from the rise
    {
        var leaving = new TariffOption("cheaper", Tariff.Flat("cheaper", "EUR", 0.25m, exportPerKwh: 0.10m, from: new LocalDate(2020, 1, 1)), Start, Cost: 500);
        var even = Outlook.BreakEven(OutlookInput.SupplyChargeRise.Between(0, 100), OutlookMeasure.WorthOf(leaving));
        Assert.Equal(153 * 365.25 / 6_940, even.Values[0], 2);
        // The whole plant is worth what it was: the charge is paid with it and without it.
        Assert.Equal(Outlook.Npv, Outlook.With(Outlook.Assumptions with { SupplyChargeRisePerYear = 40 }).Npv);
        var level = Outlook.BreakEven(OutlookInput.ImportPriceLevel.Between(0, 3), OutlookMeasure.WorthOf(leaving));
        Assert.Equal(500 / 347.0, level.Values[0], 2);
    }

    [Fact]
    public void The_horizon_is_the_first_whole_year_that_pays() // −400, then 210 in the last days of 2024 and of 2025: 20 ahead with 3 years from 2023
    {
        var even = Outlook.BreakEven(OutlookInput.Horizon.Between(2, 20), OutlookMeasure.WorthOf(Flow("by hand", (0, -400), (365, 210), (730, 210))));
        Assert.Equal([3.0], even.Values);
        Assert.Equal((-190m, 20m), (even.AtLow.Amount, even.AtHigh.Amount));
        var said = even.Say(Plain);
        Assert.Equal("3 years", said.Figure);
        Assert.StartsWith("is the horizon at which the worth of by hand beside doing nothing changes its sign. As it stands: 20 years.", said.Words, StringComparison.Ordinal);
        Assert.Contains("From 3 years on the worth of by hand beside doing nothing lies on the other side of 0; no whole number gives just 0.", said.Notes);
    }

    [Fact]
    public void Pairs_of_yield_and_feed_in_level_lie_on_a_hyperbola() // yield · level = 300/1,388
    {
        var line = Outlook.BreakEvenLine(OutlookInput.YieldFactor.Between(0.05, 1.05), OutlookInput.FeedInPriceLevel.Between(0, 3), steps: 11, OutlookMeasure.WorthOf(Doubled));
        Assert.Equal(10, line.Points.Count); // at 0.05 it would take a level of 4.3
        foreach (var (yield, level) in line.Points) Assert.Equal(300 / 1388.0, yield * level, 6);
        Assert.Equal([0.05], line.AlwaysBelow);
        var said = line.Say(Plain);
        Assert.Equal("10 of 11", said.Figure);
        Assert.Equal("Where the future generation is 5.0 %, the worth of twice the modules beside doing nothing stays below 0 for every value of the level of feed-in prices from 0.0 % to 300.0 %.", said.Notes[0]);
        Assert.Equal("At higher values of the level of feed-in prices than these the worth of twice the modules beside doing nothing is above 0, at lower ones below.", said.Notes[1]);
        Assert.All(line.GainsAbove, Assert.True);
    }

    [Fact]
    public void At_every_pair_found_the_option_compared_anew_is_worth_nothing() => Gen.Select(Gen.Int[150, 900], Gen.Double[0, 0.03]).Sample((cost, loss) =>
    {
        var outlook = Outlook.With(Outlook.Assumptions with { Ageing = Ageing.Compound(loss) });
        var option = Doubled with { Swap = Doubled.Swap with { Cost = cost } };
        var line = outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.08), OutlookInput.FeedInGrowth.Between(-0.5, 0.3), steps: 3, OutlookMeasure.WorthOf(option));
        Assert.NotEmpty(line.Points);
        foreach (var (rate, growth) in line.Points)
            Assert.InRange(outlook.With(outlook.Assumptions with { DiscountRate = rate, FeedInGrowth = growth }).Compare(option).Ranked[0].Npv.Amount, -0.01m, 0.01m);
    }, iter: 5);

    [Fact]
    public void Where_no_value_helps_it_says_whether_the_input_matters_and_which_way()
    {
        var small = OutlookMeasure.WorthOf(Flow("hopeless", (0, -100), (365, 10)));
        var none = Outlook.BreakEven(OutlookInput.FeedInTaxRate.Between(0, 1), small);
        Assert.Equal(BreakEvenEnd.AlwaysBelow, none.End);
        Assert.Contains("It is the same at both ends: the answer does not seem to hang on this input.", none.Say(Plain).Words, StringComparison.Ordinal);
        var nearer = Outlook.BreakEven(OutlookInput.DiscountRate.Between(0.01, 0.2), small);
        Assert.Contains("nearer to 0 at 1.0 % a year: a range that goes further down may hold a value.", nearer.Say(Plain).Words, StringComparison.Ordinal);
        var dear = OutlookMeasure.WorthOf(Doubled with { Swap = Doubled.Swap with { Cost = 9_000 } });
        Assert.Contains("nearer to 0 at 200.0 %, beyond which the input makes no sense.", Outlook.BreakEven(OutlookInput.YieldFactor.Between(0, 2), dear).Say(Plain).Words, StringComparison.Ordinal);
        Assert.StartsWith("value of the future generation that was tried from 0.0 % to 200.0 % goes with a value of the discount rate from 0.0 % a year to 10.0 % a year at which the worth of",
            Outlook.BreakEvenLine(OutlookInput.YieldFactor.Between(0, 2), OutlookInput.DiscountRate.Between(0, 0.1), 3, dear).Say(Plain).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_swap_follows_steps_tax_and_the_end_of_a_guarantee_as_the_outlook_does() // by hand: 3,288 days to 2033 at 0.10 · 2, then 3,652 at 0.04 · 2, a quarter of it all in tax
    {
        var a = Outlook.Assumptions with { FeedInTaxRate = 0.25, FeedInGuarantee = new FeedInGuarantee(new LocalDate(2033, 1, 1), 0.04m) };
        Assert.Equal((0.75 * ((3_288 * 0.2) + (3_652 * 0.08))) - 300, (double)Outlook.With(a).Compare(Doubled).Ranked[0].Npv.Amount, 0.02);
    }

    [Fact]
    public void The_horizon_is_not_drawn_and_its_range_has_whole_ends()
    {
        Assert.Equal("horizon: found odds for it, expected a range: it is chosen, not left to chance. Give it two ends with Between, or set it in the assumptions.",
            Assert.Throws<ArgumentException>(() => OutlookInput.Horizon.Is(new NormalDistribution(20, 3))).Message);
        Assert.Equal("horizon: found a range from 2.5 to 20, expected whole numbers at both ends.", Assert.Throws<ArgumentException>(() => OutlookInput.Horizon.Between(2.5, 20)).Message);
    }

    private static FlowOption Flow(string name, params (int Day, decimal Amount)[] amounts) =>
        new(name, DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, amounts.Select(a => new DatedAmount(Start.PlusDays(a.Day), a.Amount))));
}
