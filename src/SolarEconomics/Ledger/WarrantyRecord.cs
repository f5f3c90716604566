using System.Globalization;

namespace SolarEconomics;

/// <summary>Claims under warranties and insurance: what was paid out, and what was refused.</summary>
/// <param name="Paid">Claims paid out.</param>
/// <param name="Refused">Claims refused; their amount is what was claimed.</param>
/// <param name="Currency">Currency of the claims.</param>
public sealed record WarrantyRecord(IReadOnlyList<LedgerEntry> Paid, IReadOnlyList<LedgerEntry> Refused, Currency Currency) : IFinding
{
    /// <summary>Sum paid out.</summary>
    public Money PaidOut => Money.Nominal(Paid.Sum(e => e.Amount.Amount), Currency);

    /// <summary>Sum claimed and refused.</summary>
    public Money TurnedDown => Money.Nominal(Refused.Sum(e => e.Amount.Amount), Currency);

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var claims = Paid.Count + Refused.Count;
        return new Finding($"{Paid.Count.ToString(culture)} of {claims.ToString(culture)}",
            claims == 0 ? "claims: none is on record." : $"claims were paid, {Wording.Whole(PaidOut, culture)} in all; {Wording.Whole(TurnedDown, culture)} were claimed and refused.")
        {
            Notes = ["A refused claim moves no money; its part and work stand in the ledger as they were paid."],
            Cautions = [Cautions.Money],
        };
    }
}
