namespace SolarEconomics;

/// <summary>Constants of a mounting for <see cref="CellTemperature.ByBack"/>.</summary>
/// <param name="A">Exponent without wind.</param>
/// <param name="B">Change of the exponent per m/s of wind; below 0.</param>
/// <param name="CellAboveBackK">Cell above back at 1,000 W/m². Unit: K.</param>
/// <remarks>Source: gen-3.</remarks>
public sealed record BackTemperature(double A, double B, double CellAboveBackK)
{
    /// <summary>Glass and film, in the open.</summary>
    public static BackTemperature OpenRack { get; } = new(-3.56, -0.0750, 3);

    /// <summary>Glass and film, insulated at the back.</summary>
    public static BackTemperature Insulated { get; } = new(-2.81, -0.0455, 0);

    /// <summary>Temperature of the back. Unit: °C.</summary>
    /// <param name="planeWm2">Light on the plane, in W/m². Range: 0 to 2,000.</param>
    /// <param name="airC">Air, in °C. Range: −90 to 70.</param>
    /// <param name="windMs">Wind at 10 m, in m/s. Range: 0 to 60.</param>
    public double At(double planeWm2, double airC, double windMs)
    {
        CellTemperature.Checked(planeWm2, airC, windMs);
        return (planeWm2 * Math.Exp(A + (B * windMs))) + airC;
    }
}
