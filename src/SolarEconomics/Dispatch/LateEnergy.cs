namespace SolarEconomics;

/// <summary>Energy that a waiting load lacked at its deadline. Unit: kWh; hours since the start of the run.</summary>
internal readonly record struct LateEnergy(double Kwh, double UntilHour);
