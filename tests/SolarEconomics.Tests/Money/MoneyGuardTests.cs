using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What the measures of money refuse, and the last value that they still take.</summary>
public sealed class MoneyGuardTests
{
    private static readonly Currency Eur = Currency.Of("EUR");
    private static readonly LocalDate Day = new(2024, 1, 1);
    private static readonly Loan Good = new(Money.Nominal(1000, Eur), 0.01, 12);

    public static TheoryData<string, Loan> BadLoans => new()
    {
        { "Found a cost of 0,", Good with { Amount = Money.Nominal(0, Eur) } },
        { "Expected a number from 0 to 1000000000000000 (money, without a sign).", Good with { Amount = Money.Nominal(1e27m, Eur) } },
        { "Found a rate of -0.01 per period", Good with { RatePerPeriod = -0.01 } },
        { "Found a rate of 1 per period", Good with { RatePerPeriod = 1 } },
        { "Found a rate of -1 per period", Good with { RatePerPeriod = -1 } },
        { "Expected a number from 1 to 10000 (payments).", Good with { Payments = 10_001 } },
        { "Expected a number from 1 to 366 (payments a year).", Good with { PaymentsPerYear = 367 } },
        { "Expected a number from 0 to 1000000000000000 (money, without a sign).", Good with { Balloon = -1 } },
        { "Expected a number from 0 to 1000000000000000 (money, without a sign).", Good with { UpfrontFee = -1 } },
        { "Expected a number from 0 to 1000000000000000 (money, without a sign).", Good with { FeePerPayment = -1 } },
        { "Expected a number from 0 to 1000000000000000 (money, without a sign).", Good with { ExtraPayments = new Dictionary<int, decimal> { [2] = -1 } } },
    };

    [Theory]
    [MemberData(nameof(BadLoans))]
    public void A_loan_that_cannot_be_is_refused(string begin, Loan loan) =>
        Assert.StartsWith(begin, Assert.Throws<ArgumentOutOfRangeException>(() => loan.Table()).Message);

