using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>The owner's view of an outlook: loans by year and category.</summary>
// Oracles: by hand (two yearly payments), a naive recursion of the debt, properties. Published: the loan's own table is held to published rows in LoanTests.
public sealed class OwnerViewTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    // Level payment 600 · 0.1 / (1 − 1.1⁻²) = 345.714; interest 60.00 and 31.43, principal 285.71 and 314.29.
    private static readonly LoanTaken TwoPayments = new("the bank", new Loan(Money.Nominal(600, Eur), 0.10, 2) { PaymentsPerYear = 1, UpfrontFee = 12, FeePerPayment = 3 }, YearSite.First);

    private static Outlook With(params LoanTaken[] loans) => YearSite.Worth().Outlook(YearSite.Plain with { Loans = loans });

    [Fact]
    public void Interest_principal_and_fees_fall_into_their_years()
    {
        var years = With(TwoPayments).Owner!.YearsAhead;
        static decimal[] Row(OwnerYear y) => [y.Received.Amount, y.Interest.Amount, y.Principal.Amount, y.Fees.Amount, y.Recorded.Amount, y.Owed.Amount];
        Assert.Equal([600m, 0, 0, -12, 0, 600], Row(years[0]));
        Assert.Equal([0m, -60, -285.71m, -3, 0, 314.29m], Row(years[1]));
        Assert.Equal([0m, -31.43m, -314.29m, -3, 0, 0], Row(years[2]));
        Assert.All(years.Skip(3), y => Assert.Equal(y.Project, y.Net));
    }

    [Fact]
    public void At_no_discount_borrowing_costs_its_interest_and_fees() // by hand: 60.00 + 31.43 + 12 + 2 · 3 = 109.43
    {
        var outlook = With(TwoPayments);
        Assert.Equal(-109.43m, outlook.Owner!.WorthOfBorrowing.Amount);
        Assert.Equal(outlook.PositionAtHorizon.Amount - 109.43m, outlook.Owner.YearsAhead[^1].CumulativePosition.Amount, 0);
        // 1,000 less 600 and the fee of 12, then two payments of 348.71 against 146.00 and 146.40 saved: lowest after the second.
        Assert.Equal(817.03m, outlook.Owner.MostOutOfPocket.Amount);
        Assert.Equal(new LocalDate(2025, 1, 1), outlook.Owner.LastPayment);
    }

    [Fact]
    public void Borrowing_is_worth_what_a_naive_recursion_of_the_debt_says() =>
        Gen.Select(Gen.Int[100, 900], Gen.Double[0, 0.02], Gen.Int[1, 120], Gen.Double[0, 0.12]).Sample((amount, rate, payments, discount) =>
        {
            var outlook = YearSite.Worth().Outlook(YearSite.Plain with { DiscountRate = discount, Loans = [new LoanTaken("bank", new Loan(Money.Nominal(amount, Eur), rate, payments), YearSite.First)] });
            // Naive: the payment that leaves nothing, from the sum of its present values; each paid on its day.
            var payment = amount / Enumerable.Range(1, payments).Sum(k => Math.Pow(1 + rate, -k));
            var naive = amount - Enumerable.Range(1, payments).Sum(k => payment * Math.Pow(1 + discount, -Period.DaysBetween(YearSite.First, YearSite.First.PlusMonths(k)) / 365.0));
            Assert.Equal(naive, (double)outlook.Owner!.WorthOfBorrowing.Amount, 0.011);
        }, iter: 20);

    [Fact]
    public void What_was_received_is_repaid_and_the_position_is_that_of_the_plant_less_interest_and_fees() =>
        Gen.Select(Gen.Int[100, 900], Gen.Double[0, 0.02], Gen.Int[1, 120], Gen.Int[0, 90], Gen.Int[0, 9]).Sample((amount, rate, payments, balloon, fee) =>
        {
            var loan = new Loan(Money.Nominal(amount, Eur), rate, payments) { Balloon = balloon, FeePerPayment = fee, ExtraPayments = new Dictionary<int, decimal> { [3] = 40 } };
            var owner = With(new LoanTaken("bank", loan, YearSite.First.PlusDays(40))).Owner!;
            Assert.Equal(0, (double)owner.YearsAhead.Sum(y => y.Received.Amount + y.Principal.Amount), 0.2);
            Assert.Equal((double)-loan.Table().TotalInterest.Amount, (double)owner.YearsAhead.Sum(y => y.Interest.Amount), 0.2);
            Assert.Equal(0m, owner.YearsAhead[^1].Owed.Amount);
            Assert.Equal(owner.Flow.Amounts.ToArray().Sum(), (double)owner.YearsAhead[^1].CumulativePosition.Amount, 0.001);
        }, iter: 20);

    [Fact]
    public void A_loan_changes_nothing_of_the_project_and_of_its_bridge()
    {
        var (plain, with) = (With(), With(TwoPayments));
        Assert.Null(plain.Owner);
        Assert.Equal(plain.Npv, with.Npv);
        Assert.Equal(plain.YearsAhead, with.YearsAhead);
        Assert.Equal(plain.Payback.LastingYears, with.Payback.LastingYears);
        Assert.Equal(plain.Bridge().Say(CultureInfo.InvariantCulture).Words, with.Bridge().Say(CultureInfo.InvariantCulture).Words);
    }

    [Fact]
    public void A_loan_that_pays_for_everything_leaves_no_money_of_the_owner_in_it()
    {
        var owner = With(new LoanTaken("bank", new Loan(Money.Nominal(1_000, Eur), 0, 120), YearSite.First)).Owner!;
        Assert.Equal(0m, owner.MostOutOfPocket.Amount); // 100 a year to pay, 146 a year saved
        Assert.Null(owner.PaybackYears);
        Assert.Contains("No money of the owner's own is ever in it.", owner.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Loan_flows_of_the_ledger_count_and_the_stated_loan_goes_on_after_them()
    {
        var worth = YearSite.Worth(1_000m, new LedgerEntry(YearSite.First, LedgerKind.LoanReceived, Money.Nominal(600, Eur)),
            new LedgerEntry(new LocalDate(2024, 1, 1), LedgerKind.Finance, Money.Nominal(350, Eur)));
        var owner = worth.Outlook(YearSite.Plain with { Loans = [TwoPayments] }).Owner!;
        Assert.Equal([600m, 0m, 0m], owner.YearsAhead.Take(3).Select(y => y.Received.Amount));
        Assert.Equal([0m, -350m, 0m], owner.YearsAhead.Take(3).Select(y => y.Recorded.Amount));
        Assert.Equal([0m, 0m, -31.43m], owner.YearsAhead.Take(3).Select(y => y.Interest.Amount));
        Assert.Contains("What falls due until then is taken from the ledger, not from the terms of the bank.", owner.Say(CultureInfo.InvariantCulture).Notes);
        var alone = worth.Outlook(YearSite.Plain).Owner!;
        Assert.Equal(250m, alone.WorthOfBorrowing.Amount);
        Assert.Contains("No loan is stated: what is still owed after that day is not known and not in it.", alone.Say(CultureInfo.InvariantCulture).Notes);
    }

    [Fact]
    public void It_says_plant_and_borrowing_apart_and_shows_each_year()
    {
        var said = With(TwoPayments).Owner!.Say(CultureInfo.InvariantCulture);
        Assert.Equal("€1,813", said.Figure);
        Assert.StartsWith("net present value in the owner's pocket at the first purchase, at 0.0 % a year: €1,922 of the plant itself and −€109 of borrowing. " +
            "At most €817 of the owner's own are in it. They are back for good after ", said.Words, StringComparison.Ordinal);
        Assert.Equal("The bank: €600 on 1 Jan 2023, €91 of interest and €18 of fees by 1 Jan 2025.", said.Notes[0]);
        Assert.Equal(["1 Jan 2023", "−€854", "€600", "€0", "€0", "−€12", "€0", "−€266", "€600"], said.Tables[0].Rows[0]);
        var outlook = With(TwoPayments).Say(CultureInfo.InvariantCulture);
        Assert.Equal("Loans are left out: this is the plant, not its owner's pocket. With them the net present value is €1,813, −€109 by borrowing.", outlook.Notes[0]);
        Assert.Equal(2, outlook.Tables.Count);
    }

    [Fact]
    public void A_loan_that_outlasts_the_horizon_is_real_or_in_other_money_is_refused()
    {
        var late = Assert.Throws<ArgumentException>(() => With(TwoPayments with { Loan = new Loan(Money.Nominal(600, Eur), 0.004, 300) }));
        Assert.Equal("the bank: found a loan whose last payment falls on 2048-01-01, expected one by 2043-01-01, the horizon: debt would be left out. Take more years.", late.Message);
        var real = Assert.Throws<BasisMismatchException>(() => With(TwoPayments with { Loan = new Loan(new Money(600, Eur, PriceBasis.RealOf(2023)), 0.004, 30) }));
        Assert.EndsWith("expected a nominal one: lenders count money of the day. State what the contract says.", real.Message, StringComparison.Ordinal);
        Assert.Throws<RecordException>(() => With(TwoPayments with { Loan = new Loan(Money.Nominal(600, Currency.Of("USD")), 0.004, 30) }));
    }
}
