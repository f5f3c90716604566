using NodaTime;

namespace SolarEconomics;

/// <summary>A price on top of the others in some hours of days that the retailer calls, such as days of great demand.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Days">The days that were called.</param>
/// <param name="Hours">Hours of those days on the tariff's clock.</param>
/// <param name="PerKwh">Price before tax on top, per kWh.</param>
/// <param name="Side">Import is charged, export credited.</param>
public sealed record EventCharge(string Name, IReadOnlyList<LocalDate> Days, IReadOnlyList<HourSpan> Hours, decimal PerKwh, EnergySide Side = EnergySide.Import)
    : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentEventCharge(this, context);

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) =>
        this with { PerKwh = PerKwh * (Side.IsCharge() ? importFactor : exportFactor) };
}
