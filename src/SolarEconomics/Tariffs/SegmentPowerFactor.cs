namespace SolarEconomics;

/// <summary>A surcharge for the mean power factor of some days; nothing where no reactive energy is metered.</summary>
internal sealed class SegmentPowerFactor(PowerFactorCharge charge, SegmentContext context) : SegmentPart
{
    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        if (run.ReactiveKvarh.IsEmpty) return;
        var (first, end) = (context.Ticks.FirstFrom(context.From), context.Ticks.FirstFrom(context.Until));
        var (kwh, kvarh) = (BandSums.Total(run.ImportKwh[first..end]), BandSums.Total(run.ReactiveKvarh[first..end]));
        if (kwh <= 0) return;
        var factor = Math.Round((decimal)(kwh / Math.Sqrt((kwh * kwh) + (kvarh * kvarh))), 4);
        var hundredths = (charge.Least - factor) * 100;
        var sum = SegmentPercent.SumOf(charge.Of, context, lines);
        if (hundredths > 0 && sum != 0)
            lines.Add(BillWriter.Line(context, charge, charge.Name, sum, context.Tariff.Currency.Code, hundredths * charge.FractionPerHundredth, 1,
                RuleWords.PowerFactor(charge, factor, sum, context.Tariff)));
    }
}
