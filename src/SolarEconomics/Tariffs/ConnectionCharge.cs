namespace SolarEconomics;

/// <summary>A charge for the size of the connection, whatever is used.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="PerUnit">Charge before tax for one unit of size and one <paramref name="Per"/>.</param>
/// <param name="Unit">What the size is stated in.</param>
/// <param name="Size">Size of the home's connection. Above 0.</param>
/// <param name="Per">What it is counted by.</param>
public sealed record ConnectionCharge(string Name, decimal PerUnit, ConnectionUnit Unit, decimal Size, ChargePeriod Per = ChargePeriod.Month) : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentConnection(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        if (Size <= 0) yield return Throw.ConnectionSize(tariff, this);
    }

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this with { PerUnit = PerUnit * supplyFactor };
}
