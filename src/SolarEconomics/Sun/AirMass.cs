namespace SolarEconomics;

/// <summary>How much more air the beam crosses than from straight above. A bare number, 1 overhead, about 38 at the horizon.</summary>
public static class AirMass
{
    /// <summary>Relative air mass by the cosine of the zenith angle: a rational formula, without angles, so it runs in vector lanes.</summary>
    /// <param name="cosZenith">Cosine of the true zenith angle. Range: −1 to 1; below 0 counts as 0.</param>
    /// <remarks>Equation: (1.002432 c² + 0.148386 c + 0.0096467) / (c³ + 0.149864 c² + 0.0102963 c + 0.000303978). Source: sun-7.</remarks>
    public static double Relative(double cosZenith)
    {
        var c = Math.Max(0, Require.Within(cosZenith, -1.0000001, 1.0000001, "cosine of the zenith angle"));
        return (((1.002432 * c) + 0.148386) * c + 0.0096467) / ((((c + 0.149864) * c) + 0.0102963) * c + 0.000303978);
    }

    /// <summary>Share of the sea-level pressure that is left at a height. Range: 0 to about 1.05.</summary>
    /// <param name="heightM">Height above the sea, in metres. Range: −430 to 9,000.</param>
    /// <remarks>Equation: p/p0 = (1 − 2.25577·10⁻⁵ h)^5.25588, the standard atmosphere. Source: sun-7.</remarks>
    public static double PressureShare(double heightM) =>
        Math.Pow(1 - (2.25577e-5 * Require.Within(heightM, -430, 9000, "metres above the sea")), 5.25588);
}
