using CsCheck;

namespace SolarEconomics.Tests;

/// <summary>Ageing by hand, against a fine sum, by properties. Published rows are in PublishedAgeingTests.</summary>
public sealed class AgeingTests
{
    private static readonly Gen<Ageing> Rules =
        Gen.Select(Gen.Double[0, 0.05], Gen.Bool, Gen.Double[0, 0.1], Gen.Bool).Select((loss, compound, first, stepped) =>
        {
            var rule = compound ? Ageing.Compound(loss) : Ageing.Linear(loss);
            return stepped ? rule.WithFirstYear(first) : rule;
        });

    [Fact]
    public void After_a_first_year_of_2_percent_the_loss_goes_on_from_98_percent()
    {
        Assert.Equal(0.98 * 0.995 * 0.995, Ageing.Compound(0.005).WithFirstYear(0.02).FactorAt(3), 12);
        Assert.Equal(0.97, Ageing.Linear(0.005).WithFirstYear(0.02).FactorAt(3), 12);
        Assert.Equal(0.99, Ageing.Linear(0.005).WithFirstYear(0.02).FactorAt(0.5), 12);
    }

    [Fact]
    public void Without_a_loss_nothing_ages() => Assert.Equal(1, Ageing.None.FactorAt(100));

    [Fact]
    public void A_straight_line_ends_at_nothing_and_not_below() => Assert.Equal(0, Ageing.Linear(0.02).FactorAt(60));

    [Fact]
    public void A_factor_starts_at_1_never_rises_and_stays_within_0_and_1() => Gen.Select(Rules, Gen.Double[0, 100], Gen.Double[0, 100]).Sample((rule, a, b) =>
    {
        var (early, late) = (rule.FactorAt(Math.Min(a, b)), rule.FactorAt(Math.Max(a, b)));
        return rule.FactorAt(0) == 1 && early >= late && late >= 0;
    });

    [Fact]
    public void The_mean_factor_is_the_mean_of_many_small_steps() => Gen.Select(Rules, Gen.Double[0, 60], Gen.Double[0.01, 30]).Sample((rule, from, length) =>
    {
        const int Steps = 4000;
        var naive = Enumerable.Range(0, Steps).Average(i => rule.FactorAt(from + (i + 0.5) * length / Steps));
        return Math.Abs(rule.MeanFactor(from, from + length) - naive) < 1e-6;
    }, iter: 200);

    [Fact]
    public void A_loss_too_small_to_be_seen_gives_no_number_that_is_none() => Assert.Equal(1, Ageing.Compound(1e-20).MeanFactor(0, 25), 12);

    [Fact]
    public void The_mean_over_no_time_is_the_factor() => Assert.Equal(Ageing.Compound(0.01).FactorAt(3), Ageing.Compound(0.01).MeanFactor(3, 3));

    [Fact]
    public void A_loss_of_06_is_asked_back() =>
        Assert.StartsWith("Found a loss of 0.6 a year, which is 60 %; expected a fraction from 0 to 0.2. 0.6 % is written 0.006.",
            Assert.Throws<ArgumentOutOfRangeException>(() => Ageing.Compound(0.6)).Message);

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void An_age_that_is_none_is_refused(double age) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Ageing.None.FactorAt(age));

    [Fact]
    public void A_rule_says_itself()
    {
        Assert.Equal("0.6 % a year of what is left, 2 % in the first year", Ageing.Compound(0.006).WithFirstYear(0.02).ToString());
        Assert.Equal("0.5 % a year of the initial power", Ageing.Linear(0.005).ToString());
    }
}
