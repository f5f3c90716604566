using NodaTime;

namespace SolarEconomics;

/// <summary>Energy banked in one bill, by rate.</summary>
internal sealed record BankedLot(LocalDate Since, decimal[] Kwh);
