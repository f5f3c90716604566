namespace SolarEconomics;

/// <summary>A charge on the reactive energy of some days; nothing where none is metered.</summary>
internal sealed class SegmentReactive(ReactiveCharge charge, SegmentContext context) : SegmentPart
{
    private readonly int _first = context.Ticks.FirstFrom(context.From);
    private readonly int _end = context.Ticks.FirstFrom(context.Until);

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        if (run.ReactiveKvarh.IsEmpty) return;
        var kvarh = BillWriter.Kwh(BandSums.Total(run.ReactiveKvarh[_first.._end]));
        var kwh = BillWriter.Kwh(BandSums.Total(run.ImportKwh[_first.._end]));
        var beyond = kvarh - (charge.FreeShare * kwh);
        if (beyond > 0) lines.Add(BillWriter.Line(context, charge, charge.Name, beyond, "kvarh", charge.PerKvarh, 1, RuleWords.Reactive(charge, kvarh, kwh, context.Tariff)));
    }
}
