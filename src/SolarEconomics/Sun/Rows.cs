namespace SolarEconomics;

/// <summary>Long rows of modules, one behind the other on level ground, all of one plane.</summary>
/// <remarks>Long means that what shines in at the ends is left out. Immutable, so safe to share between threads.</remarks>
public sealed record Rows
{
    /// <summary>Rows by plane, module length up the slope and distance.</summary>
    /// <param name="plane">Tilt and direction. Tilt range: 0 to 90.</param>
    /// <param name="slopeLengthM">Length of a row up its slope, in metres. Above 0.</param>
    /// <param name="pitchM">From the lower edge of one row to that of the next, level, in metres. At least the level depth of a row.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length or the tilt is outside its range, or the rows overlap.</exception>
    public Rows(Plane plane, double slopeLengthM, double pitchM)
    {
        Require.Within(plane.TiltDeg, 0, 90, "degrees from level");
        Plane = plane;
        SlopeLengthM = Require.Within(slopeLengthM, 0.01, 1000, "metres up the slope");
        PitchM = Require.Within(pitchM, slopeLengthM * Math.Cos(plane.TiltDeg * SolarCoordinates.DegToRad), 10_000,
            "metres from one lower edge to the next; below this the rows overlap");
    }

    /// <summary>Tilt and direction.</summary>
    public Plane Plane { get; }

    /// <summary>Length of a row up its slope. Unit: m.</summary>
    public double SlopeLengthM { get; }

    /// <summary>From the lower edge of one row to that of the next. Unit: m.</summary>
    public double PitchM { get; }

    /// <summary>Elevation of the upper edge in front, seen from the lower edge of the row behind. Unit: degrees.</summary>
    public double MaskingAngleDeg
    {
        get
        {
            var (sin, cos) = Math.SinCos(Plane.TiltDeg * SolarCoordinates.DegToRad);
            return Math.Atan2(SlopeLengthM * sin, PitchM - (SlopeLengthM * cos)) / SolarCoordinates.DegToRad;
        }
    }

    /// <summary>Share of a row's slope, from its lower edge, that lies in the shade of the row in front. Range: 0 to 1.</summary>
    /// <param name="sun">Direction of the sun.</param>
    /// <remarks>Equation: 1 − (pitch / length) / (cos β + sin β · h / up), h the part of the sun's direction that the row faces. The loss of power
    /// is larger than the shaded share: a shaded cell limits its whole series.</remarks>
    public double ShadedShare(SunDirection sun)
    {
        if (sun.Up <= 0 || sun.CosIncidence(Plane) <= 0) return 0;
        var (sinAzimuth, cosAzimuth) = Math.SinCos(Plane.AzimuthDeg * SolarCoordinates.DegToRad);
        var towards = (sun.East * sinAzimuth) + (sun.North * cosAzimuth);
        if (towards <= 0) return 0;
        var (sin, cos) = Math.SinCos(Plane.TiltDeg * SolarCoordinates.DegToRad);
        return Math.Clamp(1 - (PitchM / SlopeLengthM / (cos + (sin * towards / sun.Up))), 0, 1);
    }
}
