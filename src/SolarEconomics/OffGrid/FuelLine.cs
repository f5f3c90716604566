namespace SolarEconomics;

/// <summary>Fuel that a generator burns per hour, as a straight line of its output.</summary>
/// <param name="IdleLitresPerHourPerKw">Litres per hour and kW of rated power, whatever the output. Range: 0 or more.</param>
/// <param name="LitresPerKwh">Further litres per kWh of output. Range: 0 or more.</param>
/// <remarks>Equation: litres = hours × (idle × rated kW) + slope × kWh. Source: offgrid-1. Small generators burn most of their fuel for turning at all:
/// litres per kWh rise steeply at low load.</remarks>
public sealed record FuelLine(double IdleLitresPerHourPerKw, double LitresPerKwh)
{
    /// <summary>Litres per hour and kW of rated power, whatever the output.</summary>
    public double IdleLitresPerHourPerKw { get; init => field = Require.AtLeastZero(value, "L/h per kW of rated power"); } = Require.AtLeastZero(IdleLitresPerHourPerKw, "L/h per kW of rated power", nameof(IdleLitresPerHourPerKw));

    /// <summary>Further litres per kWh of output.</summary>
    public double LitresPerKwh { get; init => field = Require.AtLeastZero(value, "L/kWh"); } = Require.AtLeastZero(LitresPerKwh, "L/kWh", nameof(LitresPerKwh));

    /// <summary>Fuel for some hours of running.</summary>
    /// <param name="ratedKw">Rated power of the generator. Unit: kW.</param>
    /// <param name="hours">Hours that it ran.</param>
    /// <param name="kwh">Energy that it gave in them.</param>
    /// <returns>Litres.</returns>
    public double Litres(double ratedKw, double hours, double kwh) => (IdleLitresPerHourPerKw * ratedKw * hours) + (LitresPerKwh * kwh);

    /// <summary>Fuel per kWh at a steady output.</summary>
    /// <param name="ratedKw">Rated power of the generator. Unit: kW.</param>
    /// <param name="outputKw">Output. Unit: kW. Range: above 0.</param>
    /// <returns>Litres per kWh.</returns>
    public double LitresPerKwhAt(double ratedKw, double outputKw) => Litres(ratedKw, 1, outputKw) / outputKw;
}
