using NodaTime;

namespace SolarEconomics;

/// <summary>An option whose money was worked out elsewhere: a battery by a flow model, a quote with its own forecast.</summary>
/// <param name="Name">A few words.</param>
/// <param name="Flow">What differs from doing nothing, nominal, with its days: paid negative, received positive. What lies beyond the horizon is not counted.</param>
public sealed record FlowOption(string Name, DatedMoneyFlow Flow) : UpgradeOption(Name)
{
    /// <inheritdoc/>
    public override LocalDate From => Flow.FirstDate;

    /// <summary>What is paid on the first day.</summary>
    public override decimal Price => Math.Max(0, -Flow.Amounts.Where(a => a.Date == Flow.FirstDate).Sum(a => a.Amount));

    internal override IEnumerable<CashEvent> OwnEvents(OutlookRecord record, Assumptions assumptions)
    {
        var site = record.Worth.Site;
        if (Flow.Currency != site.Currency) throw Throw.CurrencyOfSite(site.Currency, Flow.Currency, "flow of an option");
        if (!Flow.Basis.IsNominal) throw Throw.BasisMismatch(Flow.Basis, Rate.Nominal(assumptions.DiscountRate));
        if (From < record.RecordEnd) throw Throw.ChangeOutsideOutlook(From, record.RecordEnd, record.FirstPurchase.PlusYears(assumptions.Years));
        return Flow.Amounts.Select(a => new CashEvent(a.Date, a.Date, (double)a.Amount,
            a.Date == From && a.Amount < 0 ? MoneyPurpose.Investment : a.Amount < 0 ? MoneyPurpose.Running : MoneyPurpose.Savings));
    }

    private protected override UpgradeOption Later(int years, double priceFactor, double resaleFactor) => this with
    {
        Flow = DatedMoneyFlow.InOrder(Flow.Currency, Flow.Basis, Flow.Amounts.Select(a =>
            a with { Date = a.Date.PlusYears(years), Amount = a.Date == From && a.Amount < 0 ? a.Amount * (decimal)priceFactor : a.Amount })),
    };
}
