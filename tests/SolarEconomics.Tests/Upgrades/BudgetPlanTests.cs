using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>By hand below; the naive twin and random instances stand in the tests of the solvers. No published table of such choices is at hand.</summary>
public class BudgetPlanTests
{
    private static readonly Currency s_eur = Currency.Of("EUR");

    [Fact]
    public void The_choice_worth_most_within_the_budget_is_found()
    {
        // By hand: battery and tariff 950 for 5,000; modules and tariff 1,150 for 4,200; all three cost 9,000.
        var choice = BudgetPlan.Best([Option("modules", 4000, 900), Option("battery", 4800, 700), Option("tariff", 200, 250)], Eur(5000));
        Assert.Equal(["modules", "tariff"], choice.Chosen.Select(o => o.Name));
        Assert.Equal(Eur(1150), choice.Worth);
        Assert.Equal(Eur(4200), choice.Cost);
        Assert.Equal(Eur(800), choice.Left);
        Assert.Equal("battery", Assert.Single(choice.LeftOut).Name);
    }

    [Fact]
    public void Options_that_exclude_each_other_never_stand_together_whichever_side_says_so()
    {
        BudgetOption[] options = [Option("small battery", 10, 5), Option("large battery", 20, 7) with { Excludes = ["Small battery"] }];
        Assert.Equal("large battery", Assert.Single(BudgetPlan.Best(options, Eur(100)).Chosen).Name);
    }

    [Fact]
    public void What_an_option_needs_is_chosen_with_it_even_at_a_loss()
    {
        BudgetOption[] options = [Option("array on the barn", 30, 50) with { Needs = ["trench"] }, Option("trench", 20, -20)];
        var choice = BudgetPlan.Best(options, Eur(50));
        Assert.Equal(2, choice.Chosen.Count);
        Assert.Equal(Eur(30), choice.Worth);
        Assert.Empty(BudgetPlan.Best(options, Eur(49)).Chosen);
    }

    [Fact]
    public void Nothing_is_chosen_where_doing_nothing_is_worth_most()
    {
        var choice = BudgetPlan.Best([Option("second battery", 10, -1)], Eur(100));
        Assert.Empty(choice.Chosen);
        Assert.Equal("€0", choice.Say(CultureInfo.InvariantCulture).Figure);
        Assert.Equal("is the best that €100 can do: no choice within it is worth more than doing nothing.", choice.Say(CultureInfo.InvariantCulture).Words);
    }

    [Fact]
    public void Of_choices_worth_the_same_the_cheaper_then_the_earlier_stands()
    {
        Assert.Equal("b", BudgetPlan.Best([Option("a", 11, 5), Option("b", 10, 5)], Eur(11)).Chosen.Single().Name);
        Assert.Equal("a", BudgetPlan.Best([Option("a", 10, 5), Option("b", 10, 5)], Eur(11)).Chosen.Single().Name);
    }

    [Fact]
    public void A_choice_says_itself_with_what_it_costs_and_leaves()
    {
        var said = BudgetPlan.Best([Option("modules", 4000, 900), Option("tariff", 200, 250)], Eur(5000)).Say(CultureInfo.InvariantCulture);
        Assert.Equal("+€1,150", said.Figure);
        Assert.Equal("is what the best choice within €5,000 is worth: modules and tariff, for €4,200. €800 of the budget is left.", said.Words);
        Assert.Contains(said.Cautions, c => c.Contains("advice", StringComparison.Ordinal));
    }

    [Fact]
    public void Wrong_options_are_named()
    {
        Assert.StartsWith("Found two options named \"A\"", Message([Option("a", 1, 1), Option("A", 1, 1)]), StringComparison.Ordinal);
        Assert.Equal("a: found that it needs \"batery\", expected one of the options: battery, a.",
            Message([Option("a", 1, 1) with { Needs = ["batery"] }, Option("battery", 1, 1)]));
        Assert.StartsWith("a: found that it excludes itself", Message([Option("a", 1, 1) with { Excludes = ["a"] }]), StringComparison.Ordinal);
        Assert.StartsWith("a: expected a cost of 0 or more.", Message([Option("a", -1, 1)]), StringComparison.Ordinal);
        Assert.StartsWith("Expected a budget of 0 or more.", Assert.ThrowsAny<ArgumentException>(() => BudgetPlan.Best([], Eur(-1))).Message, StringComparison.Ordinal);
        Assert.StartsWith("Found 21 options, expected at most 20", Message(Enumerable.Range(0, 21).Select(i => Option($"o{i}", 1, 1))), StringComparison.Ordinal);
        Assert.Throws<MixedMoneyException>(() => BudgetPlan.Best([new BudgetOption("a", Eur(1), Money.Nominal(1, Currency.Of("USD")))], Eur(1)));
    }

    private static string Message(IEnumerable<BudgetOption> options) =>
        Assert.ThrowsAny<ArgumentException>(() => BudgetPlan.Best(options, Eur(10))).Message;

    private static BudgetOption Option(string name, decimal cost, decimal worth) => new(name, Eur(cost), Eur(worth));

    private static Money Eur(decimal amount) => Money.Nominal(amount, s_eur);
}
