using NodaTime;

namespace SolarEconomics;

/// <summary>The sun's day at a place: rise, noon, set.</summary>
/// <param name="Date">The local date that it belongs to.</param>
/// <param name="Noon">When the sun stands highest.</param>
/// <param name="Rise">When its upper edge is first seen; <see langword="null"/> where it does not rise or does not set.</param>
/// <param name="Set">When its upper edge is last seen; <see langword="null"/> where it does not rise or does not set.</param>
/// <param name="NoonElevationDeg">Elevation at noon, without refraction. Unit: degrees.</param>
public sealed record SunDay(LocalDate Date, Instant Noon, Instant? Rise, Instant? Set, double NoonElevationDeg)
{
    /// <summary>Whether the sun stays up all day.</summary>
    public bool SunNeverSets => (Rise is null || Set is null) && NoonElevationDeg > 0;

    /// <summary>Whether the sun stays below the horizon all day.</summary>
    public bool SunNeverRises => (Rise is null || Set is null) && NoonElevationDeg <= 0;

    /// <summary>Time from rise to set; 24 h or nothing where there is neither.</summary>
    public Duration Daylight => Rise is { } rise && Set is { } set ? set - rise : SunNeverSets ? Duration.FromHours(24) : Duration.Zero;
}
