namespace SolarEconomics;

/// <summary>Energy priced by a series of market prices, with what the retailer adds, a cap and a floor.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Side">Import and controlled load are charged, export and curtailed energy are credited.</param>
/// <param name="Prices">The market's prices.</param>
/// <remarks>Price of an interval: mean of the series over it × <see cref="Factor"/> + <see cref="AddPerKwh"/>, then within floor and cap.</remarks>
public sealed record SeriesPrice(string Name, EnergySide Side, PriceSeries Prices) : TariffPart(Name)
{
    /// <summary>What a price of the series is multiplied by to be one of a kWh: 0.001 for prices per MWh. Default: 1.</summary>
    public decimal Factor { get; init; } = 1;

    /// <summary>Added to each price before tax, per kWh. Default: 0.</summary>
    public decimal AddPerKwh { get; init; }

    /// <summary>Highest price before tax, per kWh. Default: <see langword="null"/>, none.</summary>
    public decimal? CapPerKwh { get; init; }

    /// <summary>Lowest price before tax, per kWh. Default: <see langword="null"/>, none, so that a price may fall below 0.</summary>
    public decimal? FloorPerKwh { get; init; }

    internal override SegmentPart On(SegmentContext context) => new SegmentSeries(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        if (CapPerKwh < FloorPerKwh) yield return Throw.CapBelowFloor(tariff, this);
    }

    /// <summary>The price of a kWh, from that of the series.</summary>
    internal double PerKwh(double price)
    {
        var perKwh = (price * (double)Factor) + (double)AddPerKwh;
        if (FloorPerKwh is { } floor) perKwh = Math.Max(perKwh, (double)floor);
        return CapPerKwh is { } cap ? Math.Min(perKwh, (double)cap) : perKwh;
    }

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor)
    {
        var factor = Side.IsCharge() ? importFactor : exportFactor;
        return this with { Factor = Factor * factor, AddPerKwh = AddPerKwh * factor, CapPerKwh = CapPerKwh * factor, FloorPerKwh = FloorPerKwh * factor };
    }
}
