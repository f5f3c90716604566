namespace SolarEconomics;

/// <summary>Sun and sky at one moment: all that a tilted plane needs to know.</summary>
/// <param name="Sun">Direction of the sun.</param>
/// <param name="Irradiance">What arrives on level ground.</param>
/// <param name="ExtraterrestrialNormalWm2">Sunlight above the atmosphere square to the beam, in W/m².</param>
public readonly record struct Sky(SunDirection Sun, Irradiance Irradiance, double ExtraterrestrialNormalWm2)
{
    /// <summary>Relative air mass. Default: <see langword="null"/>, worked out from the direction of the sun.</summary>
    public double? AirMass { get; init; }

    /// <summary>Share of the sky's light that is as directed as the beam. Range: 0 to 1.</summary>
    /// <remarks>Equation: A = beam normal / E0. Source: sun-11.</remarks>
    public double Anisotropy => Math.Clamp(Irradiance.BeamNormalWm2 / ExtraterrestrialNormalWm2, 0, 1);

    /// <summary>Light onto a plane of this sky.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="model">How the sky's light is spread. Default: <see cref="SkyModel.HayDavies"/>.</param>
    /// <param name="groundReflection">Share of global that the ground throws back. Range: 0 to 1; grass 0.2, fresh snow 0.8. Default: 0.2.</param>
    public PlaneIrradiance On(Plane plane, SkyModel model = SkyModel.HayDavies, double groundReflection = 0.2) =>
        Transposition.OnPlane(this, plane, model, groundReflection);
}
