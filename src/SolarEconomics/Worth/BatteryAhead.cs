using NodaTime;

namespace SolarEconomics;

/// <summary>A fading battery in one month of an outlook.</summary>
/// <param name="Start">First day of the month, or of the part of it after the records.</param>
/// <param name="ShareOfNew">Capacity left, as a share of the new one's. Range: 0 to 1.</param>
/// <param name="LostKwh">What it no longer delivers of what the records say, array ageing taken off first. Unit: kWh.</param>
public sealed record BatteryAhead(LocalDate Start, double ShareOfNew, double LostKwh);
