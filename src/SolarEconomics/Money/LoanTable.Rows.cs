namespace SolarEconomics;

public sealed partial record LoanTable
{
    /// <summary>The table with every digit: from the plan's own balance, not from payment less interest.</summary>
    /// <remarks>The level payment of a long or dear loan is its interest and a part so small that no digit holds it; what is lost there would grow by the rate
    /// with every payment. The principal of payment k is (A - B)·i·(1 + i)^(k - 1 - n) / (1 - (1 + i)^-n), every factor below 1; extra payments grow beside it.</remarks>
    internal static LoanTable Exact(Loan loan)
    {
        var rate = (decimal)loan.RatePerPeriod;
        var owed = loan.Amount.Amount;
        // What extra payments and the interest they save have taken off the plan.
        var ahead = 0m;
        var rows = new List<LoanRow>(loan.Payments);
        for (var number = 1; number <= loan.Payments && owed > 0; number++)
        {
            var saved = ahead * rate;
            var principal = number == loan.Payments ? owed : Math.Min(loan.PlannedPrincipal(number) + saved, owed);
            Add(rows, loan, number, owed * rate, principal, ref owed, out var extra);
            ahead += saved + extra;
        }
        return new LoanTable(loan, rows);
    }

    /// <summary>The table as a lender writes it: payment and interest in coins.</summary>
    internal static LoanTable InCoins(Loan loan)
    {
        decimal Round(decimal amount) => Math.Round(amount, loan.Amount.Currency.MinorDigits, MidpointRounding.AwayFromZero);
        var (payment, rate) = (Round(loan.Payment.Amount), (decimal)loan.RatePerPeriod);
        var owed = loan.Amount.Amount;
        var rows = new List<LoanRow>(loan.Payments);
        for (var number = 1; number <= loan.Payments && owed > 0; number++)
        {
            var interest = Round(owed * rate);
            Add(rows, loan, number, interest, number == loan.Payments ? owed : Math.Min(payment - interest, owed), ref owed, out _);
        }
        return new LoanTable(loan, rows);
    }

    /// <summary>One row; the last payment clears the loan: balloon and what rounding has left.</summary>
    private static void Add(List<LoanRow> rows, Loan loan, int number, decimal interest, decimal principal, ref decimal owed, out decimal extra)
    {
        owed -= principal;
        extra = Math.Min(loan.ExtraPayments.GetValueOrDefault(number), owed);
        owed -= extra;
        rows.Add(new LoanRow(number, interest, principal, extra, loan.FeePerPayment, owed));
    }
}
