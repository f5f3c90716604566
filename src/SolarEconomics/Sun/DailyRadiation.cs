namespace SolarEconomics;

/// <summary>Radiation of a whole day by day of year, as agronomists reckon it where only sunshine hours are known.</summary>
/// <remarks>Energy in MJ/m² a day; 3.6 MJ are 1 kWh. Declination and distance are this source's own short formulas. Source: sun-5.</remarks>
public static class DailyRadiation
{
    /// <summary>The sun outside the atmosphere, as this source has it: 0.0820 MJ/m² a minute, 1,366.7 W/m².</summary>
    private const double SolarConstantMjM2Minute = 0.0820;

    /// <summary>Inverse relative distance of the sun, squared.</summary>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: dr = 1 + 0.033 cos(2πJ / 365).</remarks>
    public static double InverseDistanceSquared(int dayOfYear) =>
        1 + (0.033 * Math.Cos(2 * Math.PI * SolarTime.CheckedDay(dayOfYear) / 365.0));

    /// <summary>Declination. Unit: radians, north positive.</summary>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: δ = 0.409 sin(2πJ / 365 − 1.39).</remarks>
    public static double DeclinationRad(int dayOfYear) =>
        0.409 * Math.Sin((2 * Math.PI * SolarTime.CheckedDay(dayOfYear) / 365.0) - 1.39);

    /// <summary>Hour angle of sunset. Unit: radians; π where the sun does not set, 0 where it does not rise.</summary>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    public static double SunsetHourAngleRad(double latitudeDeg, int dayOfYear) =>
        SolarTime.SunsetHourAngleDeg(latitudeDeg, DeclinationRad(dayOfYear) / SolarCoordinates.DegToRad) * SolarCoordinates.DegToRad;

    /// <summary>Radiation on a level plane above the atmosphere, Ra. Unit: MJ/m² a day.</summary>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: Ra = 24·60/π · Gsc · dr (ωs sin φ sin δ + cos φ cos δ sin ωs).</remarks>
    public static double AboveAtmosphereMjM2(double latitudeDeg, int dayOfYear)
    {
        var declination = DeclinationRad(dayOfYear);
        var sunset = SunsetHourAngleRad(latitudeDeg, dayOfYear);
        var latitude = latitudeDeg * SolarCoordinates.DegToRad;
        return 24 * 60 / Math.PI * SolarConstantMjM2Minute * InverseDistanceSquared(dayOfYear)
            * ((sunset * Math.Sin(latitude) * Math.Sin(declination)) + (Math.Cos(latitude) * Math.Cos(declination) * Math.Sin(sunset)));
    }

    /// <summary>The same radiation as the depth of water it could evaporate. Unit: mm a day.</summary>
    /// <param name="radiationMjM2">Radiation in MJ/m² a day.</param>
    /// <remarks>Equation: mm = 0.408 · MJ/m².</remarks>
    public static double AsEvaporationMm(double radiationMjM2) => 0.408 * radiationMjM2;

    /// <summary>Longest possible sunshine. Unit: hours a day. Range: 0 to 24.</summary>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: N = 24 ωs / π.</remarks>
    public static double DaylightHours(double latitudeDeg, int dayOfYear) => 24 / Math.PI * SunsetHourAngleRad(latitudeDeg, dayOfYear);

    /// <summary>Radiation at the ground from sunshine hours, Rs. Unit: MJ/m² a day.</summary>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <param name="sunshineHours">Hours of bright sun that day. Range: 0 to 24.</param>
    /// <param name="overcastShare">Share of Ra on an overcast day, a. Default: 0.25, the source's value where nothing local is known.</param>
    /// <param name="sunshineShare">Further share on a clear day, b. Default: 0.50.</param>
    /// <remarks>Equation: Rs = (a + b n/N) Ra. Sunshine beyond N counts as N: recorders see the refracted sun.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FromSunshineMjM2(double latitudeDeg, int dayOfYear, double sunshineHours, double overcastShare = 0.25, double sunshineShare = 0.50)
    {
        Require.Within(sunshineHours, 0, 24, "hours a day; divide a month's sum by its days");
        var longest = DaylightHours(latitudeDeg, dayOfYear);
        var share = longest > 0 ? Math.Min(1, sunshineHours / longest) : 0;
        return (Require.Fraction(overcastShare) + (Require.Fraction(sunshineShare) * share)) * AboveAtmosphereMjM2(latitudeDeg, dayOfYear);
    }
}
