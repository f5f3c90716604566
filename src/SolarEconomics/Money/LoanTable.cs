using System.Globalization;

namespace SolarEconomics;

/// <summary>The amortisation table of a loan.</summary>
/// <param name="Loan">The loan.</param>
/// <param name="Rows">Payments in order; fewer than planned where extra payments end it early.</param>
public sealed record LoanTable(Loan Loan, IReadOnlyList<LoanRow> Rows) : IFinding
{
    /// <summary>All interest.</summary>
    public Money TotalInterest => Loan.Amount with { Amount = Rows.Sum(r => r.Interest) };

    /// <summary>All fees, the one kept back included.</summary>
    public Money TotalFees => Loan.Amount with { Amount = Rows.Sum(r => r.Fee) + Loan.UpfrontFee };

    internal static LoanTable Of(Loan loan, Func<decimal, decimal> round)
    {
        var payment = round(loan.Payment.Amount);
        var rate = (decimal)loan.RatePerPeriod;
        var owed = loan.Amount.Amount;
        var rows = new List<LoanRow>(loan.Payments);
        for (var number = 1; number <= loan.Payments && owed > 0; number++)
        {
            var interest = round(owed * rate);
            // The last payment clears the loan: balloon and what rounding has left.
            var principal = number == loan.Payments ? owed : Math.Min(payment - interest, owed);
            owed -= principal;
            var extra = Math.Min(loan.ExtraPayments.GetValueOrDefault(number), owed);
            owed -= extra;
            rows.Add(new LoanRow(number, interest, principal, extra, loan.FeePerPayment, owed));
        }
        return new LoanTable(loan, rows);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var unit = Loan.Amount.Currency.Code;
        return new Finding(
            Print(TotalInterest.Amount) + " " + unit,
            $"of interest and {Print(TotalFees.Amount)} {unit} of fees are paid on {Print(Loan.Amount.Amount)} {unit} " +
            $"in {Rows.Count.ToString(culture)} payments.")
        {
            Notes = [$"Interest and fees together cost {(Loan.EffectiveCost().PerYear * 100).ToString("0.00", culture)} % a year, effective."],
            Cautions = ["Not credit advice. A \"0 %\" offer has its price in the fees or in the price of the goods."],
            Tables =
            [
                new FindingTable($"Payments ({unit})", ["Payment", "Paid", "Interest", "Principal", "Extra", "Fee", "Balance"],
                    [.. Rows.Select(r => (IReadOnlyList<string>)
                        [r.Number.ToString(culture), Print(r.Paid), Print(r.Interest), Print(r.Principal), Print(r.Extra), Print(r.Fee), Print(r.Balance)])]),
            ],
        };

        string Print(decimal amount) => amount.ToString("#,0.00", culture);
    }
}
