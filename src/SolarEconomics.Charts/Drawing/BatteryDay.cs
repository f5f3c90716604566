using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>A day of a battery: lowest and highest charge, and what went in and out. Unit: kWh.</summary>
internal sealed record BatteryDay(LocalDate Date, double LowKwh, double HighKwh, double InKwh, double OutKwh);
