namespace SolarEconomics;

/// <summary>A surcharge on other lines for each hundredth that the mean power factor of a bill stays below a limit.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Least">The limit. Range: above 0 to 1, for example 0.90.</param>
/// <param name="FractionPerHundredth">Share of the lines for each hundredth below: 0.01 is 1 %.</param>
/// <param name="Of">Names of the parts whose lines it takes; empty means all charges before it.</param>
public sealed record PowerFactorCharge(string Name, decimal Least, decimal FractionPerHundredth, IReadOnlyList<string> Of) : TariffPart(Name)
{
    internal override bool PricesReactive => true;

    internal override SegmentPart On(SegmentContext context) => new SegmentPowerFactor(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        if (Least is <= 0 or > 1) yield return Throw.PowerFactor(tariff, this);
        foreach (var mistake in PercentCharge.UnknownParts(tariff, this, Of)) yield return mistake;
    }
}
