namespace SolarEconomics;

/// <summary>One part of a tariff laid on the days of one billing period under one version: writes its lines from the readings.</summary>
internal abstract class SegmentPart
{
    internal abstract void AddLines(BillRun run, List<BillLine> lines);

    /// <summary>Adds the part's price per kWh to each interval's; nothing where it prices no single kWh of that side.</summary>
    internal virtual void AddPrices(EnergySide side, bool withTax, double[] pricePerKwh)
    {
    }
}
