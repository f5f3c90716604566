using CsCheck;

namespace SolarEconomics.Solvers.Tests;

public class IntegerPlanTests
{
    private static readonly Currency s_eur = Currency.Of("EUR");

    [Fact]
    public void The_integer_program_and_the_enumeration_choose_the_same_on_random_options() =>
        Instances(most: 9).Sample(c =>
        {
            var byProgram = IntegerPlan.Best(c.Options, c.Budget);
            Assert.Equal(Names(BudgetPlan.Best(c.Options, c.Budget)), Names(byProgram));
        }, iter: 150, threads: 1);

    [Fact]
    public void The_enumeration_agrees_with_a_naive_walk_over_all_subsets() =>
        Instances(most: 8).Sample(c =>
        {
            var choice = BudgetPlan.Best(c.Options, c.Budget);
            Assert.Equal(Naive(c.Options, c.Budget), (choice.Worth.Amount, choice.Cost.Amount));
        }, iter: 300);

    [Fact]
    public void Sixty_options_are_chosen_exactly()
    {
        // Worth equal to cost in every option: the best is the largest sum of the even costs that an odd budget leaves room for, one short of it.
        var options = Enumerable.Range(0, 60).Select(i => new BudgetOption($"o{i}", Eur(2 * (100 + (37 * i % 61))), Eur(2 * (100 + (37 * i % 61)))));
        Assert.Equal(Eur(4000), IntegerPlan.Best(options, Eur(4001)).Worth);
    }

    [Fact]
    public void A_thousandth_of_a_cent_decides()
    {
        BudgetOption[] options = [new("a", Eur(10), Eur(1.00000m)), new("b", Eur(10), Eur(1.00001m))];
        Assert.Equal("b", IntegerPlan.Best(options, Eur(10)).Chosen.Single().Name);
    }

    [Fact]
    public void Amounts_that_no_integer_holds_are_refused_in_words() =>
        Assert.Contains("expected at most 17 digits in all", Assert.Throws<ArgumentOutOfRangeException>(
            () => IntegerPlan.Best([new BudgetOption("a", Eur(1), Eur(123456.1234567890123m))], Eur(10))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_search_that_was_cancelled_gives_no_answer() =>
        Assert.ThrowsAny<OperationCanceledException>(() => IntegerPlan.Best([new BudgetOption("a", Eur(1), Eur(1))], Eur(1), new CancellationToken(canceled: true)));

    [Fact]
    public void No_options_leave_the_budget_as_it_is() => Assert.Equal(Eur(5), IntegerPlan.Best([], Eur(5)).Left);

    // Few different amounts make many ties; exclusions and needs are drawn as index pairs.
    private static Gen<(List<BudgetOption> Options, Money Budget)> Instances(int most) =>
        from count in Gen.Int[1, most]
        from costs in Gen.Int[0, 6].Array[count]
        from worths in Gen.Int[-3, 6].Array[count]
        from excludes in Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1]).Array[0, 4]
        from needs in Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1]).Array[0, 3]
        from budget in Gen.Int[0, 14]
        select (Enumerable.Range(0, count).Select(i => new BudgetOption($"o{i}", Eur(costs[i]), Eur(worths[i] / 2m))
        {
            Excludes = [.. excludes.Where(p => p.Item1 == i && p.Item2 != i).Select(p => $"o{p.Item2}")],
            Needs = [.. needs.Where(p => p.Item1 == i && p.Item2 != i).Select(p => $"o{p.Item2}")],
        }).ToList(), Eur(budget));

    private static (decimal Worth, decimal Cost) Naive(List<BudgetOption> options, Money budget) =>
        Enumerable.Range(0, 1 << options.Count)
            .Select(bits => options.Where((_, i) => (bits & (1 << i)) != 0).ToList())
            .Where(set => set.Sum(o => o.Cost.Amount) <= budget.Amount
                && set.All(o => o.Needs.All(n => set.Any(other => other.Name == n)) && !o.Excludes.Any(n => set.Any(other => other.Name == n))))
            .Select(set => (Worth: set.Sum(o => o.Worth.Amount), Cost: set.Sum(o => o.Cost.Amount)))
            .OrderByDescending(sums => sums.Worth).ThenBy(sums => sums.Cost).First();

    private static List<string> Names(BudgetChoice choice) => [.. choice.Chosen.Select(o => o.Name)];

    private static Money Eur(decimal amount) => Money.Nominal(amount, s_eur);
}
