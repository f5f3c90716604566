namespace SolarEconomics;

/// <summary>What was done to a plant, or befell it.</summary>
public enum LogKind
{
    /// <summary>None of the others; the note says what.</summary>
    Other,

    /// <summary>Modules were cleaned.</summary>
    Cleaning,

    /// <summary>Snow lay on the modules.</summary>
    Snow,

    /// <summary>A tree or hedge was cut.</summary>
    TreeCut,

    /// <summary>Something failed, or was found failed.</summary>
    Fault,

    /// <summary>Something was repaired.</summary>
    Repair,
}
