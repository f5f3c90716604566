namespace SolarEconomics;

/// <summary>What the kWh of one flow were worth, priced hour by hour.</summary>
/// <param name="Path">The flow.</param>
/// <param name="Kwh">Energy. Unit: kWh.</param>
/// <param name="StoodInFor">What it stood in for.</param>
/// <param name="Worth">Worth of all of it; a cost is negative.</param>
public sealed record DestinationWorth(FlowPath Path, double Kwh, StoodInFor StoodInFor, Money Worth)
{
    /// <summary>Worth of one kWh, in units of the currency; 0 where there is none.</summary>
    public double PerKwh => Kwh > 0 ? (double)Worth.Amount / Kwh : 0;
}
