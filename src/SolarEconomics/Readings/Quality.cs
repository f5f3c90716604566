namespace SolarEconomics;

/// <summary>What is known about one reading beside its number. Missing is a flag with a reason, never 0 and never NaN.</summary>
[Flags]
public enum Quality : byte
{
    /// <summary>Read as it stands.</summary>
    Good = 0,

    /// <summary>No value: the energy stored beside it is 0 and is not counted.</summary>
    Missing = 1,

    /// <summary>The source says it estimated or substituted this value.</summary>
    Estimated = 2,

    /// <summary>Filled by a named policy of ours.</summary>
    Filled = 4,

    /// <summary>The same time stood more than once in the record.</summary>
    Repeated = 8,

    /// <summary>Below zero where the flow cannot be.</summary>
    Negative = 16,

    /// <summary>The plant could have made more than was counted (battery full, export limit, trip).</summary>
    Censored = 32,

    /// <summary>Suspect: stuck, above what the array can do, or across a reset.</summary>
    Doubtful = 64,
}
