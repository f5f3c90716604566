namespace SolarEconomics;

/// <summary>What arrives on a tilted plane, by where it comes from. Unit: W/m².</summary>
/// <param name="BeamWm2">From the sun itself.</param>
/// <param name="AroundSunWm2">From the sky close around the sun: shaded together with the beam.</param>
/// <param name="DomeWm2">From the rest of the sky.</param>
/// <param name="GroundWm2">Thrown back by the ground.</param>
/// <remarks>The <c>default</c> is night.</remarks>
public readonly record struct PlaneIrradiance(double BeamWm2, double AroundSunWm2, double DomeWm2, double GroundWm2)
{
    /// <summary>All light from the sky: around the sun and dome.</summary>
    public double SkyWm2 => AroundSunWm2 + DomeWm2;

    /// <summary>Everything together.</summary>
    public double TotalWm2 => BeamWm2 + AroundSunWm2 + DomeWm2 + GroundWm2;
}
