using NodaTime;

namespace SolarEconomics.Tests;

public class CashPathTests
{
    private static readonly LocalDate Start = new(2022, 1, 1);

    private static CashPath Path(params CashEvent[] events) => new(Start, Start.PlusDays(1_000), events, 0);

    private static CashEvent At(int day, double amount) => new(Start.PlusDays(day), Start.PlusDays(day), amount, MoneyPurpose.Savings);

    private static CashEvent Over(int from, int to, double amount) => new(Start.PlusDays(from), Start.PlusDays(to), amount, MoneyPurpose.Savings);

    [Fact]
    public void Between_two_days_the_position_is_straight() =>
        Assert.Equal(-75, Path(At(0, -100), Over(0, 400, 100)).At(100), 9);

    [Fact]
    public void Even_savings_of_100_in_400_days_pay_100_back_on_day_400() =>
        Assert.Equal(400, Path(At(0, -100), Over(0, 800, 200)).LastingCrossing()!.Value, 9);

    [Fact]
    public void A_later_cost_opens_the_account_again()
    {
        // 100 paid; 0.25 a day. First zero on day 400; 100 more on day 600 (position 50 → −50); lasting zero on day 800.
        var path = Path(At(0, -100), Over(0, 1_000, 250), At(600, -100));
        Assert.Equal(400, path.FirstCrossing()!.Value, 9);
        Assert.Equal(800, path.LastingCrossing()!.Value, 9);
        Assert.Equal(50, path.AtEnd, 9);
    }

    [Fact]
    public void A_path_that_ends_below_zero_has_no_lasting_payback_though_it_had_a_first()
    {
        var path = Path(At(0, -100), Over(0, 1_000, 250), At(900, -500));
        Assert.Equal(400, path.FirstCrossing()!.Value, 9);
        Assert.Null(path.LastingCrossing());
    }

    [Fact]
    public void A_grant_that_jumps_over_zero_counts_on_its_day() =>
        Assert.Equal(50, Path(At(0, -100), At(50, 120)).LastingCrossing()!.Value, 9);

    [Fact]
    public void What_falls_after_the_horizon_is_left_out() =>
        Assert.Equal(-100, Path(At(0, -100), At(2_000, 500)).AtEnd, 9);

    [Fact]
    public void Discounting_makes_later_money_smaller()
    {
        var path = new CashPath(Start, Start.PlusDays(1_000), [At(0, -100), At(365, 110)], 0.10);
        Assert.Equal(0, path.AtEnd, 9); // by hand: 110 / 1.1 = 100
    }
}
