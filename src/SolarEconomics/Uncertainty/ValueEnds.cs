namespace SolarEconomics;

/// <summary>Lowest and highest value in units of the currency; no high end where nothing bounds generation.</summary>
internal readonly record struct ValueEnds(double Low, double? High)
{
    internal ValueEnds Plus(double low, double high) => new(Low + low, High + high);
}
