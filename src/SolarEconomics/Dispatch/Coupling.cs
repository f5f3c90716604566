namespace SolarEconomics;

/// <summary>On which side of the battery's converter an array feeds in.</summary>
public enum Coupling
{
    /// <summary>At the board, through an inverter of its own.</summary>
    Ac,

    /// <summary>At the battery's DC bus, through a charge controller.</summary>
    Dc,
}
