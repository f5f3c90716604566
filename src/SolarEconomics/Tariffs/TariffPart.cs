namespace SolarEconomics;

/// <summary>One part of a tariff: what it charges or pays for, and by which tax rule.</summary>
/// <param name="Name">Name on the bill.</param>
/// <remarks>A new kind of part is a record of this type and a <see cref="SegmentPart"/> that writes its lines.</remarks>
public abstract record TariffPart(string Name)
{
    /// <summary>Tax on this part as a fraction; <see langword="null"/> takes the part's usual rule:
    /// charges bear the tariff's tax, credits for energy sent to the grid bear none.</summary>
    public decimal? TaxFraction { get; init; }

    /// <summary>What the home must do or have for the part to count, such as <c>pay on time</c>; <see langword="null"/>: nothing.
    /// It counts only where <see cref="BillingOptions.ConditionsMet"/> names it.</summary>
    public string? Condition { get; init; }

    /// <summary>Whether the part prices reactive energy, or power with it.</summary>
    internal virtual bool PricesReactive => false;

    /// <summary>Where the part stands in an energy plan; <see langword="null"/> elsewhere.</summary>
    internal string? PlanPath { get; init; }

    /// <summary>Lays the part on some days of a plan.</summary>
    internal abstract SegmentPart On(SegmentContext context);

    /// <summary>What contradicts itself in the part.</summary>
    internal virtual IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar) => [];

    /// <summary>The part with its prices scaled.</summary>
    internal virtual TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this;
}
