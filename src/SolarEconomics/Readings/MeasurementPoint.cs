namespace SolarEconomics;

/// <summary>Where in the plant a counter or channel measures. Counters of different points are added only through a stated efficiency.</summary>
public enum MeasurementPoint
{
    /// <summary>The record does not say.</summary>
    Unknown,

    /// <summary>Direct current at the modules.</summary>
    ModuleDc,

    /// <summary>Direct current out of a charge controller.</summary>
    ControllerDcOut,

    /// <summary>Into the battery.</summary>
    BatteryIn,

    /// <summary>Out of the battery.</summary>
    BatteryOut,

    /// <summary>Alternating current out of an inverter, own generation only.</summary>
    InverterAcOut,

    /// <summary>Alternating current out of an inverter, grid energy passed through included.</summary>
    InverterAcOutWithPassThrough,

    /// <summary>At the board that feeds the loads.</summary>
    LoadBoard,

    /// <summary>At the utility's meter.</summary>
    Meter,
}
