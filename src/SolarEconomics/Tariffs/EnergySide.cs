namespace SolarEconomics;

/// <summary>Which energy a part of a tariff prices.</summary>
public enum EnergySide
{
    /// <summary>Energy taken from the grid: a charge.</summary>
    Import,

    /// <summary>Energy sent to the grid: a credit.</summary>
    Export,

    /// <summary>Energy taken by a circuit that the network switches and meters apart, such as a hot-water tank: a charge. It is no part of import.</summary>
    ControlledLoad,

    /// <summary>Energy that the plant held back when asked to or at its export limit: a credit where the tariff pays for it.</summary>
    Curtailed,
}
