namespace AlderWeir;

/// <summary>Invented weather of a western coast: cloud from day to day, cloud that passes, and mild air.</summary>
internal sealed class Weather
{
    private const double AlbedoOfGrass = 0.2;
    private const double SolarConstantWm2 = 1361;

    // Mean share of the clear-sky sun that comes through the cloud, January first.
    private static readonly double[] MeanThrough = [0.50, 0.53, 0.57, 0.62, 0.63, 0.59, 0.56, 0.57, 0.57, 0.54, 0.51, 0.48];

    private readonly double[] _through;
    private readonly double[] _airC;

    internal Weather(Clock clock, Draw draw)
    {
        _through = new double[clock.Steps];
        _airC = new double[clock.Steps];
        var (day, dayDrift, passing, warmth) = (-1, 0.0, 0.0, 0.0);
        for (var step = 0; step < clock.Steps; step++)
        {
            var local = clock.LocalStartOf(step / Clock.StepsPerHalfHour);
            var today = NodaTime.Period.DaysBetween(Timeline.Start, local.Date);
            if (today != day)
            {
                day = today;
                dayDrift = (0.4 * dayDrift) + (0.92 * draw.Bell(Stream.DayOfCloud, day));
                warmth = (0.7 * warmth) + (0.7 * draw.Bell(Stream.Warmth, day));
            }
            passing = (0.9 * passing) + (0.43 * draw.Bell(Stream.PassingCloud, step));
            var mean = Math.Clamp(MeanThrough[local.Month - 1] + (0.25 * dayDrift), 0.10, 0.98);
            // Overcast and clear days are steady; between them clouds come and go.
            var unsteady = 1.1 * mean * (1 - mean);
            _through[step] = Math.Clamp(mean + (unsteady * passing), 0.05, 1.0);
            _airC[step] = 10.5 - (5 * Math.Cos(2 * Math.PI * (local.DayOfYear - 25) / 365.25))
                - (2.5 * Math.Cos(2 * Math.PI * (local.Hour - 3) / 24)) + (1.8 * warmth);
        }
    }

    internal double AirC(int step) => _airC[step];

    /// <summary>Sun on a tilted plane in W/m²: beam, even sky and what the ground throws back.</summary>
    internal double OnPlaneWm2(int step, Sun sun, double tiltDeg, double azimuthDeg, double horizonDeg)
    {
        if (sun.SinElevation <= 0.01) return 0;
        // Clear sky after a one-line formula of the cosine of the zenith angle.
        var clearWm2 = 1098 * sun.SinElevation * Math.Exp(-0.057 / sun.SinElevation);
        var levelWm2 = _through[step] * clearWm2;
        var clearness = levelWm2 / (SolarConstantWm2 * sun.SinElevation);
        var diffuseWm2 = DiffuseShare(clearness) * levelWm2;
        var beamWm2 = sun.ElevationDeg > horizonDeg ? levelWm2 - diffuseWm2 : 0;
        var beamFactor = Math.Min(Math.Max(0, sun.CosIncidence(tiltDeg, azimuthDeg)) / Math.Max(sun.SinElevation, 0.05), 8);
        var cosTilt = Math.Cos(tiltDeg * Math.PI / 180);
        return (beamWm2 * beamFactor) + (diffuseWm2 * (1 + cosTilt) / 2) + (levelWm2 * AlbedoOfGrass * (1 - cosTilt) / 2);
    }

    private static double DiffuseShare(double clearness) => clearness switch
    {
        <= 0.22 => 1 - (0.09 * clearness),
        >= 0.80 => 0.165,
        _ => Math.Clamp(1.15 - (1.25 * clearness), 0.165, 0.98),
    };
}
