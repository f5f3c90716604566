namespace SolarEconomics;

/// <summary>What the charges before tax come to at least; the difference is a line of its own. Credits do not lower the charges.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Amount">Least charge before tax for one <paramref name="Per"/>.</param>
/// <param name="Per">What the amount is for.</param>
public sealed record MinimumBill(string Name, decimal Amount, ChargePeriod Per = ChargePeriod.Bill) : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentMinimum(this, context);

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this with { Amount = Amount * supplyFactor };
}
