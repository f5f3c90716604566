namespace SolarEconomics;

/// <summary>The sun's clock by day of year, as textbooks reckon it: for a day of no particular year.</summary>
/// <remarks>Where an instant is known, <see cref="Sun.At(NodaTime.Instant, double, double, Air?)"/> is a hundred times finer. Source: sun-2.</remarks>
public static class SolarTime
{
    /// <summary>Day angle B. Unit: radians.</summary>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: B = 2π (n − 1) / 365.</remarks>
    public static double DayAngleRad(int dayOfYear) => 2 * Math.PI * (CheckedDay(dayOfYear) - 1) / 365.0;

    /// <summary>Equation of time: solar less mean time. Unit: minutes.</summary>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: E = 229.2 (0.000075 + 0.001868 cos B − 0.032077 sin B − 0.014615 cos 2B − 0.04089 sin 2B).</remarks>
    public static double EquationOfTimeMinutes(int dayOfYear)
    {
        var b = DayAngleRad(dayOfYear);
        return 229.2 * (0.000075 + (0.001868 * Math.Cos(b)) - (0.032077 * Math.Sin(b)) - (0.014615 * Math.Cos(2 * b)) - (0.04089 * Math.Sin(2 * b)));
    }

    /// <summary>Solar time of a clock time. Unit: hours since midnight.</summary>
    /// <param name="standardHours">Clock time without summer time, hours since midnight.</param>
    /// <param name="longitudeDeg">Degrees, east positive. Range: −180 to 180.</param>
    /// <param name="zoneMeridianDeg">Meridian of the clock: 15° for every hour ahead of UTC, east positive.</param>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: solar = standard + 4 min/° · (longitude − meridian) + E.</remarks>
    public static double SolarHours(double standardHours, double longitudeDeg, double zoneMeridianDeg, int dayOfYear) =>
        Require.Finite(standardHours)
        + ((4 * (Require.Within(longitudeDeg, -180, 180, "degrees, east positive") - Require.Within(zoneMeridianDeg, -180, 210, "degrees, east positive"))
            + EquationOfTimeMinutes(dayOfYear)) / 60.0);

    /// <summary>Hour angle of a solar time: 15° an hour from noon, afternoon positive. Unit: degrees.</summary>
    /// <param name="solarHours">Solar time, hours since midnight.</param>
    public static double HourAngleDeg(double solarHours) => 15.0 * (Require.Finite(solarHours) - 12.0);

    /// <summary>Declination by the one-line formula. Unit: degrees, north positive; within about 1°.</summary>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: δ = 23.45 sin(360° (284 + n) / 365).</remarks>
    public static double DeclinationDeg(int dayOfYear) =>
        23.45 * Math.Sin(2 * Math.PI * (284 + CheckedDay(dayOfYear)) / 365.0);

    /// <summary>Hour angle at which the sun's centre sets. Unit: degrees; 180 where it does not set, 0 where it does not rise.</summary>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="declinationDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <remarks>Equation: cos ωs = −tan φ tan δ.</remarks>
    public static double SunsetHourAngleDeg(double latitudeDeg, double declinationDeg) =>
        HourAngleOfElevationDeg(latitudeDeg, declinationDeg, 0)
        ?? (SunDirection.OfHourAngle(latitudeDeg, declinationDeg, 0).Up > 0 ? 180 : 0);

    /// <summary>Hour angle at which the sun's centre reaches an elevation in the afternoon; <see langword="null"/> where it never does.</summary>
    /// <param name="latitudeDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="declinationDeg">Degrees, north positive. Range: −90 to 90.</param>
    /// <param name="elevationDeg">Degrees above the horizon. Range: −90 to 90.</param>
    /// <remarks>Equation: cos ω = (sin h − sin φ sin δ) / (cos φ cos δ).</remarks>
    public static double? HourAngleOfElevationDeg(double latitudeDeg, double declinationDeg, double elevationDeg)
    {
        Require.Within(latitudeDeg, -90, 90, "degrees, north positive");
        Require.Within(declinationDeg, -90, 90, "degrees, north positive");
        Require.Within(elevationDeg, -90, 90, "degrees above the horizon");
        var (sinLatitude, cosLatitude) = Math.SinCos(latitudeDeg * SolarCoordinates.DegToRad);
        var (sinDeclination, cosDeclination) = Math.SinCos(declinationDeg * SolarCoordinates.DegToRad);
        var cosHour = (Math.Sin(elevationDeg * SolarCoordinates.DegToRad) - (sinLatitude * sinDeclination)) / (cosLatitude * cosDeclination);
        return cosHour is >= -1 and <= 1 ? Math.Acos(cosHour) / SolarCoordinates.DegToRad : null;
    }

    internal static int CheckedDay(int dayOfYear) => (int)Require.Within(dayOfYear, 1, 366, "day of the year; 1 is 1 January");
}
