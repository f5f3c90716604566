namespace SolarEconomics.Tests;

public class PaceOfPaybackTests
{
    // CV-A02: cost 9,000; yearly value 3,000, then 2,700, 1,930, 1,600 along the order L, X, P of CV-A01; then upkeep of 1,700 a year.
    [Theory]
    [InlineData(3_000, 3.0, 0)]
    [InlineData(2_700, 3.3333, 900)]
    [InlineData(1_930, 4.6632, 3_210)]
    [InlineData(1_600, 5.625, 4_200)]
    [InlineData(-100, null, 9_300)]
    public void Dates_and_open_balances_follow_the_worked_example(int yearly, double? years, int open)
    {
        var found = PaceOfPayback.Years(Eur(9_000), Eur(yearly));
        Assert.Equal(years is null, found is null);
        if (years is { } expected) Assert.Equal(expected, found!.Value, 3);
        Assert.Equal(Eur(open), PaceOfPayback.Open(Eur(9_000), Eur(3_000), Eur(yearly)));
    }

    [Fact]
    public void Half_repaid_after_two_years_is_repaid_in_four() // common practice, no source
        => Assert.Equal(4.0, new StraightLine(10_000, 0.45m, Eur(4_500), Eur(9_000), 2, new NodaTime.LocalDate(2022, 1, 1)).PaybackYears);

    private static Money Eur(decimal amount) => Money.Nominal(amount, Currency.Of("EUR"));
}
