using NodaTime;

namespace SolarEconomics;

/// <summary>What was paid and received in one calendar month, by class and by kind. Money of the day.</summary>
/// <param name="Month">The month.</param>
/// <param name="Invested">Purchases and the like less grants and refunds.</param>
/// <param name="Running">Repairs, parts, insurance and other running costs.</param>
/// <param name="Income">Sales, certificates and paid claims.</param>
/// <param name="Finance">Loan flows: received less paid.</param>
/// <param name="ByKind">Sum per kind that has entries in the month.</param>
public sealed record LedgerMonth(YearMonth Month, Money Invested, Money Running, Money Income, Money Finance, IReadOnlyList<(LedgerKind Kind, Money Sum)> ByKind)
{
    /// <summary>Received less paid, without loan flows.</summary>
    public Money CashFlow => Income - Invested - Running;
}
