namespace SolarEconomics;

/// <summary>Which kWh a cost per kWh counts.</summary>
public enum EnergyCounted
{
    /// <summary>AC energy generated, used or not.</summary>
    GeneratedAc,

    /// <summary>Energy that reached a use or the grid, after losses and curtailment.</summary>
    Delivered,
}
