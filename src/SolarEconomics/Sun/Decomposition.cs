namespace SolarEconomics;

/// <summary>Splits global irradiance into beam and diffuse where only the global part is known.</summary>
public static class Decomposition
{
    /// <summary>Sun so low that a measured beam would be noise: below this cosine (about 2.9° of elevation) all is diffuse.</summary>
    internal const double LowestCosZenith = 0.05;

    /// <summary>Clearness index: global over the same sun above the atmosphere. Range: 0 to 1.</summary>
    /// <param name="globalWm2">Global on level ground, in W/m². Range: 0 to 2,000.</param>
    /// <param name="sun">Direction of the sun.</param>
    /// <param name="extraterrestrialNormalWm2">Sunlight above the atmosphere square to the beam, in W/m².</param>
    /// <remarks>Equation: kt = G / (E0 cos z). Held at 1: light at the edge of a cloud can exceed it for seconds.</remarks>
    public static double ClearnessIndex(double globalWm2, SunDirection sun, double extraterrestrialNormalWm2)
    {
        Require.Within(globalWm2, 0, 2000, "W/m²; the record's night offset is cut at 0 before this");
        Require.Within(extraterrestrialNormalWm2, 1300, 1450, "W/m² above the atmosphere");
        return sun.Up < LowestCosZenith ? 0 : Math.Min(1, globalWm2 / (extraterrestrialNormalWm2 * sun.Up));
    }

    /// <summary>Diffuse share of global by clearness. Range: 0.165 to 1.</summary>
    /// <param name="clearnessIndex">Clearness index kt. Range: 0 to 1.</param>
    /// <remarks>Equation: kt ≤ 0.22: 1 − 0.09 kt; kt ≤ 0.80: 0.9511 − 0.1604 kt + 4.388 kt² − 16.638 kt³ + 12.336 kt⁴; else 0.165. Source: sun-10.</remarks>
    public static double DiffuseShare(double clearnessIndex)
    {
        var k = Require.Fraction(clearnessIndex);
        return k <= 0.22 ? 1 - (0.09 * k)
            : k <= 0.80 ? 0.9511 + (k * (-0.1604 + (k * (4.388 + (k * (-16.638 + (k * 12.336)))))))
            : 0.165;
    }

    /// <summary>Beam and diffuse from global. The three close exactly: global = beam · cos z + diffuse.</summary>
    /// <param name="globalWm2">Global on level ground, in W/m². Range: 0 to 2,000.</param>
    /// <param name="sun">Direction of the sun.</param>
    /// <param name="extraterrestrialNormalWm2">Sunlight above the atmosphere square to the beam, in W/m².</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Irradiance Split(double globalWm2, SunDirection sun, double extraterrestrialNormalWm2)
    {
        var kt = ClearnessIndex(globalWm2, sun, extraterrestrialNormalWm2);
        if (sun.Up < LowestCosZenith) return new Irradiance(globalWm2, 0, globalWm2);
        var diffuse = globalWm2 * DiffuseShare(kt);
        return new Irradiance(globalWm2, (globalWm2 - diffuse) / sun.Up, diffuse);
    }
}
