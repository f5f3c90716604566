namespace SolarEconomics;

/// <summary>Net metering over the days of a segment.</summary>
internal sealed class SegmentNet(NetMetering net, SegmentContext context) : SegmentPart
{
    private readonly SegmentEnergy _energy = new(net.Energy, context);

    // A kWh sent is worth the kWh that it saves, tax included, as long as the bank is used up.
    internal override void AddPrices(EnergySide side, bool withTax, double[] pricePerKwh)
    {
        if (side is EnergySide.Import or EnergySide.Export)
            _energy.AddPrices(withTax || side == EnergySide.Export ? 1.0 + (double)context.Tariff.TaxOn(net) : 1.0, pricePerKwh);
    }

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var lots = run.Carry.Lots(net.Name);
        if (net.SettlesInMonth == context.Days.Start.Month && context.Days.Start == context.WholePeriod.Start) Empty(lots, lines);
        while (net.ExpiresAfterMonths is { } months && lots.TryPeek(out var oldest) && oldest.Since.PlusMonths(months) <= context.Days.Start) lots.Dequeue();
        Span<double> import = new double[net.Rates.Count];
        Span<double> export = new double[net.Rates.Count];
        _energy.Sum(run.ImportKwh, import);
        _energy.Sum(run.ExportKwh, export);
        var banked = new decimal[net.Rates.Count];
        for (var i = 0; i < net.Rates.Count; i++)
        {
            var left = BillWriter.Kwh(import[i]) - BillWriter.Kwh(export[i]);
            banked[i] = Math.Max(0, -left);
            left = TakeFrom(lots, i, left);
            if (left <= 0) continue;
            var rate = net.Rates[i];
            lines.Add(BillWriter.Line(context, net, rate.Name + ", net", left, "kWh", rate.PerKwh, 1,
                RuleWords.Net(rate, left, BillWriter.Kwh(import[i]), BillWriter.Kwh(export[i]), context.Tariff)));
        }
        if (banked.Any(kwh => kwh > 0)) lots.Enqueue(new BankedLot(context.Days.Start, banked));
    }

    /// <summary>Takes what is still owed from the oldest lots of that rate first.</summary>
    private static decimal TakeFrom(Queue<BankedLot> lots, int rate, decimal left)
    {
        foreach (var lot in lots)
        {
            if (left <= 0) break;
            var used = Math.Min(left, lot.Kwh[rate]);
            lot.Kwh[rate] -= used;
            left -= used;
        }
        return left;
    }

    private void Empty(Queue<BankedLot> lots, List<BillLine> lines)
    {
        var kwh = lots.Sum(lot => lot.Kwh.Sum());
        lots.Clear();
        if (kwh == 0 || net.CashOutPerKwh == 0) return;
        lines.Add(BillWriter.Line(context, net with { TaxFraction = 0 }, net.Name + ", cashed out", kwh, "kWh", net.CashOutPerKwh, -1,
            RuleWords.CashOut(kwh, net.CashOutPerKwh, context.Tariff)));
    }
}
