using NodaTime;

namespace SolarEconomics;

/// <summary>A loan's cash by what it is for: paid out, interest, principal, fees. Every digit kept.</summary>
internal static class LoanCash
{
    /// <summary>All cash of a loan, refused where it does not end within the horizon: debt would be left out.</summary>
    internal static List<CashEvent> Events(LoanTaken taken, LocalDate horizon, Currency currency)
    {
        var loan = taken.Loan;
        if (loan.Amount.Currency != currency) throw Throw.CurrencyOfSite(currency, loan.Amount.Currency, $"loan of \"{taken.Name}\"");
        if (!loan.Amount.Basis.IsNominal) throw Throw.LoanNotNominal(taken.Name, loan.Amount.Basis);
        if (12 % loan.PaymentsPerYear != 0) throw Throw.PaymentsNotByMonths(loan.PaymentsPerYear);
        var rows = loan.Table().Rows;
        var last = Due(taken, rows[^1]);
        if (last > horizon) throw Throw.LoanBeyondHorizon(taken.Name, last, horizon);
        var events = new List<CashEvent>();
        Add(taken.On, loan.Amount.Amount, MoneyPurpose.LoanReceived);
        Add(taken.On, -loan.UpfrontFee, MoneyPurpose.LoanFee);
        foreach (var row in rows)
        {
            Add(Due(taken, row), -row.Interest, MoneyPurpose.Interest);
            Add(Due(taken, row), -(row.Principal + row.Extra), MoneyPurpose.Principal);
            Add(Due(taken, row), -row.Fee, MoneyPurpose.LoanFee);
        }
        return events;

        void Add(LocalDate day, decimal amount, MoneyPurpose purpose)
        {
            if (amount != 0) events.Add(new CashEvent(day, day, (double)amount, purpose));
        }
    }

    /// <summary>What is owed at the beginning of a day, the payments before it made.</summary>
    internal static decimal OwedBefore(LoanTaken taken, IReadOnlyList<LoanRow> rows, LocalDate day)
    {
        if (taken.On >= day) return 0;
        var owed = taken.Loan.Amount.Amount;
        foreach (var row in rows)
        {
            if (Due(taken, row) >= day) break;
            owed = row.Balance;
        }
        return owed;
    }

    private static LocalDate Due(LoanTaken taken, LoanRow row) => taken.On.PlusMonths(row.Number * 12 / taken.Loan.PaymentsPerYear);
}
