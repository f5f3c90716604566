using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>An outlook in its owner's pocket: the project's flows and those of the loans that paid for it. Nominal.</summary>
/// <remarks>The discount rate is the outlook's. Interest is not taken off any tax. Immutable, so safe to share between threads.</remarks>
public sealed class OwnerView : IFinding
{
    private readonly CashPath _path;
    private readonly CashPath _discounted;
    private readonly IReadOnlyList<CashEvent> _cash;

    internal OwnerView(Outlook outlook, OwnerCash cash)
    {
        (Outlook, LedgerUntil, LeftToLedger) = (outlook, cash.LedgerUntil, cash.LeftToLedger);
        _cash = cash.Events;
        var all = outlook.Events.Concat(_cash).ToList();
        _path = outlook.Path(all, 0);
        _discounted = outlook.Path(all, outlook.Assumptions.DiscountRate);
        YearsAhead = YearsOf();
    }

    /// <summary>The outlook whose owner is looked at.</summary>
    public Outlook Outlook { get; }

    /// <summary>The years from the first purchase to the horizon.</summary>
    public IReadOnlyList<OwnerYear> YearsAhead { get; }

    /// <summary>The yearly flows, year 0 first.</summary>
    public MoneyFlow Flow => MoneyFlow.Nominal(Outlook.Currency, [.. YearsAhead.Select(y => (double)y.Net.Amount)]);

    /// <summary>All flows with their dates.</summary>
    public DatedMoneyFlow DatedFlow => Outlook.DatedFlow + LoanFlow;

    /// <summary>The loans' flows alone, with their dates.</summary>
    public DatedMoneyFlow LoanFlow => DatedMoneyFlow.Sorted(Outlook.Currency, PriceBasis.Nominal, _cash.Select(e => new DatedAmount(e.Start, (decimal)e.Amount)));

    /// <summary>Net present value at the first purchase, at the assumed nominal discount rate.</summary>
    /// <remarks>Equation: Σ flow · (1 + r)^(−days/365). Source: worth-1.</remarks>
    public Money Npv => Outlook.Round(_discounted.AtEnd);

    /// <summary>What borrowing itself is worth: the net present value less the project's. Below 0 where the loan costs more than the discount rate.</summary>
    public Money WorthOfBorrowing => Npv - Outlook.Npv;

    /// <summary>Internal rate of return of the owner's dated flows, with how the search ended.</summary>
    public IrrResult Irr
    {
        get
        {
            _ = TimeValue.TryXirr(DatedFlow, out var result);
            return result;
        }
    }

    /// <summary>Lasting payback in years from the first purchase, undiscounted; <see langword="null"/> where it is not within the horizon, or where the account was never below 0.</summary>
    public double? PaybackYears => _path.LastingCrossing() / 365.25;

    /// <summary>The most that is out of the owner's pocket on any day, without a sign; 0 where the loans pay for everything.</summary>
    public Money MostOutOfPocket => Outlook.Round(Math.Max(0, -_path.Lowest));

    /// <summary>Day of the last payment to a lender; <see langword="null"/> where none is known.</summary>
    public LocalDate? LastPayment => _cash.Where(e => e.Amount < 0).Select(e => (LocalDate?)e.Start).Max();

    /// <summary>Day of the ledger's last loan flow; <see langword="null"/> where it has none.</summary>
    internal LocalDate? LedgerUntil { get; }

    /// <summary>Names of stated loans of which something falls due on or before that day, and is taken from the ledger instead.</summary>
    internal IReadOnlyList<string> LeftToLedger { get; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => OwnerWords.Say(this, culture);

    private List<OwnerYear> YearsOf()
    {
        var years = new List<OwnerYear>();
        var position = Money.Nominal(0, Outlook.Currency);
        var loans = Outlook.Assumptions.Loans.Select(l => (Taken: l, l.Loan.Table().Rows)).ToList();
        foreach (var year in Outlook.YearsAhead)
        {
            var isFirst = year.Year == 0;
            var isLast = year.Year == Outlook.YearsAhead.Count - 1;
            // The last payment may fall on the horizon itself and belongs to the last year, as the residual does.
            var next = isLast ? Outlook.Horizon.PlusDays(1) : Outlook.YearsAhead[year.Year + 1].Start;
            Money Sum(MoneyPurpose purpose) => Outlook.Round(_cash.Where(e => e.Purpose == purpose && (isFirst || e.Start >= year.Start) && e.Start < next).Sum(e => e.Amount));
            var row = new OwnerYear(year.Year, year.Start, year.Net, Sum(MoneyPurpose.LoanReceived), Sum(MoneyPurpose.Interest), Sum(MoneyPurpose.Principal),
                Sum(MoneyPurpose.LoanFee), Sum(MoneyPurpose.LoanPayment), position, Outlook.Round((double)loans.Sum(l => LoanCash.OwedBefore(l.Taken, l.Rows, next))));
            position += row.Net;
            years.Add(row with { CumulativePosition = position });
        }
        return years;
    }
}
