namespace SolarEconomics;

/// <summary>What the sun gives on level ground and square to its beam. Unit: W/m².</summary>
/// <param name="GlobalWm2">Global on level ground: beam and sky together. Range: 0 or more.</param>
/// <param name="BeamNormalWm2">Beam on a plane that faces the sun. Range: 0 or more.</param>
/// <param name="DiffuseWm2">From the sky on level ground. Range: 0 or more.</param>
/// <remarks>Closure: global = beam · cos z + diffuse. The <c>default</c> is night.</remarks>
public readonly record struct Irradiance(double GlobalWm2, double BeamNormalWm2, double DiffuseWm2)
{
    /// <summary>Irradiance from beam and diffuse; the global part follows.</summary>
    /// <param name="beamNormalWm2">Beam on a plane that faces the sun, in W/m². Range: 0 or more.</param>
    /// <param name="diffuseWm2">From the sky on level ground, in W/m². Range: 0 or more.</param>
    /// <param name="sun">Direction of the sun.</param>
    /// <exception cref="ArgumentOutOfRangeException">A part is negative or above 2,000 W/m².</exception>
    public static Irradiance FromBeam(double beamNormalWm2, double diffuseWm2, SunDirection sun)
    {
        Require.Within(beamNormalWm2, 0, 2000, "W/m²");
        Require.Within(diffuseWm2, 0, 2000, "W/m²");
        return new Irradiance((beamNormalWm2 * Math.Max(0, sun.Up)) + diffuseWm2, beamNormalWm2, diffuseWm2);
    }
}
