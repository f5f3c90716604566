namespace SolarEconomics;

/// <summary>Import whose whole price depends on the tier into which the bill falls, so that it jumps at a tier's edge.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Tiers">The tiers, each ending above the one before; only the last has no end.</param>
/// <param name="Per">The time for which tiers and blocks are stated; not a day.</param>
public sealed record TieredCharge(string Name, IReadOnlyList<BillTier> Tiers, BlockPeriod Per = BlockPeriod.Bill) : TariffPart(Name)
{
    internal override SegmentPart On(SegmentContext context) => new SegmentTiers(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        var edges = new RateBlocks([.. Tiers.Select(t => new RateBlock(t.UpToKwh, 0))]);
        var fine = edges.AreInOrder && Tiers.All(t => new RateBlocks(t.Steps).AreInOrder) && Per != BlockPeriod.Day;
        return fine ? [] : [Throw.TiersOutOfOrder(tariff, this)];
    }

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) => this with
    {
        Tiers = [.. Tiers.Select(t => new BillTier(t.UpToKwh, [.. t.Steps.Select(s => s with { PerKwh = s.PerKwh * importFactor })], t.Fixed * supplyFactor))],
    };
}
