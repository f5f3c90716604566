namespace SolarEconomics;

/// <summary>Net metering over the days of a segment.</summary>
internal sealed class SegmentNet(NetMetering net, SegmentContext context) : SegmentPart
{
    private readonly SegmentEnergy _energy = new(net.Energy, context);

    // A kWh sent is worth the kWh that it saves, tax included, as long as the bank is used up.
    internal override void AddPrices(EnergySide side, bool withTax, double[] pricePerKwh) =>
        _energy.AddPrices(withTax || side == EnergySide.Export ? 1.0 + (double)context.Tariff.TaxOn(net) : 1.0, pricePerKwh);

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var bank = run.Carry.BankedKwh(net.Name, net.Rates.Count);
        if (net.SettlesInMonth == context.Days.Start.Month && context.Days.Start == context.WholePeriod.Start) Empty(bank, lines);
        Span<double> import = new double[net.Rates.Count];
        Span<double> export = new double[net.Rates.Count];
        _energy.Sum(run.ImportKwh, import);
        _energy.Sum(run.ExportKwh, export);
        for (var i = 0; i < net.Rates.Count; i++)
        {
            var left = BillWriter.Kwh(import[i]) - BillWriter.Kwh(export[i]) - bank[i];
            bank[i] = Math.Max(0, -left);
            if (left <= 0) continue;
            var rate = net.Rates[i];
            lines.Add(BillWriter.Line(context, net, rate.Name + ", net", left, "kWh", rate.PerKwh, 1,
                RuleWords.Net(rate, left, BillWriter.Kwh(import[i]), BillWriter.Kwh(export[i]), context.Tariff)));
        }
    }

    private void Empty(decimal[] bank, List<BillLine> lines)
    {
        var kwh = bank.Sum();
        Array.Clear(bank);
        if (kwh == 0 || net.CashOutPerKwh == 0) return;
        lines.Add(BillWriter.Line(context, net with { TaxFraction = 0 }, net.Name + ", cashed out", kwh, "kWh", net.CashOutPerKwh, -1,
            RuleWords.CashOut(kwh, net.CashOutPerKwh, context.Tariff)));
    }
}
