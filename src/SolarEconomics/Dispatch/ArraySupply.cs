namespace SolarEconomics;

/// <summary>What one array could make in each interval if everything were taken, and the device through which it feeds in.</summary>
/// <param name="Name">Name of the array.</param>
/// <param name="Coupling">Whether it feeds in at the board or at the battery's DC bus.</param>
/// <param name="PotentialKwh">Energy per interval in front of its inverter or controller. Unit: kWh. Range: 0 or more. Shape: one per interval.</param>
public sealed record ArraySupply(string Name, Coupling Coupling, ReadOnlyMemory<double> PotentialKwh)
{
    /// <summary>Efficiency of its inverter (AC) or controller (DC), from <see cref="PotentialKwh"/> to where it feeds in. Range: above 0 to 1.
    /// Default: 1, right where the series is already counted behind the device.</summary>
    public double Efficiency { get; init => field = Require.Efficiency(value); } = 1;

    /// <summary>The most its inverter or controller can give. Unit: kW. Default: no limit of its own. What lies above is curtailed.</summary>
    public double MostKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>The inverter behind which it works together with others, in place of <see cref="Efficiency"/> and <see cref="MostKw"/>. Default: none, a device of its own.</summary>
    public SharedInverter? Inverter { get; init; }

    /// <summary>An array with an inverter of its own.</summary>
    /// <param name="name">Name of the array.</param>
    /// <param name="kwh">Energy per interval at the board. Unit: kWh.</param>
    public static ArraySupply Ac(string name, ReadOnlyMemory<double> kwh) => new(name, Coupling.Ac, kwh);

    /// <summary>An array behind a charge controller.</summary>
    /// <param name="name">Name of the array.</param>
    /// <param name="kwh">Energy per interval at the battery's DC bus. Unit: kWh.</param>
    public static ArraySupply Dc(string name, ReadOnlyMemory<double> kwh) => new(name, Coupling.Dc, kwh);
}
