using NodaTime;

namespace AlderWeir;

/// <summary>Where the sun stands at the site. Textbook formulas of about a quarter degree, enough for invented weather.</summary>
internal readonly record struct Sun(double SinElevation, double East, double North)
{
    private const double LatitudeDeg = 53.2;
    private const double LongitudeDeg = -9.1;
    private const double Rad = Math.PI / 180;

    internal double ElevationDeg => Math.Asin(SinElevation) / Rad;

    internal static Sun At(Instant time)
    {
        var utc = time.InUtc();
        var day = utc.DayOfYear;
        var b = 2 * Math.PI * (day - 81) / 364;
        var equationMinutes = (9.87 * Math.Sin(2 * b)) - (7.53 * Math.Cos(b)) - (1.5 * Math.Sin(b));
        var declination = 23.45 * Rad * Math.Sin(2 * Math.PI * (284 + day) / 365);
        var solarHours = utc.TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerHour + (LongitudeDeg / 15) + (equationMinutes / 60);
        var hourAngle = 15 * Rad * (solarHours - 12);
        var latitude = LatitudeDeg * Rad;
        return new Sun(
            (Math.Sin(latitude) * Math.Sin(declination)) + (Math.Cos(latitude) * Math.Cos(declination) * Math.Cos(hourAngle)),
            -Math.Cos(declination) * Math.Sin(hourAngle),
            (Math.Cos(latitude) * Math.Sin(declination)) - (Math.Sin(latitude) * Math.Cos(declination) * Math.Cos(hourAngle)));
    }

    /// <summary>Cosine of the angle between the sun and a plane's normal; below zero where the sun stands behind it.</summary>
    internal double CosIncidence(double tiltDeg, double azimuthDeg) =>
        (SinElevation * Math.Cos(tiltDeg * Rad)) +
        (Math.Sin(tiltDeg * Rad) * ((East * Math.Sin(azimuthDeg * Rad)) + (North * Math.Cos(azimuthDeg * Rad))));
}
