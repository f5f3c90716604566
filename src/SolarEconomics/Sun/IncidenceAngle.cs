namespace SolarEconomics;

/// <summary>Share of the light that enters the glass at an angle, relative to square on: the incidence-angle modifier.</summary>
public static class IncidenceAngle
{
    internal const double GlassIndex = 1.526;
    internal const double AbsorptionPerM = 4.0;
    internal const double GlassThicknessM = 0.002;

    internal static readonly double SquareOn = Math.Exp(-AbsorptionPerM * GlassThicknessM)
        * (1 - Math.Pow((GlassIndex - 1) / (GlassIndex + 1), 2));

    /// <summary>Modifier by the laws of refraction and reflection for one sheet of uncoated glass. Range: 0 to 1.</summary>
    /// <param name="cosIncidence">Cosine of the angle of incidence. Range: −1 to 1; 0 and below gives 0.</param>
    /// <remarks>Equation: τ(θ)/τ(0), τ = exp(−K L / cos θr) (1 − (rs + rp)/2), sin θr = sin θ / n; n 1.526, K 4 1/m, L 2 mm. Source: sun-13.</remarks>
    public static double Glass(double cosIncidence)
    {
        if (!(cosIncidence > 0)) return 0;
        var c = Math.Min(1, cosIncidence);
        var inside = Math.Sqrt(1 - ((1 - (c * c)) / (GlassIndex * GlassIndex)));
        var across = (c - (GlassIndex * inside)) / (c + (GlassIndex * inside));
        var along = ((GlassIndex * c) - inside) / ((GlassIndex * c) + inside);
        var through = Math.Exp(-AbsorptionPerM * GlassThicknessM / inside) * (1 - (((across * across) + (along * along)) / 2));
        return through / SquareOn;
    }

    /// <summary>Modifier by the one-constant rule of thumb. Range: 0 to 1.</summary>
    /// <param name="cosIncidence">Cosine of the angle of incidence. Range: −1 to 1; 0 and below gives 0.</param>
    /// <param name="b0">The constant. Range: 0 to 1. Default: 0.05.</param>
    /// <remarks>Equation: max(0, 1 − b0 (1/cos θ − 1)). Source: sun-13.</remarks>
    public static double OneConstant(double cosIncidence, double b0 = 0.05)
    {
        Require.Fraction(b0);
        return cosIncidence > 0 ? Math.Max(0, 1 - (b0 * ((1 / Math.Min(1, cosIncidence)) - 1))) : 0;
    }

    /// <summary>Angle at which the beam loses as much as the sky's light does on a tilted plane. Unit: degrees.</summary>
    /// <param name="tiltDeg">Tilt of the plane, in degrees. Range: 0 to 90.</param>
    /// <remarks>Equation: 59.7 − 0.1388 β + 0.001497 β². Source: sun-14.</remarks>
    public static double OfSkyDeg(double tiltDeg)
    {
        Require.Within(tiltDeg, 0, 90, "degrees from level");
        return 59.7 - (0.1388 * tiltDeg) + (0.001497 * tiltDeg * tiltDeg);
    }

    /// <summary>Angle at which the beam loses as much as the ground's light does on a tilted plane. Unit: degrees.</summary>
    /// <param name="tiltDeg">Tilt of the plane, in degrees. Range: 0 to 90.</param>
    /// <remarks>Equation: 90 − 0.5788 β + 0.002693 β². Source: sun-14.</remarks>
    public static double OfGroundDeg(double tiltDeg)
    {
        Require.Within(tiltDeg, 0, 90, "degrees from level");
        return 90 - (0.5788 * tiltDeg) + (0.002693 * tiltDeg * tiltDeg);
    }

    /// <summary>Modifier of the sky's light on a plane. Range: 0 to 1.</summary>
    /// <param name="plane">The plane; tilts above 90° count as 90°.</param>
    public static double Sky(Plane plane) => Glass(Math.Cos(OfSkyDeg(Math.Min(90, plane.TiltDeg)) * SolarCoordinates.DegToRad));

    /// <summary>Modifier of the ground's light on a plane. Range: 0 to 1.</summary>
    /// <param name="plane">The plane; tilts above 90° count as 90°.</param>
    public static double Ground(Plane plane) => Glass(Math.Cos(OfGroundDeg(Math.Min(90, plane.TiltDeg)) * SolarCoordinates.DegToRad));
}
