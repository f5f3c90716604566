using NodaTime;

namespace SolarEconomics;

/// <summary>Loan flows of an outlook: those of the ledger, and what falls due of the stated loans after them, so that no payment counts twice.</summary>
/// <param name="Events">All of them, none after the horizon.</param>
/// <param name="LedgerUntil">Day of the ledger's last loan flow; <see langword="null"/> where it has none.</param>
/// <param name="LeftToLedger">Names of stated loans of which something falls due on or before that day.</param>
internal sealed record OwnerCash(IReadOnlyList<CashEvent> Events, LocalDate? LedgerUntil, IReadOnlyList<string> LeftToLedger)
{
    internal static OwnerCash Of(OutlookRecord record, IReadOnlyList<LoanTaken> loans, LocalDate horizon)
    {
        var paid = record.Worth.Ledger!.Entries.Where(e => e.Class == LedgerClass.Finance && e.Date <= horizon).ToList();
        var until = paid.Select(e => (LocalDate?)e.Date).Max();
        var events = new List<CashEvent>(paid.Select(e => new CashEvent(e.Date, e.Date, (double)e.CashFlow.Amount,
            e.Kind == LedgerKind.LoanReceived ? MoneyPurpose.LoanReceived : MoneyPurpose.LoanPayment)));
        var left = new List<string>();
        foreach (var loan in loans)
        {
            var due = LoanCash.Events(loan, horizon, record.Worth.Site.Currency);
            var later = due.Where(e => until is not { } day || e.Start > day).ToList();
            if (later.Count < due.Count) left.Add(loan.Name);
            events.AddRange(later);
        }
        return new OwnerCash(events, until, left);
    }
}
