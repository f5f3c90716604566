namespace SolarEconomics;

/// <summary>Import of some days priced by the tier that their whole energy falls into.</summary>
internal sealed class SegmentTiers : SegmentPart
{
    private readonly TieredCharge _charge;
    private readonly SegmentContext _context;
    private readonly SegmentEnergy _all;
    private readonly decimal _scale;

    internal SegmentTiers(TieredCharge charge, SegmentContext context)
    {
        _charge = charge;
        _context = context;
        _all = new SegmentEnergy(new EnergyPart(charge.Name, EnergySide.Import, [EnergyRate.Flat(charge.Name, 0)]), context);
        _scale = BlockScale.Of(charge.Per, context.Days, context.WholePeriod);
    }

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        Span<double> sum = [0.0];
        _all.Sum(run.ImportKwh, sum);
        var kwh = BillWriter.Kwh(sum[0]);
        var tier = _charge.Tiers.First(t => t.UpToKwh is null || kwh <= Math.Round(t.UpToKwh.Value * _scale, 9));
        var blocks = new RateBlocks(tier.Steps, _charge.Per);
        Span<decimal> inBlocks = new decimal[tier.Steps.Count];
        blocks.Share(kwh, _scale, inBlocks);
        var rate = EnergyRate.InBlocks(_charge.Name, blocks);
        for (var i = 0; i < inBlocks.Length; i++)
        {
            if (inBlocks[i] == 0) continue;
            lines.Add(BillWriter.Line(_context, _charge, RuleWords.Block(rate, blocks, i), inBlocks[i], "kWh", tier.Steps[i].PerKwh, 1,
                RuleWords.Tier(tier, kwh, inBlocks[i], tier.Steps[i].PerKwh, _context.Tariff)));
        }
        if (tier.Fixed != 0)
            lines.Add(BillWriter.Line(_context, _charge, _charge.Name + ", fixed", _scale, "bill", tier.Fixed, 1,
                RuleWords.Tier(tier, kwh, _scale, tier.Fixed, _context.Tariff)));
    }
}