    [Fact]
    public void A_flow_and_a_rate_are_both_nominal_or_both_real()
    {
        var (nominal, real) = (MoneyFlow.Nominal(Eur, -100, 60, 60), Rate.Real(0.05));
        var dated = DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, [new DatedAmount(Day, -100), new DatedAmount(Day.PlusYears(1), 120)]);
        Assert.Throws<BasisMismatchException>(() => TimeValue.Npv(nominal, real));
        Assert.Throws<BasisMismatchException>(() => TimeValue.Xnpv(dated, real));
        Assert.Throws<BasisMismatchException>(() => TimeValue.Mirr(nominal, Rate.Nominal(0.05), real));
        Assert.False(TimeValue.Mirr(nominal, Rate.Nominal(0.05), Rate.Nominal(0.05)).IsReal);
        var index = PriceIndex.Of(Enumerable.Range(0, 24).Select(m => (new YearMonth(2024, 1).PlusMonths(m), m < 12 ? 100.0 : 110.0)));
        var inMoneyOf2025 = index.ToMoneyOf(dated, 2025);
        Assert.Equal((-110m, PriceBasis.RealOf(2025)), (inMoneyOf2025.Amounts[0].Amount, inMoneyOf2025.Basis));
        Assert.Throws<BasisMismatchException>(() => index.ToMoneyOf(inMoneyOf2025, 2025));
        Assert.Throws<BasisMismatchException>(() => TimeValue.Xnpv(inMoneyOf2025, Rate.Nominal(0.05)));
    }

    [Fact]
    public void All_payments_of_a_day_count_before_the_sum_is_judged()
    {
        var flow = DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, [new DatedAmount(Day, -100), new DatedAmount(Day.PlusDays(9), 60), new DatedAmount(Day.PlusDays(9), 40), new DatedAmount(Day.PlusDays(20), -1), new DatedAmount(Day.PlusDays(30), 1)]);
        Assert.Equal((Day.PlusDays(9), Day.PlusDays(30)), (TimeValue.Payback(flow).First, TimeValue.Payback(flow).Lasting));
    }

    [Fact]
    public void Amounts_at_year_ends_are_a_year_later_and_a_worth_is_spread_over_its_life()
    {
        Assert.Equal(100 / 1.25 / 1.25, (double)TimeValue.NpvOfYearEnds(MoneyFlow.Nominal(Eur, 0, 100), Rate.Nominal(0.25)).Amount, 9);
        Assert.Equal(1_100, TimeValue.EquivalentAnnualWorth(1_000, 0.10, 1), 9);
    }

    [Fact]
    public void A_loan_as_long_as_the_horizon_is_taken() => Assert.Equal(1, Good.OwnerFlow(1).LastYear);

    [Fact]
    public void An_advance_must_be_above_0_and_its_payments_later_and_no_less()
    {
        Assert.StartsWith("Found a cost of 0,", Thrown<ArgumentOutOfRangeException>(() => TimeValue.Apr(0, Day, Day.PlusMonths(1), UnitPeriod.Month, 1)));
        Assert.StartsWith("Found 2023-12-31 after 2024-01-01", Thrown<ArgumentException>(() => TimeValue.Apr(100, Day, Day.PlusDays(-1), UnitPeriod.Month, 101)));
        Assert.StartsWith("Found payments that sum to 120 for an advance of 100", Thrown<ArgumentException>(() => TimeValue.Apr(100, Day, Day.PlusMonths(1), UnitPeriod.Month, 130, -10)));
        Assert.StartsWith("Found a cost of 0,", Thrown<ArgumentOutOfRangeException>(() => TimeValue.AprOfOnePayment(0, Day, 10, Day.PlusMonths(1))));
        Assert.StartsWith("Found 2024-01-01 after 2024-01-01", Thrown<ArgumentException>(() => TimeValue.AprOfOnePayment(100, Day, 110, Day)));
        Assert.StartsWith("Found payments that sum to 99 for an advance of 100", Thrown<ArgumentException>(() => TimeValue.AprOfOnePayment(100, Day, 99, Day.PlusMonths(1))));
        Assert.StartsWith("Expected a named unit period.", Thrown<ArgumentOutOfRangeException>(() => TimeValue.Apr(100, Day, Day.PlusMonths(1), (UnitPeriod)9, 101)));
    }

    [Fact]
    public void The_edges_of_an_advance_are_taken()
    {
        // Paid back at once, or without any interest: no rate but 0.
        Assert.Equal(0, TimeValue.Apr(100, Day, Day.PlusMonths(1), UnitPeriod.Month, 100, 0), 12);
        Assert.Equal(0, TimeValue.AprOfOnePayment(100, Day, 100, Day.PlusMonths(3)), 12);
        Assert.Equal(0.10, TimeValue.Apr(100, Day, Day, UnitPeriod.Month, 0, 110) / 12, 9);
        // Whole months: simple interest by months; any other term under a year by days of 365.
        Assert.Equal(0.10 * 12 / 3, TimeValue.AprOfOnePayment(100, Day, 110, Day.PlusMonths(3)), 12);
        Assert.Equal(0.10 * 365 / 40, TimeValue.AprOfOnePayment(100, Day, 110, Day.PlusDays(40)), 12);
        // One year and 73 days, a fifth of a year, counted back from the payment: 110 = 100 (1 + i)(1 + i/5).
        var advanced = new LocalDate(2021, 1, 1);
        Assert.Equal((Math.Sqrt(36 + (20 * 0.10)) - 6) / 2, TimeValue.AprOfOnePayment(100, advanced, 110, advanced.PlusDays(365 + 73)), 9);
        // A month and 15 odd days, half of 30: 110 = 100 (1 + i)(1 + i/2).
        Assert.Equal(12 * (Math.Sqrt(9 + (8 * 0.10)) - 3) / 2, TimeValue.Apr(100, Day, Day.PlusDays(15).PlusMonths(1), UnitPeriod.Month, 110), 9);
        // So dear that the first guess of the highest rate is far too low: 100 back for 1 in a week.
        Assert.Equal(99 * 52, TimeValue.Apr(1, Day, Day.PlusDays(7), UnitPeriod.Week, 100), 1e-6);
    }

    [Fact]
    public void Days_out_of_order_have_no_part_of_a_year()
    {
        Assert.StartsWith("Found 2023-12-31 after 2024-01-01", Thrown<ArgumentException>(() => TimeValue.YearFraction(Day, Day.PlusDays(-1))));
        Assert.Equal(0, TimeValue.YearFraction(Day, Day, DayCount.ActualActual));
        Assert.StartsWith("Expected a named day count.", Thrown<ArgumentOutOfRangeException>(() => TimeValue.YearFraction(Day, Day, (DayCount)9)));
    }

    [Theory]
    [InlineData("2024-01-31", "2024-02-29", 29)] // the 31st counts as the 30th; February's end only where the span begins at one
    [InlineData("2024-02-29", "2024-03-31", 30)]
    [InlineData("2023-02-28", "2024-02-29", 360)]
    [InlineData("2023-02-27", "2024-02-29", 362)]
    [InlineData("2024-02-28", "2024-03-31", 33)]
    [InlineData("2024-01-30", "2024-03-31", 60)]
    [InlineData("2024-01-29", "2024-03-31", 62)]
    [InlineData("2023-11-15", "2025-02-10", 445)]
    public void Bond_months_have_30_days_by_the_united_states_rule(string start, string end, int days) => // by hand, from the rule in money-4
        Assert.Equal(days / 360.0, TimeValue.YearFraction(At(start), At(end), DayCount.Thirty360Us), 12);

    [Fact]
    public void A_flow_needs_amounts_dates_for_each_and_dates_in_order()
    {
        Assert.StartsWith("Found a flow of no amounts", Thrown<ArgumentException>(() => TimeValue.Npv([], 0.05)));
        Assert.StartsWith("Found 2 amounts and 1 date", Thrown<ArgumentException>(() => TimeValue.Xnpv([-1, 1], [Day], 0.05)));
        Assert.StartsWith("Found 2023-12-31 after 2024-01-01", Thrown<ArgumentException>(() => TimeValue.Xnpv([-1, 1], [Day, Day.PlusDays(-1)], 0.05)));
        Assert.Equal(0, TimeValue.Xnpv([-1, 1], [Day, Day], 0.05), 12);
        Assert.StartsWith("Found NaN at place 1", Thrown<ArgumentOutOfRangeException>(() => TimeValue.Xnpv([-1, double.NaN], [Day, Day], 0.05)));
        Assert.StartsWith("Found a flow of no amounts", Thrown<ArgumentException>(() => DatedMoneyFlow.Sorted(Eur, PriceBasis.Nominal, [])));
    }

    [Fact]
    public void A_real_rate_and_nominal_money_do_not_mix()
    {
        var flow = MoneyFlow.Nominal(Eur, -100, 110);
        Assert.Equal(0, (double)TimeValue.Npv(flow, Rate.Nominal(0.10)).Amount, 12);
        Assert.StartsWith("Found a flow that is nominal and a rate of 10.00 % a year, real", Thrown<BasisMismatchException>(() => TimeValue.Npv(flow, Rate.Real(0.10))));
        Assert.Equal([-90, 99], (MoneyFlow.Nominal(Eur, -100, 110) * 0.9).Amounts.Select(a => Math.Round(a, 9)));
        Assert.Equal([-100, 60], (flow - MoneyFlow.Nominal(Eur, 0, 50)).Amounts);
        Assert.StartsWith("Found a flow that is nominal already", Thrown<BasisMismatchException>(() => flow.ToNominal(0.02)));
    }

    [Fact]
    public void A_rate_keeps_its_kind()
    {
        Assert.False(TimeValue.TryIrr(MoneyFlow.Nominal(Eur, -100, 110), out var nominal) && nominal.Roots[0].IsReal);
        Assert.True(TimeValue.TryIrr(MoneyFlow.Of(PriceBasis.RealOf(2026), Eur, -100, 110), out var real) && real.Roots[0].IsReal);
        Assert.False(TimeValue.TryIrr([-100, 110], out var plain) && plain.Roots[0].IsReal);
        Assert.False(TimeValue.TryXirr([-100, 110], [Day, Day.PlusYears(1)], out var dated) && dated.Roots[0].IsReal);
        Assert.False(Rate.NominalPercent(7).IsReal);
        Assert.False(Rate.Quoted(0.06, 12).IsReal);
        Assert.False(Rate.Real(0.02).ToNominal(0.02).IsReal);
        Assert.StartsWith("Found a rate of 6,", Thrown<ArgumentOutOfRangeException>(() => Rate.Quoted(6, 12)));
        Assert.StartsWith("Expected a number from 1 to 366 (times a year).", Thrown<ArgumentOutOfRangeException>(() => Rate.Quoted(0.06, 400)));
        Assert.Contains("(periods a year)", Thrown<ArgumentOutOfRangeException>(() => Rate.Nominal(0.06).PerPeriod(0)), StringComparison.Ordinal);
        Assert.StartsWith("Found a rate of 1,", Thrown<ArgumentOutOfRangeException>(() => Rate.Nominal(1)));
    }

    [Fact]
    public void A_levelised_cost_takes_no_energy_below_0_and_a_ratio_no_investment_of_0()
    {
        Assert.Contains("(kWh)", Thrown<ArgumentOutOfRangeException>(() => TimeValue.Lcoe([1, 1], [10, -1], 0.05)), StringComparison.Ordinal);
        Assert.StartsWith("Found a cost of 0,", Thrown<ArgumentOutOfRangeException>(() => TimeValue.Sir(MoneyFlow.Nominal(Eur, 0, 1), MoneyFlow.Nominal(Eur, 0, 0), Rate.Nominal(0.05))));
        foreach (var sir in new[] { -1, 0, double.NaN, 1e13 })
            Assert.StartsWith($"Found a savings-to-investment ratio of {sir.ToString(System.Globalization.CultureInfo.InvariantCulture)}, expected one above 0", Thrown<ArgumentOutOfRangeException>(() => TimeValue.Airr(sir, 0.05, 10)));
        Assert.StartsWith("Found a life of 0 years", Thrown<ArgumentOutOfRangeException>(() => TimeValue.LifeCycleCost(Rate.Nominal(0.05), 0, ("a", MoneyFlow.Nominal(Eur, -1)))));
        Assert.StartsWith("Found a flow of no amounts", Thrown<ArgumentException>(() => TimeValue.LifeCycleCost(Rate.Nominal(0.05), 3)));
        Assert.StartsWith("Found a cost of 0,", Thrown<ArgumentOutOfRangeException>(() => TimeValue.SimplePayback(0, 100)));
    }

    [Fact]
    public void Payments_of_a_loan_are_counted_from_1_to_its_last()
    {
        Assert.Contains("(payment, counted from 1)", Thrown<ArgumentOutOfRangeException>(() => TimeValue.InterestPaid(0.01, 12, 1000, 0, 3)), StringComparison.Ordinal);
        Assert.Contains("(payment, not before the first)", Thrown<ArgumentOutOfRangeException>(() => TimeValue.InterestPaid(0.01, 12, 1000, 4, 3)), StringComparison.Ordinal);
        Assert.Contains("(payments)", Thrown<ArgumentOutOfRangeException>(() => TimeValue.RatePerPeriod(0, -100, 1000)), StringComparison.Ordinal);
        Assert.Contains("(periods)", Thrown<ArgumentOutOfRangeException>(() => TimeValue.Fv(0.01, 0, -100, 1000)), StringComparison.Ordinal);
        Assert.Equal(0, TimeValue.Nper(0.01, -100, 0), 12);
    }

    [Fact]
    public void An_index_needs_levels_above_0_each_month_once()
    {
        var january = new YearMonth(2024, 1);
        Assert.Throws<ArgumentException>(() => PriceIndex.Of([]));
        foreach (var level in new[] { 0, -1, double.NaN, double.PositiveInfinity })
            Assert.Throws<ArgumentException>(() => PriceIndex.Of([(january, level)]));
        Assert.Throws<ArgumentException>(() => PriceIndex.Of([(january, 100), (january, 101)]));
        Assert.Throws<ArgumentNullException>(() => PriceIndex.Load(null!));
        Assert.Contains("no-such-index.csv", Thrown<RecordException>(() => PriceIndex.Load("no-such-index.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_no_flow()
    {
        Assert.Throws<ArgumentNullException>(() => TimeValue.Npv((MoneyFlow)null!, Rate.Nominal(0.05)));
        Assert.Throws<ArgumentNullException>(() => TimeValue.EquivalentAnnualWorth((MoneyFlow)null!, Rate.Nominal(0.05)));
        Assert.Throws<ArgumentNullException>(() => TimeValue.NpvOfMidYears((MoneyFlow)null!, Rate.Nominal(0.05)));
        Assert.Throws<ArgumentNullException>(() => TimeValue.Xnpv(null!, Rate.Nominal(0.05)));
        Assert.Throws<ArgumentNullException>(() => TimeValue.TryIrr((MoneyFlow)null!, out _));
        Assert.Throws<ArgumentNullException>(() => TimeValue.TryXirr(null!, out _));
        Assert.Throws<ArgumentNullException>(() => TimeValue.DiscountedPayback((MoneyFlow)null!, Rate.Nominal(0.05)));
        Assert.Throws<ArgumentNullException>(() => TimeValue.Mirr((MoneyFlow)null!, Rate.Nominal(0.05), Rate.Nominal(0.05)));
    }

    private static string Thrown<T>(Action act)
        where T : Exception => Assert.ThrowsAny<T>(act).Message;

    private static LocalDate At(string iso) => NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value;

    [Fact]
    public void Sums_beyond_what_money_can_be_say_so()
    {
        var large = Money.Nominal(7e28m, Eur);
        var words = "Found amounts in EUR that add up to more than 7.9e28, expected amounts of money";
        Assert.StartsWith(words, Thrown<OverflowException>(() => _ = large + large));
        Assert.StartsWith(words, Thrown<OverflowException>(() => _ = -large - large));
        var day = new NodaTime.LocalDate(2026, 1, 1);
        Assert.StartsWith(words, Thrown<OverflowException>(() => _ = DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, [new DatedAmount(day, 7e28m), new DatedAmount(day, 7e28m)]).Total));
    }
}
