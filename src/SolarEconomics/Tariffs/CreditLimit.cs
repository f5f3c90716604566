namespace SolarEconomics;

/// <summary>The most that some credits come to; what lies above is lost, as a line of its own.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Amount">Most credit before tax for one <paramref name="Per"/>.</param>
/// <param name="Per">What the amount is for.</param>
/// <param name="Of">Names of the parts whose credits are limited; empty means all credits before it.</param>
public sealed record CreditLimit(string Name, decimal Amount, ChargePeriod Per, IReadOnlyList<string> Of) : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentCreditLimit(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar) => PercentCharge.UnknownParts(tariff, this, Of);

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this with { Amount = Amount * exportFactor };
}
