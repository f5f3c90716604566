namespace SolarEconomics;

/// <summary>A charge for the size of the connection over the days of a segment.</summary>
internal sealed class SegmentConnection(ConnectionCharge charge, SegmentContext context) : SegmentPart
{
    private readonly decimal _quantity = Math.Round(charge.Size * BlockScale.Of(charge.Per, context.Days, context.WholePeriod), 12);

    internal override bool IsPricedByTheHour => true;

    internal override double CostWithTax(BillRun run) => (double)(_quantity * charge.PerUnit * (1 + context.Tariff.TaxOn(charge)));

    internal override void AddLines(BillRun run, List<BillLine> lines) => lines.Add(BillWriter.Line(context, charge, charge.Name, _quantity,
        RuleWords.Unit(charge.Unit) + " " + RuleWords.Unit(charge.Per), charge.PerUnit, 1, RuleWords.Connection(charge, context)));
}
