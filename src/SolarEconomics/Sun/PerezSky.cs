namespace SolarEconomics;

/// <summary>Class of a sky by clearness and brightness, with the coefficients fitted to each class.</summary>
/// <param name="Clearness">ε, 1 under full cloud, above 6 in very clear air.</param>
/// <param name="Brightness">Δ, diffuse light times air mass over sunlight above the atmosphere.</param>
/// <param name="ZenithRad">Zenith angle of the sun, in radians.</param>
/// <remarks>Equation: ε = ((D + B)/D + 1.041 z³) / (1 + 1.041 z³); Δ = D m / E0; F1 = max(0, f11 + f12 Δ + f13 z); F2 = f21 + f22 Δ + f23 z. Source: sun-12.</remarks>
public readonly record struct PerezSky(double Clearness, double Brightness, double ZenithRad)
{
    private const double Kappa = 1.041;

    private static readonly double[] UpperClearness = [1.065, 1.230, 1.500, 1.950, 2.800, 4.500, 6.200];

    // Table 6 of the source, all stations together: f11, f12, f13, f21, f22, f23 by class.
    private static readonly double[,] Coefficients =
    {
        { -0.008, 0.588, -0.062, -0.060, 0.072, -0.022 },
        { 0.130, 0.683, -0.151, -0.019, 0.066, -0.029 },
        { 0.330, 0.487, -0.221, 0.055, -0.064, -0.026 },
        { 0.568, 0.187, -0.295, 0.109, -0.152, -0.014 },
        { 0.873, -0.392, -0.362, 0.226, -0.462, 0.001 },
        { 1.132, -1.237, -0.412, 0.288, -0.823, 0.056 },
        { 1.060, -1.600, -0.359, 0.264, -1.127, 0.131 },
        { 0.678, -0.327, -0.250, 0.156, -1.377, 0.251 },
    };

    /// <summary>Class of the sky, 1 (overcast) to 8 (clear).</summary>
    public int Class
    {
        get
        {
            var index = 0;
            while (index < UpperClearness.Length && Clearness >= UpperClearness[index]) index++;
            return index + 1;
        }
    }

    /// <summary>Share of the diffuse light around the sun (F1, 0 or more) and of the horizon (F2, may be negative).</summary>
    public (double AroundSun, double Horizon) Brightening
    {
        get
        {
            var row = Class - 1;
            var around = Coefficients[row, 0] + (Coefficients[row, 1] * Brightness) + (Coefficients[row, 2] * ZenithRad);
            var horizon = Coefficients[row, 3] + (Coefficients[row, 4] * Brightness) + (Coefficients[row, 5] * ZenithRad);
            return (Math.Clamp(around, 0, 1), horizon);
        }
    }

    /// <summary>Class and brightness of a sky.</summary>
    /// <param name="sky">Sun and sky; its diffuse part is above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no diffuse light, so no class.</exception>
    public static PerezSky Of(in Sky sky)
    {
        var diffuse = sky.Irradiance.DiffuseWm2;
        if (diffuse <= 0) throw new ArgumentOutOfRangeException(nameof(sky), diffuse, "Expected diffuse light above 0 W/m²: at night a sky has no class.");
        var zenith = Math.Acos(Math.Clamp(sky.Sun.Up, 0, 1));
        var cubed = Kappa * zenith * zenith * zenith;
        var clearness = (((diffuse + sky.Irradiance.BeamNormalWm2) / diffuse) + cubed) / (1 + cubed);
        var airMass = sky.AirMass ?? AirMass.Relative(sky.Sun.Up);
        return new PerezSky(clearness, diffuse * airMass / sky.ExtraterrestrialNormalWm2, zenith);
    }
}
