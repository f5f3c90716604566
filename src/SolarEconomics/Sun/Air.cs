namespace SolarEconomics;

/// <summary>The air at a place, as far as it bends light.</summary>
/// <param name="PressureMbar">Pressure at the place. Unit: mbar (= hPa). Range: 0 to 1,100; 0 is no air, so no refraction.</param>
/// <param name="TemperatureC">Temperature of the air. Unit: °C. Range: −90 to 60.</param>
public readonly record struct Air(double PressureMbar, double TemperatureC)
{
    /// <summary>1,010 mbar and 10 °C, the usual convention of almanacs.</summary>
    public static Air Usual { get; } = new(1010, 10);

    /// <summary>How much this air lifts a light at a true elevation. Unit: degrees; 0 below −1°, where it no longer matters.</summary>
    /// <param name="elevationDeg">True elevation in degrees.</param>
    /// <remarks>Equation: R = P/1010 · 283/(273 + T) · 1.02 / (60 tan(h + 10.3/(h + 5.11))). Source: sun-3.</remarks>
    public double RefractionDeg(double elevationDeg)
    {
        if (elevationDeg < -1) return 0;
        var angle = (elevationDeg + (10.3 / (elevationDeg + 5.11))) * SolarCoordinates.DegToRad;
        return Math.Max(0, PressureMbar / 1010 * (283 / (273 + TemperatureC)) * 1.02 / (60 * Math.Tan(angle)));
    }
}
