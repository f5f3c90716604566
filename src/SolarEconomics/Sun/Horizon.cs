namespace SolarEconomics;

/// <summary>The line of hills, trees and houses around a place: how high it stands in each direction.</summary>
/// <remarks>Straight between the points given, all the way round. Immutable, so safe to share between threads.</remarks>
public sealed class Horizon
{
    private readonly double[] _azimuthDeg;
    private readonly double[] _elevationDeg;

    private Horizon(double[] azimuthDeg, double[] elevationDeg)
    {
        _azimuthDeg = azimuthDeg;
        _elevationDeg = elevationDeg;
    }

    /// <summary>A free horizon.</summary>
    public static Horizon Free { get; } = new([0], [0]);

    /// <summary>Whether nothing stands above level.</summary>
    internal bool SeesAll => _elevationDeg.All(e => e == 0);

    /// <summary>A horizon from points measured with compass and clinometer.</summary>
    /// <param name="points">Azimuth clockwise from north (0 to below 360) and elevation (0 to below 90), both in degrees, in any order; at least one.</param>
    /// <exception cref="ArgumentException">No point, or two points of one azimuth.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public static Horizon Of(params (double AzimuthDeg, double ElevationDeg)[] points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Length == 0) throw new ArgumentException("Found no point of the horizon, expected at least one; a free horizon is Horizon.Free.", nameof(points));
        foreach (var (azimuth, elevation) in points)
        {
            Require.Within(azimuth, 0, 359.9999999, "degrees clockwise from north", nameof(points));
            Require.Within(elevation, 0, 89.9999999, "degrees above level", nameof(points));
        }
        var sorted = points.OrderBy(p => p.AzimuthDeg).ToArray();
        for (var i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].AzimuthDeg <= sorted[i - 1].AzimuthDeg)
                throw Throw.RepeatedHorizonAzimuth(sorted[i].AzimuthDeg, sorted[i - 1].ElevationDeg, sorted[i].ElevationDeg);
        }
        return new Horizon([.. sorted.Select(p => p.AzimuthDeg)], [.. sorted.Select(p => p.ElevationDeg)]);
    }

    /// <summary>Height of the horizon in a direction. Unit: degrees.</summary>
    /// <param name="azimuthDeg">Clockwise from north, in degrees.</param>
    public double ElevationDeg(double azimuthDeg)
    {
        var azimuth = SolarCoordinates.Turn(Require.Finite(azimuthDeg));
        var after = Array.BinarySearch(_azimuthDeg, azimuth);
        if (after >= 0) return _elevationDeg[after];
        after = ~after;
        var right = after % _azimuthDeg.Length;
        var left = (after + _azimuthDeg.Length - 1) % _azimuthDeg.Length;
        var width = SolarCoordinates.Turn(_azimuthDeg[right] - _azimuthDeg[left]);
        if (width == 0) return _elevationDeg[left];
        var share = SolarCoordinates.Turn(azimuth - _azimuthDeg[left]) / width;
        return _elevationDeg[left] + (share * (_elevationDeg[right] - _elevationDeg[left]));
    }

    /// <summary>Whether the horizon hides the sun.</summary>
    /// <param name="sun">Direction of the sun.</param>
    public bool Hides(SunDirection sun) => 90 - sun.ZenithDeg < ElevationDeg(sun.AzimuthDeg);

    /// <summary>Share of the sky dome that a plane still sees over this horizon. Range: 0 to 1.</summary>
    /// <param name="plane">The plane.</param>
    /// <remarks>Equation: ∫ max(0, n·s) dΩ over the sky above the horizon, divided by π, on a grid of 1° by azimuth and elevation.</remarks>
    public double SkyShare(Plane plane)
    {
        var sum = 0.0;
        for (var azimuth = 0.5; azimuth < 360; azimuth++)
        {
            var lowest = ElevationDeg(azimuth);
            for (var elevation = 0.5; elevation < 90; elevation++)
            {
                if (elevation < lowest) continue;
                var cos = SunDirection.Of(90 - elevation, azimuth).CosIncidence(plane);
                if (cos > 0) sum += cos * Math.Cos(elevation * SolarCoordinates.DegToRad);
            }
        }
        return sum * SolarCoordinates.DegToRad * SolarCoordinates.DegToRad / Math.PI;
    }
}
