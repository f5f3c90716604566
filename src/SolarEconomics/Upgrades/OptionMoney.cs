using NodaTime;

namespace SolarEconomics;

/// <summary>The money of one option beside doing nothing, valued at the end of the records so that early and late options compare.</summary>
internal sealed class OptionMoney
{
    private readonly OutlookRecord _record;
    private readonly Assumptions _assumptions;
    private readonly LocalDate _horizon;
    private readonly List<CashEvent> _events;

    internal OptionMoney(OutlookRecord record, Assumptions assumptions, UpgradeOption option)
    {
        _record = record;
        _assumptions = assumptions;
        _horizon = record.FirstPurchase.PlusYears(assumptions.Years);
        Option = option;
        _events = [.. option.Events(record, assumptions)];
        Npv = Present(_events);
        Invested = -Present(_events.Where(e => e.Purpose is MoneyPurpose.Investment or MoneyPurpose.Replacement or MoneyPurpose.Income));
    }

    internal UpgradeOption Option { get; }

    internal double Npv { get; }

    internal double Invested { get; }

    /// <summary>Savings per unit invested; none where nothing is invested.</summary>
    internal double? Sir => Invested > 0.005 ? (Npv + Invested) / Invested : null;

    /// <summary>What one unit paid on the option's day is worth at the end of the records.</summary>
    internal double FactorOfPrice => FactorOn(Option.From);

    internal double? PaybackYears => new CashPath(Option.From, _horizon, _events, 0).LastingCrossing() / 365.25;

    /// <summary>Net present value with the loan's flows; <see langword="null"/> without a loan.</summary>
    internal double? OwnerNpv => Option.Loan is { } loan ? Npv + Present(LoanCash.Events(new LoanTaken(Option.Name, loan, Option.From), _horizon, _record.Worth.Site.Currency)) : null;

    /// <summary>The level yearly amount from the end of the records to the horizon that is worth as much.</summary>
    internal double YearlyWorth
    {
        get
        {
            var years = Period.DaysBetween(_record.RecordEnd, _horizon) / 365.0;
            var rate = _assumptions.DiscountRate;
            return Npv * (rate == 0 ? 1 / years : -rate / Growth.OverPeriods(rate, -years));
        }
    }

    /// <summary>The net present value in a draw: what follows the sun is moved by each year's weather.</summary>
    internal double NpvWith(ReadOnlySpan<double> weather)
    {
        if (!Option.FollowsWeather) return Npv;
        var sum = 0.0;
        foreach (var e in _events)
        {
            var factor = e.Purpose == MoneyPurpose.Savings ? weather[Math.Min(weather.Length - 1, e.Start.Year - _record.RecordEnd.Year)] : 1;
            sum += Discounted(e) * factor;
        }
        return sum;
    }

    private double Present(IEnumerable<CashEvent> events) => events.Sum(Discounted);

    /// <summary>The same rule as the cash path's: an amount that comes in over a span counts at its middle.</summary>
    private double Discounted(CashEvent e)
    {
        if (e.Start > _horizon) return 0;
        var middle = (Period.DaysBetween(_record.RecordEnd, e.Start) + Period.DaysBetween(_record.RecordEnd, e.End)) / 2.0;
        return e.Amount * Math.Pow(1 + _assumptions.DiscountRate, -middle / 365.0);
    }

    private double FactorOn(LocalDate day) => Math.Pow(1 + _assumptions.DiscountRate, -Period.DaysBetween(_record.RecordEnd, day) / 365.0);
}
