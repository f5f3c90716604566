namespace SolarEconomics;

/// <summary>Brings light from level ground onto a tilted plane.</summary>
public static class Transposition
{
    /// <summary>Below 1° of elevation the ratio of beam on plane and ground is held, as it would run away.</summary>
    internal const double LowestCosZenith = 0.0174524064372835;

    // cos 85°, the bound that the published model itself uses.
    private const double PerezLowestCosZenith = 0.0871557427476582;

    /// <summary>Light onto a plane.</summary>
    /// <param name="sky">Sun and sky.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="model">How the sky's light is spread.</param>
    /// <param name="groundReflection">Share of global that the ground throws back. Range: 0 to 1.</param>
    /// <remarks>Equation: beam = DNI · max(0, cos θ); ground = ρ · GHI (1 − cos β)/2; sky by model. Source: sun-2, sun-11, sun-12.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the model is unknown.</exception>
    public static PlaneIrradiance OnPlane(in Sky sky, Plane plane, SkyModel model, double groundReflection = 0.2)
    {
        Require.Fraction(groundReflection);
        var facing = Math.Max(0, sky.Sun.CosIncidence(plane));
        var beam = sky.Sun.Up > 0 ? sky.Irradiance.BeamNormalWm2 * facing : 0;
        var ground = groundReflection * sky.Irradiance.GlobalWm2 * plane.GroundShare;
        var (around, dome) = model switch
        {
            SkyModel.Isotropic => (0.0, sky.Irradiance.DiffuseWm2 * plane.SkyShare),
            SkyModel.HayDavies => HayDavies(sky, plane, facing, horizonFactor: 1),
            SkyModel.HayDaviesKlucherReindl => HayDavies(sky, plane, facing, HorizonFactor(sky, plane)),
            SkyModel.Perez => Perez(sky, plane, facing),
            _ => throw new ArgumentOutOfRangeException(nameof(model), model, "Expected one of the sky models."),
        };
        return new PlaneIrradiance(beam, around, dome, ground);
    }

    private static (double Around, double Dome) HayDavies(in Sky sky, Plane plane, double facing, double horizonFactor)
    {
        var directed = sky.Sun.Up > 0 ? sky.Anisotropy : 0;
        var ratio = facing / Math.Max(sky.Sun.Up, LowestCosZenith);
        var diffuse = sky.Irradiance.DiffuseWm2;
        return (diffuse * directed * ratio, diffuse * (1 - directed) * plane.SkyShare * horizonFactor);
    }

    private static double HorizonFactor(in Sky sky, Plane plane)
    {
        var global = sky.Irradiance.GlobalWm2;
        var beamShare = global > 0 ? Math.Clamp(sky.Irradiance.BeamNormalWm2 * Math.Max(0, sky.Sun.Up) / global, 0, 1) : 0;
        var half = Math.Sin(plane.TiltDeg * SolarCoordinates.DegToRad / 2);
        return 1 + (Math.Sqrt(beamShare) * half * half * half);
    }

    private static (double Around, double Dome) Perez(in Sky sky, Plane plane, double facing)
    {
        var diffuse = sky.Irradiance.DiffuseWm2;
        if (diffuse <= 0) return (0, 0);
        var (around, horizon) = PerezSky.Of(sky).Brightening;
        var ratio = facing / Math.Max(sky.Sun.Up, PerezLowestCosZenith);
        var dome = diffuse * (((1 - around) * plane.SkyShare) + (horizon * Math.Sin(plane.TiltDeg * SolarCoordinates.DegToRad)));
        // A negative horizon term may outweigh the dome of a wall under a dull sky; light is never negative.
        return (diffuse * around * ratio, Math.Max(0, dome));
    }
}
