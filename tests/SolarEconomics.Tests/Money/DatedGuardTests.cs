using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What the measures of dated payments refuse.</summary>
public sealed class DatedGuardTests
{
    private static readonly LocalDate Start = new(2021, 1, 1);
    private static readonly DatedMoneyFlow Nominal = Of("EUR", PriceBasis.Nominal);
    private static readonly DatedMoneyFlow Real = Of("EUR", PriceBasis.RealOf(2021));
    private static readonly Rate Five = Rate.Nominal(0.05);

    public static TheoryData<Action<DatedMoneyFlow, Rate>> Measures =>
    [
        (f, r) => TimeValue.Mirr(f, r, r),
        (f, r) => TimeValue.EquivalentAnnualWorth(f, r),
        (f, r) => TimeValue.DiscountedPayback(f, r),
        (f, r) => TimeValue.Lcoe(f, [(Start, 1)], r, EnergyCounted.Delivered),
        (f, r) => TimeValue.Sir(f, f, r),
        (f, r) => TimeValue.NetSavings(f, f, r),
        (f, r) => TimeValue.Airr(f, f, r, new LocalDate(2030, 1, 1)),
        (f, r) => TimeValue.LifeCycleCost(r, new DateSpan(Start, new LocalDate(2030, 1, 1)), DayCount.Actual365, ("all", f)),
    ];

    [Theory]
    [MemberData(nameof(Measures))]
    public void A_rate_of_the_other_basis_is_refused(Action<DatedMoneyFlow, Rate> measure)
    {
        Assert.Throws<BasisMismatchException>(() => measure(Nominal, Rate.Real(0.05)));
        Assert.Throws<BasisMismatchException>(() => measure(Real, Five));
    }

    [Fact]
    public void Results_keep_the_basis_of_the_flow()
    {
        Assert.True(TimeValue.Mirr(Real, Rate.Real(0.03), Rate.Real(0.03)).IsReal);
        Assert.Equal(PriceBasis.RealOf(2021), TimeValue.EquivalentAnnualWorth(Real, Rate.Real(0.03)).Basis);
        Assert.Equal(PriceBasis.RealOf(2021), TimeValue.DiscountedPayback(Real, Rate.Real(0.03)).AtEnd.Basis);
    }

    [Fact]
    public void Two_currencies_or_bases_are_refused()
    {
        Assert.Throws<MixedMoneyException>(() => TimeValue.Sir(Nominal, Of("USD", PriceBasis.Nominal), Five));
        Assert.Throws<MixedMoneyException>(() => TimeValue.NetSavings(Nominal, Real, Five));
        Assert.Throws<MixedMoneyException>(() => TimeValue.LifeCycleCost(Five, new DateSpan(Start, new LocalDate(2030, 1, 1)), DayCount.Actual365,
            ("a", Nominal), ("b", Of("USD", PriceBasis.Nominal))));
    }

    [Fact]
    public void Payments_on_one_day_have_no_yearly_rate()
    {
        var oneDay = DatedMoneyFlow.InOrder(Currency.Of("EUR"), PriceBasis.Nominal, [new(Start, -100), new(Start, 120)]);
        Assert.Throws<ArgumentException>(() => TimeValue.Mirr(oneDay, Five, Five));
        Assert.Equal("Found 2021-01-01 as the first day and the last, expected two days or more: a yearly rate or amount needs a length of time.",
            Assert.Throws<ArgumentException>(() => TimeValue.EquivalentAnnualWorth(oneDay, Five)).Message);
        Assert.Throws<ArgumentException>(() => TimeValue.LifeCycleCost(Five, new DateSpan(Start, Start), DayCount.Actual365, ("all", oneDay)));
    }

    [Fact]
    public void Payments_without_a_return_have_no_modified_rate() =>
        Assert.Equal("No modified rate of return: 30 is paid and 0 received over 2 years, expected both above 0 and at least one year. Check the signs.",
            Assert.Throws<ArgumentException>(() => TimeValue.Mirr(
                DatedMoneyFlow.InOrder(Currency.Of("EUR"), PriceBasis.Nominal, [new(Start, -10), new(Start.PlusYears(2), -20)]), Rate.Nominal(0), Five)).Message);

    [Fact]
    public void A_study_that_ends_before_the_last_payment_is_refused() =>
        Assert.StartsWith("Found payments from 2021-01-01 to 2024-01-01 in a study from 2021-01-01 to 2023-06-01, expected a study of a day or more",
            Assert.Throws<ArgumentException>(() => TimeValue.Airr(Nominal, Nominal, Five, new LocalDate(2023, 6, 1))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_cost_per_kwh_needs_some_kwh_of_0_or_more()
    {
        Assert.StartsWith("Found no energy in any year", Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Lcoe(Nominal, [(Start, 0)], Five, EnergyCounted.Delivered)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Lcoe(Nominal, ReadOnlySpan<(LocalDate, double)>.Empty, Five, EnergyCounted.Delivered));
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Lcoe(Nominal, [(Start, 5), (Start, -1)], Five, EnergyCounted.Delivered));
    }

    [Fact]
    public void Nothing_invested_has_no_ratio() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        TimeValue.Sir(Nominal, DatedMoneyFlow.InOrder(Currency.Of("EUR"), PriceBasis.Nominal, [new(Start, 0)]), Five));

    private static DatedMoneyFlow Of(string currency, PriceBasis basis) =>
        DatedMoneyFlow.InOrder(Currency.Of(currency), basis, [new(Start, -100), new(new LocalDate(2022, 1, 1), 70), new(new LocalDate(2024, 1, 1), 60)]);
}
