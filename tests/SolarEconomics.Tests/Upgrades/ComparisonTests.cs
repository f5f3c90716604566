using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: by hand on a year of equal days, the present values of TimeValue on the same dates, properties. No published comparison of household options carries its hours.
public sealed class ComparisonTests
{
    private static readonly LocalDate Start = new(2024, 1, 1);
    private static readonly Currency Eur = Currency.Of("EUR");
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain with { DiscountRate = 0.05 });

    private static readonly SwapOption Doubled = new("twice the modules", new PanelSwap("roof", NewKwp: 4, Cost: 300, On: Start));

    [Fact]
    public void A_flow_given_by_hand_is_worth_its_xnpv() => Gen.Select(Gen.Int[1, 6_000], Gen.Double[1, 900]).Array[1, 12].Sample(later =>
    {
        var flow = Flow([(0, -500m), .. later.DistinctBy(l => l.Item1).OrderBy(l => l.Item1).Select(l => (l.Item1, Math.Round((decimal)l.Item2, 2)))]);
        var result = Outlook.Compare(new FlowOption("by hand", flow)).Ranked[0];
        Assert.Equal((double)TimeValue.Xnpv(flow, Rate.Nominal(0.05)).Amount, (double)result.Npv.Amount, 0.006);
    }, iter: 50);

    [Fact]
    public void The_ratio_payback_and_break_even_price_are_those_by_hand() // -400, then 210 after 365 and 730 days at 5 %: 210/1.05 + 210/1.1025 = 390.476
    {
        var result = Outlook.Compare(new FlowOption("by hand", Flow((0, -400), (365, 210), (730, 210)))).Ranked[0];
        Assert.Equal(-9.52m, result.Npv.Amount);
        Assert.Equal(390.476190 / 400, result.Sir!.Value, 6);
        Assert.Equal(730 / 365.25, result.PaybackYears!.Value, 9);
        Assert.Equal(390.48m, result.BreakEvenPrice!.Value.Amount);
        Assert.Equal(400m, result.Invested.Amount);
    }

    [Fact]
    public void At_its_break_even_price_an_option_is_worth_nothing_more_than_doing_nothing()
    {
        var price = Outlook.Compare(Doubled).Ranked[0].BreakEvenPrice!.Value.Amount;
        Assert.Equal(0, (double)Outlook.Compare(Doubled with { Swap = Doubled.Swap with { Cost = price } }).Ranked[0].Npv.Amount, 0.01);
    }

    [Fact]
    public void At_its_flip_price_the_best_option_ties_with_the_next()
    {
        var other = new FlowOption("another", Flow((0, -100), (365, 300)));
        var c = Outlook.Compare(Doubled, other);
        Assert.Equal("twice the modules", c.Ranked[0].Option.Name);
        var flipped = Outlook.Compare(Doubled with { Swap = Doubled.Swap with { Cost = c.Ranked[0].FlipPrice!.Value.Amount } }, other);
        Assert.Equal((double)flipped.Ranked[0].Npv.Amount, (double)flipped.Ranked[1].Npv.Amount, 0.02);
    }

    [Fact]
    public void A_swap_as_an_option_is_worth_what_the_upgrade_says()
    {
        var upgrade = Outlook.Upgrade(Doubled.Swap);
        Assert.Equal(upgrade.Npv, Outlook.Compare(Doubled).Ranked[0].Npv);
        Assert.Equal(upgrade.PaybackYears, Outlook.Compare(Doubled).Ranked[0].PaybackYears);
    }

    [Fact]
    public void Money_spent_before_counts_in_no_option() =>
        Assert.Equal(Outlook.Compare(Doubled).Ranked[0].Npv, YearSite.Worth(cost: 50_000m).Outlook(Outlook.Assumptions).Compare(Doubled).Ranked[0].Npv);

    [Fact]
    public void A_needless_replacement_is_worth_its_discounted_cost() // by hand: 400 after 8 years from the first purchase, 7 from the records' end
    {
        var with = Doubled with { Avoids = [new Replacement("old inverter", 8, 400)] };
        var gain = Outlook.Compare(with).Ranked[0].Npv.Amount - Outlook.Compare(Doubled).Ranked[0].Npv.Amount;
        Assert.Equal(400 * Math.Pow(1.05, -(2922 - 365) / 365.0), (double)gain, 0.01);
    }

    [Fact]
    public void Waiting_beyond_the_failure_of_the_old_part_no_longer_avoids_it()
    {
        var option = Doubled with { Avoids = [new Replacement("old inverter", 3, 400)] };
        var plain = Outlook.Compare(Doubled.Waiting(3)).Ranked[0].Npv;
        Assert.Equal(plain, Outlook.Compare(option.Waiting(3)).Ranked[0].Npv);
        Assert.True(Outlook.Compare(option.Waiting(1)).Ranked[0].Npv.Amount > Outlook.Compare(Doubled.Waiting(1)).Ranked[0].Npv.Amount + 300);
    }

    [Fact]
    public void Waiting_two_years_at_ten_per_cent_less_a_year_costs_81_per_cent_of_the_price()
    {
        var later = (SwapOption)Doubled.Waiting(2, priceFallPerYear: 0.1);
        Assert.Equal(243m, later.Price, 9);
        Assert.Equal(new LocalDate(2026, 1, 1), later.From);
        Assert.Equal("twice the modules, 2 years later", later.Name);
        var sold = (SwapOption)(Doubled with { Swap = Doubled.Swap with { Displaced = Displaced.Sold(100) } }).Waiting(2, resaleFallPerYear: 0.2);
        Assert.Equal(64m, sold.Swap.Displaced.Received, 9);
    }

    [Fact]
    public void A_tariff_without_supply_charge_saves_just_that() // by hand: 1 kWh a day bought at 0.30, 1 sold at 0.10; import 0.05 cheaper saves 18.25 a year
    {
        var cheaper = Tariff.Flat("cheaper", "EUR", 0.25m, exportPerKwh: 0.10m, from: new LocalDate(2020, 1, 1));
        var outlook = YearSite.Worth().Outlook(YearSite.Plain);
        var result = outlook.Compare(new TariffOption("cheaper", cheaper, Start, Cost: 20)).Ranked[0];
        Assert.Equal((0.05 * 365.25 * 19) - 20, (double)result.Npv.Amount, 1.0);
    }

    [Fact]
    public void As_modules_age_a_tariff_with_cheaper_import_saves_more_and_one_with_dearer_export_less()
    {
        // By hand: at a yield y the home uses y kWh of its 1 kWh from the plant, buys 1 + (1 − y) and sells y a day. Import 0.05 cheaper saves 0.05 · (2 − y), export 0.05 dearer 0.05 · y.
        var outlook = YearSite.Worth().Outlook(YearSite.Plain with { Ageing = Ageing.Linear(0.01) });
        var days = Enumerable.Range(0, Period.DaysBetween(Start, new LocalDate(2043, 1, 1)));
        double Yield(int day) => (1 - (0.01 * (day + 365) / 365.25)) / (1 - (0.01 * 182 / 365.25));
        TariffOption Of(string name, decimal import, decimal export) => new(name, Tariff.Flat(name, "EUR", import, exportPerKwh: export, from: new LocalDate(2020, 1, 1)), Start);
        var cheaper = outlook.Compare(Of("cheaper", 0.25m, 0.10m)).Ranked[0].Npv.Amount;
        Assert.Equal(days.Sum(d => 0.05 * (2 - Yield(d))), (double)cheaper, 1.0);
        Assert.Equal(days.Sum(d => 0.05 * Yield(d)), (double)outlook.Compare(Of("pays more", 0.30m, 0.15m)).Ranked[0].Npv.Amount, 1.0);
        Assert.True((double)cheaper > 0.05 * 365.25 * 19 * 1.05);
    }

    [Fact]
    public void A_loan_at_the_discount_rate_leaves_the_owner_where_the_project_is() // a loan at the rate money is worth adds nothing
    {
        var monthly = Math.Pow(1.05, 1 / 12.0) - 1;
        var financed = Doubled with { Loan = new Loan(Money.Nominal(300, Eur), monthly, 60) };
        var result = Outlook.Compare(financed).Ranked[0];
        Assert.Equal((double)result.Npv.Amount, (double)result.OwnerNpv!.Value.Amount, 0.5);
        var dear = Outlook.Compare(Doubled with { Loan = new Loan(Money.Nominal(300, Eur), 0.01, 60) }).Ranked[0];
        Assert.True(dear.OwnerNpv!.Value.Amount < dear.Npv.Amount - 10);
    }

    [Fact]
    public void A_loan_that_runs_beyond_the_horizon_is_refused_with_both_days()
    {
        var e = Assert.Throws<ArgumentException>(() => Outlook.Compare(Doubled with { Loan = new Loan(Money.Nominal(300, Eur), 0.004, 300) }));
        Assert.Equal("twice the modules: found a loan whose last payment falls on 2049-01-01, expected one by 2043-01-01, the horizon: debt would be left out. Take more years.", e.Message);
    }

    [Fact]
    public void Where_ratio_or_payback_put_another_first_the_result_says_why()
    {
        var small = new FlowOption("a small thing", Flow((0, -10), (100, 40)));
        var c = Outlook.Compare(Doubled, small);
        Assert.Equal(["twice the modules", "a small thing"], c.Ranked.Select(r => r.Option.Name));
        Assert.Equal(2, c.Flips.Count);
        Assert.StartsWith("Per unit invested a small thing brings more (", c.Flips[0], StringComparison.Ordinal);
        Assert.Contains("payback does not count what comes after it, which is where twice the modules earns its €", c.Flips[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_is_worth_its_price_doing_nothing_is_best()
    {
        var c = Outlook.Compare(Doubled with { Swap = Doubled.Swap with { Cost = 9_000 } });
        Assert.True(c.DoNothingIsBest);
        var finding = c.Say(CultureInfo.InvariantCulture);
        Assert.Equal("Doing nothing", finding.Figure);
        Assert.Contains("It would be worth doing below a price of €", finding.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Under_a_budget_the_best_options_together_are_chosen()
    {
        var c = Outlook.Compare(Doubled, new FlowOption("a", Flow((0, -200), (365, 320))), new FlowOption("b", Flow((0, -150), (365, 240))) { Excludes = ["a"] });
        var choice = c.Within(Money.Nominal(380, Eur));
        Assert.Equal(["twice the modules"], choice.Chosen.Select(o => o.Name));
        Assert.Equal(["twice the modules", "b"], c.Within(Money.Nominal(460, Eur)).Chosen.Select(o => o.Name));
    }

    [Fact]
    public void Draws_of_an_option_without_spread_give_its_worth_and_pairs_give_the_odds()
    {
        var sure = new Uncertainties { WeatherSd = 0, Inputs = [OutlookInput.PriceGrowth.Is(Certain.Of(0))] };
        var few = new DrawOptions { MostDraws = 100 };
        Assert.Equal(Outlook.Compare(Doubled).Ranked[0].Npv, Outlook.HowSure(Doubled, sure, few).Middle);
        var open = new Uncertainties { Inputs = [OutlookInput.FeedInGrowth.Is(new NormalDistribution(0, 0.03))] };
        var now = Outlook.HowSure(Doubled, open, few);
        var later = Outlook.HowSure(Doubled.Waiting(2), open, few);
        Assert.InRange(now.Against(later).ChanceThatFirstWins, 0.9, 1);
    }

    [Fact]
    public void An_option_named_twice_or_before_the_records_end_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Outlook.Compare(Doubled, Doubled));
        Assert.StartsWith("Found a change on 2023-06-01", Assert.Throws<ArgumentOutOfRangeException>(() =>
            Outlook.Compare(new FlowOption("early", Flow((-214, -1), (10, 3))))).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found no option", Assert.Throws<ArgumentException>(() => Outlook.Compare()).Message, StringComparison.Ordinal);
    }

    private static DatedMoneyFlow Flow(params (int Day, decimal Amount)[] amounts) =>
        DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, amounts.Select(a => new DatedAmount(Start.PlusDays(a.Day), a.Amount)));
}
