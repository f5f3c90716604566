namespace SolarEconomics;

/// <summary>What the size of a connection is stated in.</summary>
public enum ConnectionUnit
{
    /// <summary>Amperes of the main fuse.</summary>
    Ampere,

    /// <summary>Kilovolt-amperes agreed with the network.</summary>
    KilovoltAmpere,

    /// <summary>Kilowatts agreed with the network.</summary>
    Kilowatt,
}
