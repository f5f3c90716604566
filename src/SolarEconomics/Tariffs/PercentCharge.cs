namespace SolarEconomics;

/// <summary>A levy or a discount as a share of other lines.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Fraction">Share of the lines before tax: 0.40 is a levy of 40 %, −0.10 a discount of 10 %.</param>
/// <param name="Of">Names of the parts whose lines it takes; empty means all charges before it, credits left out.</param>
public sealed record PercentCharge(string Name, decimal Fraction, IReadOnlyList<string> Of) : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentPercent(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar) => UnknownParts(tariff, this, Of);

    internal static IEnumerable<TariffMistake> UnknownParts(Tariff tariff, TariffPart part, IReadOnlyList<string> of)
    {
        var names = tariff.Parts.TakeWhile(p => !ReferenceEquals(p, part)).Select(p => p.Name).ToList();
        return of.Where(n => !names.Contains(n, StringComparer.Ordinal)).Select(n => Throw.UnknownPart(tariff, part, n, names));
    }
}
