using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>What was stored at a local time. Unit: kWh inside the cells.</summary>
internal readonly record struct BatteryPoint(LocalDateTime At, double StoredKwh);
