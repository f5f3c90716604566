using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Loans against a naive month-by-month twin and by properties. Published rows are in PublishedLoanTests.</summary>
public sealed class LoanTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    private static readonly Gen<(double Rate, int Payments, double Amount)> Cases =
        Gen.Select(Gen.OneOf(Gen.Double[0, 0.05], Gen.Double[0, 1e-10], Gen.Const(0.0)), Gen.Int[1, 360], Gen.Double[100, 1e5]);

    [Fact]
    public void The_payment_clears_the_loan_month_by_month() => Cases.Sample((rate, payments, amount) =>
        Math.Abs(Naive.Owed(amount, rate, -TimeValue.Pmt(rate, payments, amount), payments)) < 1e-6 * amount * Math.Pow(1 + rate, payments));

    [Fact]
    public void Each_unknown_of_a_loan_follows_from_the_others() =>
        Gen.Select(Gen.Double[0.0005, 0.03], Gen.Int[2, 240], Gen.Double[500, 1e5], Gen.Double[0, 5e3], Gen.Bool).Sample((rate, payments, amount, balloon, atStart) =>
        {
            var timing = atStart ? PaymentTiming.PeriodStart : PaymentTiming.PeriodEnd;
            var payment = TimeValue.Pmt(rate, payments, amount, -balloon, timing);
            if (payment > -1) return;
            Assert.Equal(amount, TimeValue.Pv(rate, payments, payment, -balloon, timing), 1e-8 * amount);
            Assert.Equal(-balloon, TimeValue.Fv(rate, payments, payment, amount, timing), 1e-8 * amount * Math.Pow(1 + rate, payments));
            Assert.Equal(payments, TimeValue.Nper(rate, payment, amount, -balloon, timing), 1e-6 * payments);
            Assert.Equal(rate, TimeValue.RatePerPeriod(payments, payment, amount, -balloon, timing), 1e-9);
        });

    [Fact]
    public void A_payment_below_the_interest_never_repays() =>
        Assert.Equal("Payments of -40 never take 8,000 to 0: each period's interest is 46.67. " +
            "Expected a payment above the interest, with the opposite sign of what is received.",
            Assert.Throws<ArgumentException>(() => TimeValue.Nper(0.07 / 12, -40, 8000)).Message);

    [Fact]
    public void A_rate_of_6_a_month_is_asked_back() =>
        Assert.StartsWith("Found a rate of 6 per period, expected a fraction above -1 and below 1: 6 % a year paid monthly is written 0.06/12, not 6 or 0.5.",
            Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Pmt(6, 12, 1000)).Message);

    [Fact]
    public void Interest_and_principal_of_all_payments_sum_to_what_is_paid() => Cases.Sample((rate, payments, amount) =>
    {
        var principal = TimeValue.PrincipalPaid(rate, payments, amount, 1, payments);
        var paid = TimeValue.Pmt(rate, payments, amount) * payments;
        return Math.Abs(principal + amount) < 1e-6 * amount * Math.Pow(1 + rate, payments)
            && Math.Abs(TimeValue.InterestPaid(rate, payments, amount, 1, payments) + principal - paid) < 1e-6 * amount;
    });

    [Fact]
    public void A_table_in_coins_ends_at_exactly_0()
    {
        var table = new Loan(Money.Nominal(2500, Eur), 0.0824 / 12, 12).TableInCoins();
        Assert.Equal(0, table.Rows[^1].Balance);
        Assert.Equal(2500, table.Rows.Sum(r => r.Principal));
        Assert.All(table.Rows, r => Assert.Equal(Math.Round(r.Interest, 2), r.Interest));
    }

    [Fact]
    public void A_balloon_is_paid_with_the_last_payment()
    {
        var table = new Loan(Money.Nominal(10_000, Eur), 0.005, 24) { Balloon = 4000 }.Table();
        Assert.Equal(4000, table.Rows[^1].Principal - (table.Rows[^2].Principal * 1.005m), 6);
        Assert.Equal(0, table.Rows[^1].Balance);
    }

    [Fact]
    public void An_extra_payment_shortens_the_loan_and_saves_interest()
    {
        var plain = new Loan(Money.Nominal(10_000, Eur), 0.005, 60);
        var faster = plain with { ExtraPayments = new Dictionary<int, decimal> { [12] = 3000 } };
        Assert.True(faster.Table().Rows.Count < plain.Table().Rows.Count);
        Assert.True(faster.Table().TotalInterest.Amount < plain.Table().TotalInterest.Amount);
        Assert.Equal(10_000, faster.Table().Rows.Sum(r => r.Principal + r.Extra), 8);
    }

    [Fact]
    public void A_loan_too_dear_for_any_digit_of_principal_is_interest_until_its_last_payments() // by hand: 0.9 × 1,000 at first; what is owed before the last is 1,000 · 0.9 / 1.9
    {
        var loan = new Loan(Money.Nominal(1000, Eur), 0.9, 10_000);
        var table = loan.Table();
        Assert.Equal(10_000, table.Rows.Count);
        Assert.Equal(900, loan.Payment.Amount);
        Assert.Equal(1000m, table.Rows[9_000].Balance);
        Assert.Equal(1000 * 0.9 / 1.9, (double)table.Rows[^2].Balance, 1e-9);
        Assert.Equal(900, (double)table.Rows[^1].Paid, 1e-9);
    }

    [Fact]
    public void Whatever_the_rate_and_length_each_payment_is_the_level_one_and_the_loan_ends_at_0() =>
        Gen.Select(Gen.Double[0, 0.99], Gen.Int[0, 5], Gen.Int[1, 10_000], Gen.Double[1, 1e15]).Sample((rate, powers, payments, amount) =>
        {
            var loan = new Loan(Money.Nominal((decimal)amount, Eur), rate * Math.Pow(10, -powers), payments);
            var (table, payment) = (loan.Table(), loan.Payment.Amount);
            Assert.Equal(payments, table.Rows.Count);
            Assert.Equal(0, table.Rows[^1].Balance);
            Assert.Equal((double)loan.Amount.Amount, (double)table.Rows.Sum(r => r.Principal), 1e-12 * amount);
            Assert.All(table.Rows, r => Assert.InRange(Math.Abs(r.Paid - payment), 0, 1e-11m * (decimal)amount));
            Assert.All(table.Rows, r => Assert.InRange(r.Principal, 0, loan.Amount.Amount));
            Assert.Equal(-TimeValue.Pmt(Math.Min(loan.RatePerPeriod, 0.05), payments, amount),
                (double)(loan with { RatePerPeriod = Math.Min(loan.RatePerPeriod, 0.05) }).Payment.Amount, 1e-9 * amount);
            Assert.Equal(0, loan.TableInCoins().Rows[^1].Balance);
        }, iter: 60);

    [Fact]
    public void A_table_with_extra_payments_and_a_balloon_is_that_of_the_naive_walk() =>
        Gen.Select(Gen.Double[0, 0.02], Gen.Int[2, 240], Gen.Double[1_000, 1e5], Gen.Double[0, 1_000], Gen.Dictionary(Gen.Int[1, 240], Gen.Double[0, 2_000])[0, 5])
            .Sample((rate, payments, amount, balloon, extras) =>
            {
                var loan = new Loan(Money.Nominal((decimal)amount, Eur), rate, payments)
                {
                    Balloon = (decimal)balloon, ExtraPayments = extras.ToDictionary(e => e.Key, e => (decimal)e.Value),
                };
                var (payment, owed) = (-TimeValue.Pmt(rate, payments, amount, -balloon), amount);
                foreach (var row in loan.Table().Rows)
                {
                    // Payment less interest, the walk that the table itself cannot go where digits run out.
                    owed -= row.Number == payments ? owed : Math.Min(payment - (owed * rate), owed);
                    owed -= Math.Min(extras.GetValueOrDefault(row.Number), owed);
                    Assert.Equal(owed, (double)row.Balance, 1e-9 * amount * Math.Pow(1 + rate, payments));
                }
                Assert.Equal(0, owed, 1e-6);
            });

    [Fact]
    public void A_nought_per_cent_offer_with_a_fee_has_a_cost()
    {
        var offer = new Loan(Money.Nominal(6000, Eur), 0, 24) { UpfrontFee = 300 };
        // By hand: 5,700 is got, 24 × 250 is paid back.
        Assert.Equal(0, TimeValue.Pv(offer.AprPerYear() / 12, 24, -250) - 5700, 6);
        Assert.True(offer.EffectiveCost().PerYear > 0.05);
        Assert.Contains("a year, effective.", offer.Table().Say(System.Globalization.CultureInfo.InvariantCulture).Notes[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_loan_without_fees_costs_its_own_rate()
    {
        var loan = new Loan(Money.Nominal(6000, Eur), 0.004, 36);
        Assert.Equal(0.048, loan.AprPerYear(), 9);
        Assert.Equal(Math.Pow(1.004, 12) - 1, loan.EffectiveCost().PerYear, 9);
    }

    [Fact]
    public void The_owner_sees_the_loan_come_in_and_go_out_by_year()
    {
        var loan = new Loan(Money.Nominal(6000, Eur), 0, 24) { UpfrontFee = 300, FeePerPayment = 1 };
        Assert.Equal([5700, -3012, -3012, 0], loan.OwnerFlow(3).Amounts.Select(a => Math.Round(a, 6)));
        Assert.Equal("Found a loan of 2 years in a horizon of 1, expected the horizon to cover it: debt after its end would be left out. Lengthen the horizon.",
            Assert.Throws<ArgumentException>(() => loan.OwnerFlow(1)).Message);
    }

    [Fact]
    public void Half_months_of_odd_days_become_a_whole_unit_period() => // 1 January to 16 March: 2 months back is 16 January, 15 days are one half month.
        Assert.Equal(
            24 * (Math.Pow(1.05, 1.0 / 5) - 1),
            TimeValue.Apr(1000, new LocalDate(1978, 1, 1), new LocalDate(1978, 3, 16), UnitPeriod.HalfMonth, 1050), 9);

    [Fact]
    public void Payments_below_the_advance_have_no_rate() =>
        Assert.Equal("Found payments that sum to 900 for an advance of 1,000, expected at least the advance and no payment below 0.",
            Assert.Throws<ArgumentException>(() => TimeValue.Apr(1000, new LocalDate(1978, 1, 1), new LocalDate(1978, 2, 1), UnitPeriod.Month, 450, 450)).Message);
}
