namespace SolarEconomics;

/// <summary>The power that a demand charge measures.</summary>
public enum DemandUnit
{
    /// <summary>Real power, from the energy taken.</summary>
    Kilowatt,

    /// <summary>Apparent power, from real and reactive energy; equal to the real where no reactive energy is metered.</summary>
    KilovoltAmpere,
}
