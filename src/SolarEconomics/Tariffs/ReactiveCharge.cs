namespace SolarEconomics;

/// <summary>A charge on reactive energy beyond a share of the energy taken.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="PerKvarh">Price before tax, per kvarh.</param>
/// <param name="FreeShare">Reactive energy that is free, as a share of the kWh taken: 0.5 leaves a power factor of 0.89 free. Range: 0 and more.</param>
public sealed record ReactiveCharge(string Name, decimal PerKvarh, decimal FreeShare = 0.5m) : TariffPart(Name)
{
    internal override bool PricesReactive => true;

    internal override SegmentPart On(SegmentContext context) => new SegmentReactive(this, context);

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this with { PerKvarh = PerKvarh * importFactor };
}
