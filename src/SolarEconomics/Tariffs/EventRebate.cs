using NodaTime;

namespace SolarEconomics;

/// <summary>Paid for import left off in some hours of called days, against the mean of the same hours on days before.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Days">The days that were called.</param>
/// <param name="Hours">Hours of those days on the tariff's clock.</param>
/// <param name="PerKwh">Paid for each kWh left off, free of tax unless the part says otherwise.</param>
/// <param name="BaselineDays">How many earlier days count: working days for a working day, weekends and holidays for one of those, called days left out.</param>
/// <remarks>Equation: max(0, mean of the earlier days − import) × price. A day without any earlier day of its kind in the readings pays nothing.</remarks>
public sealed record EventRebate(string Name, IReadOnlyList<LocalDate> Days, IReadOnlyList<HourSpan> Hours, decimal PerKwh, int BaselineDays = 10)
    : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentEventRebate(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        if (BaselineDays < 1) yield return Throw.BaselineDays(tariff, this);
    }

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this with { PerKwh = PerKwh * exportFactor };
}
