namespace SolarEconomics;

/// <summary>What one device of the plant lost in a run.</summary>
/// <param name="Device">The device, for example <c>inverter of roof</c>.</param>
/// <param name="How">At what it lost it, for example <c>charging</c>.</param>
/// <param name="Kwh">Energy lost, all of it heat. Unit: kWh. Range: 0 or more.</param>
public sealed record DeviceLoss(string Device, string How, double Kwh);
