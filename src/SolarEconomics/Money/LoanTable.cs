using System.Globalization;

namespace SolarEconomics;

/// <summary>The amortisation table of a loan.</summary>
/// <param name="Loan">The loan.</param>
/// <param name="Rows">Payments in order; fewer than planned where extra payments end it early.</param>
public sealed partial record LoanTable(Loan Loan, IReadOnlyList<LoanRow> Rows) : IFinding
{
    /// <summary>All interest.</summary>
    public Money TotalInterest => Loan.Amount with { Amount = Rows.Sum(r => r.Interest) };

    /// <summary>All fees, the one kept back included.</summary>
    public Money TotalFees => Loan.Amount with { Amount = Rows.Sum(r => r.Fee) + Loan.UpfrontFee };

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var unit = Loan.Amount.Currency.Code;
        return new Finding(
            Wording.Exact(TotalInterest, culture),
            $"of interest and {Wording.Exact(TotalFees, culture)} of fees are paid on {Wording.Exact(Loan.Amount, culture)} " +
            $"in {Wording.Count(Rows.Count, "payment", culture)}.")
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

        string Print(decimal amount) => Wording.Plain(Loan.Amount with { Amount = amount }, culture);
    }
}
