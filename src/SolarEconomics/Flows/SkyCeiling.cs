using NodaTime;

namespace SolarEconomics;

/// <summary>The most sun that a plane of any tilt can meet in an interval: the upper end for a reading that is missing.</summary>
internal static class SkyCeiling
{
    // Bright cloud edges lift a half-hour mean above the clear sky; a tenth covers it. Common practice, no source.
    private const double CloudEdge = 1.1;

    /// <summary>Kilowatts per kWp of modules that face the sun, per interval; 0 at night.</summary>
    /// <remarks>Equation: 1.1 · (1.353 · 0.7^(AM^0.678) + 0.2·sin h + 0.1), AM the air mass of Kasten and Young at the interval's highest
    /// sun. Source: sky-1. The constant and the sine stand for diffuse and ground-reflected light.</remarks>
    internal static double[] Of(IntervalGrid grid, Site site)
    {
        var ceiling = new double[grid.Count];
        var before = SineOfElevation(grid.Start, site);
        for (var i = 0; i < grid.Count; i++)
        {
            var after = SineOfElevation(grid.StartOf(i + 1), site);
            var middle = SineOfElevation(grid.StartOf(i) + (grid.Step / 2), site);
            ceiling[i] = Of(Math.Max(before, Math.Max(middle, after)));
            before = after;
        }
        return ceiling;
    }

    private static double Of(double sine)
    {
        // Refraction and the sun's disc give light until the centre is 0.83 degrees below the horizon.
        if (sine < -0.0145) return 0;
        var elevationDeg = Math.Max(0, Math.Asin(sine) * 180 / Math.PI);
        var airMass = 1 / (Math.Sin(elevationDeg * Math.PI / 180) + (0.50572 * Math.Pow(elevationDeg + 6.07995, -1.6364)));
        var direct = 1.353 * Math.Pow(0.7, Math.Pow(airMass, 0.678));
        return CloudEdge * (direct + (0.2 * Math.Max(0, sine)) + 0.1);
    }

    private static double SineOfElevation(Instant at, Site site)
    {
        var utc = at.InUtc();
        var yearAngle = 2 * Math.PI * (utc.DayOfYear - 1 + (utc.TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerDay)) / 365.25;
        // Spencer's series for declination and the equation of time: good to a few hundredths of a degree, ample for a ceiling.
        var declination = 0.006918 - (0.399912 * Math.Cos(yearAngle)) + (0.070257 * Math.Sin(yearAngle))
            - (0.006758 * Math.Cos(2 * yearAngle)) + (0.000907 * Math.Sin(2 * yearAngle))
            - (0.002697 * Math.Cos(3 * yearAngle)) + (0.00148 * Math.Sin(3 * yearAngle));
        var minutes = 229.18 * (0.000075 + (0.001868 * Math.Cos(yearAngle)) - (0.032077 * Math.Sin(yearAngle))
            - (0.014615 * Math.Cos(2 * yearAngle)) - (0.040849 * Math.Sin(2 * yearAngle)));
        var solarHours = (utc.TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerHour) + (site.LongitudeDeg / 15) + (minutes / 60);
        var hourAngle = (solarHours - 12) * Math.PI / 12;
        var latitude = site.LatitudeDeg * Math.PI / 180;
        return (Math.Sin(latitude) * Math.Sin(declination)) + (Math.Cos(latitude) * Math.Cos(declination) * Math.Cos(hourAngle));
    }
}
