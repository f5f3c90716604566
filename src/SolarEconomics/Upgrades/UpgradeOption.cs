using NodaTime;

namespace SolarEconomics;

/// <summary>Something that could be done instead of nothing: its money is what differs from doing nothing, so what was spent before counts nowhere.</summary>
/// <param name="Name">A few words, different from those of the other options.</param>
public abstract record UpgradeOption(string Name)
{
    /// <summary>Parts that doing nothing would have to replace and this option makes needless from its day on: an old inverter that goes with the old modules.</summary>
    public IReadOnlyList<Replacement> Avoids { get; init; } = [];

    /// <summary>How it is paid, for the owner's view; <see langword="null"/> where it is paid at once. The ranking is without loans.</summary>
    public Loan? Loan { get; init; }

    /// <summary>Names of options that cannot be chosen together with this one; one side is enough.</summary>
    public IReadOnlyList<string> Excludes { get; init; } = [];

    /// <summary>Names of options without which this one cannot be chosen.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>Day from which it acts.</summary>
    public abstract LocalDate From { get; }

    /// <summary>What it is bought for, in the site's currency; 0 where nothing is bought.</summary>
    public abstract decimal Price { get; }

    /// <summary>The same option after waiting: bought later, at prices that fell meanwhile.</summary>
    /// <param name="years">Years to wait. Range: 1 to 30.</param>
    /// <param name="priceFallPerYear">Fall of the price per year, a fraction. Range: −0.5 to 0.5; below 0 it rises.</param>
    /// <param name="resaleFallPerYear">Fall per year of what displaced parts sell for, a fraction. Range: 0 to 1.</param>
    /// <remarks>Two fixed plans compared: the cost of delay. What must be replaced while one waits is not avoided any more. The worth of deciding again later is not in it: see <see cref="Outlook.Waiting"/>.</remarks>
    public UpgradeOption Waiting(int years, double priceFallPerYear = 0, double resaleFallPerYear = 0)
    {
        Require.Within(years, 1, 30, "years to wait");
        Require.Within(priceFallPerYear, -0.5, 0.5, "fall of the price per year; 5 % is written 0.05");
        Require.Fraction(resaleFallPerYear);
        var later = Later(years, Math.Pow(1 - priceFallPerYear, years), Math.Pow(1 - resaleFallPerYear, years));
        return later with { Name = FormattableString.Invariant($"{Name}, {years} {(years == 1 ? "year" : "years")} later") };
    }

    /// <summary>The cash that differs from doing nothing, loans and avoided replacements left out.</summary>
    internal abstract IEnumerable<CashEvent> OwnEvents(OutlookRecord record, Assumptions assumptions);

    /// <summary>Whether what it saves follows the sun of each year.</summary>
    internal virtual bool FollowsWeather => false;

    private protected abstract UpgradeOption Later(int years, double priceFactor, double resaleFactor);

    /// <summary>All cash that differs from doing nothing, without loans.</summary>
    internal IEnumerable<CashEvent> Events(OutlookRecord record, Assumptions assumptions)
    {
        foreach (var piece in OwnEvents(record, assumptions)) yield return piece;
        var horizon = record.FirstPurchase.PlusYears(assumptions.Years);
        foreach (var part in Avoids)
        {
            var day = record.FirstPurchase.PlusDays((int)Math.Round(part.YearsAfterFirstPurchase * 365.25));
            if (day < From || day < record.RecordEnd || day >= horizon) continue;
            var growth = Math.Pow(1 + assumptions.CostGrowth, Period.DaysBetween(record.RecordEnd, day) / 365.25);
            yield return new CashEvent(day, day, (double)part.Cost * growth, MoneyPurpose.Replacement);
        }
    }
}
