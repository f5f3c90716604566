using NodaTime;

namespace SolarEconomics;

/// <summary>The modules behind a device from a day on: an array built up in stages, or a string that was moved.</summary>
/// <param name="From">First day of the stage.</param>
/// <param name="RatedKwp">Rated power of the modules behind the device from then on. Unit: kWp. Range: 0 or more.</param>
/// <param name="Note">The owner's note, where there is one.</param>
public sealed record DeviceStage(LocalDate From, double RatedKwp, string? Note = null);
