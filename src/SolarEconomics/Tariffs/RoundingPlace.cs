namespace SolarEconomics;

/// <summary>What a tariff rounds.</summary>
public enum RoundingPlace
{
    /// <summary>Every printed line, then the tax on their sum.</summary>
    Line,

    /// <summary>Only the total to pay.</summary>
    Bill,

    /// <summary>Nothing; for comparisons.</summary>
    Nowhere,
}
