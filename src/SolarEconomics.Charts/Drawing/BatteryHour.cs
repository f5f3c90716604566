using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>What went into a battery and came out of it in a local hour; the repeated autumn hour counts both. Unit: kWh.</summary>
internal sealed record BatteryHour(LocalDateTime Start, double InKwh, double ToUseKwh, double ToExportKwh);
