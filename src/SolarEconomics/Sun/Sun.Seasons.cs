using NodaTime;

namespace SolarEconomics;

/// <summary>When the seasons begin.</summary>
public static partial class Sun
{
    private const double DegPerDay = 360.0 / 365.2422;

    /// <summary>When the sun reaches a turning point of a year: its apparent longitude is 0°, 90°, 180° or 270°.</summary>
    /// <param name="year">Calendar year. Range: 1900 to 2100.</param>
    /// <param name="season">The turning point.</param>
    /// <remarks>0.01° of longitude, the error of the series, is 15 minutes. Source: sun-1.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The year is outside the range of the series.</exception>
    public static Instant SeasonStart(int year, Season season)
    {
        Require.Within(year, 1900, 2100, "calendar year");
        var wanted = 90.0 * (int)season;
        var instant = Instant.FromUtc(year, 3 + (3 * (int)season), 21, 0, 0);
        for (var i = 0; i < 12; i++)
        {
            var shortBy = SolarCoordinates.HalfTurn(wanted - SolarCoordinates.At(instant).ApparentLongitudeDeg);
            instant += Duration.FromDays(shortBy / DegPerDay);
            if (Math.Abs(shortBy) < 1e-7) break;
        }
        return instant;
    }
}
