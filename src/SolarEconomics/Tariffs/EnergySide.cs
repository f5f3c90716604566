namespace SolarEconomics;

/// <summary>Which energy a part of a tariff prices.</summary>
public enum EnergySide
{
    /// <summary>Energy taken from the grid: a charge.</summary>
    Import,

    /// <summary>Energy sent to the grid: a credit.</summary>
    Export,
}
