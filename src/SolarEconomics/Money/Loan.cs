namespace SolarEconomics;

/// <summary>A loan with level payments at period ends, and what offers add to it: fees, a balloon, extra payments.</summary>
/// <param name="Amount">Amount lent. Range: above 0 to 1e15. Loans are nominal.</param>
/// <param name="RatePerPeriod">Interest per period, a fraction: 0.06/12 for 6 % a year quoted monthly. Range: 0 to below 1.</param>
/// <param name="Payments">Number of payments. Range: 1 to 10,000.</param>
/// <remarks>Immutable. Not credit advice: compare offers by <see cref="AprPerYear"/>, which counts the fees.</remarks>
public sealed record Loan(Money Amount, double RatePerPeriod, int Payments)
{
    /// <summary>Periods in a year. Default: 12, monthly payments. Range: 1 to 366.</summary>
    public int PaymentsPerYear { get; init; } = 12;

    /// <summary>What is left to pay with the last payment, in the loan's currency. Default: 0. Range: 0 or more.</summary>
    public decimal Balloon { get; init; }

    /// <summary>Fee kept back when the loan is paid out, in the loan's currency. Default: 0. Range: 0 or more.</summary>
    public decimal UpfrontFee { get; init; }

    /// <summary>Fee with every payment, in the loan's currency. Default: 0. Range: 0 or more.</summary>
    public decimal FeePerPayment { get; init; }

    /// <summary>Extra payments by number of the payment they come with, counted from 1. They shorten the loan, the level payment stays.</summary>
    public IReadOnlyDictionary<int, decimal> ExtraPayments { get; init; } = new Dictionary<int, decimal>();

    /// <summary>The level payment without fees, not rounded.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number of the loan is out of range.</exception>
    /// <remarks>Equation: see <see cref="TimeValue.Pmt"/>. Source: money-10.</remarks>
    public Money Payment => Amount with { Amount = Checked().PlannedPrincipal(1) + (Amount.Amount * (decimal)RatePerPeriod) };

    /// <summary>The table of payments with every digit kept.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number of the loan is out of range.</exception>
    public LoanTable Table() => LoanTable.Exact(Checked());

    /// <summary>The table of payments as a lender writes it: payment and interest rounded to the currency's smallest coin, half up; the last payment takes up the rest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number of the loan is out of range.</exception>
    public LoanTable TableInCoins() => LoanTable.InCoins(Checked());

    /// <summary>The rate that counts interest and fees, as an effective rate per year (the European annual percentage rate of charge).</summary>
    /// <exception cref="NoSingleRateException">What is paid never equals what was got.</exception>
    /// <remarks>Equation: (1 + IRR per period)^periods - 1 over what is really got and paid. Source: money-11.</remarks>
    public Rate EffectiveCost() => Rate.Solved(Math.Pow(1 + PeriodCost(), PaymentsPerYear) - 1);

    /// <summary>The rate that counts interest and fees, quoted per year (United States annual percentage rate, regular periods).</summary>
    /// <exception cref="NoSingleRateException">What is paid never equals what was got.</exception>
    /// <remarks>Equation: IRR per period × periods a year. For an odd first period see <see cref="TimeValue.Apr"/>. Source: money-11.</remarks>
    public double AprPerYear() => PeriodCost() * PaymentsPerYear;

    /// <summary>The loan in the owner's pocket, year by year: paid out in year 0, payments and fees in the years they fall.</summary>
    /// <param name="horizonYears">Last year looked at. Range: the loan's length or more.</param>
    /// <exception cref="ArgumentException">The horizon is shorter than the loan, so that debt would be left out.</exception>
    public MoneyFlow OwnerFlow(int horizonYears)
    {
        var rows = Table().Rows;
        var years = (rows.Count + PaymentsPerYear - 1) / PaymentsPerYear;
        if (years > horizonYears) throw Throw.LoanLongerThanHorizon(years, horizonYears);
        var flow = new double[horizonYears + 1];
        flow[0] = (double)(Amount.Amount - UpfrontFee);
        foreach (var row in rows) flow[(row.Number - 1) / PaymentsPerYear + 1] -= (double)row.Paid;
        return MoneyFlow.Of(Amount.Basis, Amount.Currency, flow);
    }

    /// <summary>Principal in a payment of the plan, without extra payments and without the balloon.</summary>
    /// <remarks>Equation: (A - B)·i·(1 + i)^(k - 1 - n) / (1 - (1 + i)^-n); (A - B)/n at rate 0. Source: money-10.</remarks>
    internal decimal PlannedPrincipal(int number)
    {
        var repaid = Amount.Amount - Balloon;
        if (RatePerPeriod == 0) return repaid / Payments;
        var growth = Growth.LogOnePlus(RatePerPeriod);
        return repaid * (decimal)(RatePerPeriod * Math.Exp((number - 1 - Payments) * growth) / -Growth.ExpMinusOne(-Payments * growth));
    }

    private double PeriodCost() =>
        TimeValue.Irr([(double)(Amount.Amount - UpfrontFee), .. Table().Rows.Select(r => -(double)r.Paid)]);

    private Loan Checked()
    {
        if (Amount.Amount <= 0) throw Throw.CostNotPositive((double)Amount.Amount);
        if (Rate.AskedPerPeriod(RatePerPeriod) < 0) throw Throw.PeriodRateAskedBack(RatePerPeriod);
        Require.Within((double)Amount.Amount, 0, 1e15, "money, without a sign", nameof(Amount));
        Require.Within(Payments, 1, 10_000, "payments");
        Require.Within(PaymentsPerYear, 1, 366, "payments a year");
        foreach (var amount in ExtraPayments.Values.Concat([Balloon, UpfrontFee, FeePerPayment]))
        {
            Require.Within((double)amount, 0, 1e15, "money, without a sign");
        }
        return this;
    }
}
