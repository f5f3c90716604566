namespace SolarEconomics;

/// <summary>How light from the sky is spread when it is brought onto a tilted plane.</summary>
public enum SkyModel
{
    /// <summary>Evenly: every part of the sky alike. Too low for a plane that faces the sun.</summary>
    Isotropic,

    /// <summary>Part from around the sun, the rest evenly. The default: two additions more than even, and most of what the larger models gain.</summary>
    HayDavies,

    /// <summary>As <see cref="HayDavies"/>, with a brighter horizon.</summary>
    HayDaviesKlucherReindl,

    /// <summary>Around the sun, horizon and dome, by eight classes of sky clearness fitted to measurements.</summary>
    Perez,
}
