namespace SolarEconomics;

/// <summary>Which way the energy of a channel goes, seen from the home.</summary>
public enum FlowKind
{
    /// <summary>The record does not say; never added to anything.</summary>
    Unknown,

    /// <summary>Made by the plant, at the channel's measurement point.</summary>
    Generation,

    /// <summary>From the grid to the home.</summary>
    Import,

    /// <summary>From the home to the grid, and only there.</summary>
    Export,

    /// <summary>Used on site by the home's own load.</summary>
    Use,

    /// <summary>Into the battery, at the channel's measurement point.</summary>
    BatteryCharge,

    /// <summary>Out of the battery, at the channel's measurement point.</summary>
    BatteryDischarge,
}
