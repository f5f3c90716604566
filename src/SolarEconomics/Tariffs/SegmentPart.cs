namespace SolarEconomics;

/// <summary>One part of a tariff laid on the days of one billing period under one version: writes its lines from the readings.</summary>
internal abstract class SegmentPart
{
    internal abstract void AddLines(BillRun run, List<BillLine> lines);

    /// <summary>Whether the part is a fixed charge or a price by the hour, for which <see cref="CostWithTax"/> stands.</summary>
    internal virtual bool IsPricedByTheHour => false;

    /// <summary>What the part costs with tax, before rounding; below 0 where it pays.</summary>
    internal virtual double CostWithTax(BillRun run) =>
        throw new InvalidOperationException($"{GetType().Name} needs the whole bill.");

    /// <summary>Adds the least that the part can cost to a floor under all bills; false where a linear program cannot say it.</summary>
    internal virtual bool AddFloor(BillFloor floor) => IsPricedByTheHour && floor.AddByTheHour(this);

    /// <summary>Adds the part's price per kWh to each interval's; nothing where it prices no single kWh of that side.</summary>
    internal virtual void AddPrices(EnergySide side, bool withTax, double[] pricePerKwh)
    {
    }
}
