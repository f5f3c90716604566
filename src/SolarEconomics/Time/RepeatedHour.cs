namespace SolarEconomics;

/// <summary>How stamps in the repeated autumn hour are told apart.</summary>
public enum RepeatedHour
{
    /// <summary>The first pass until local time no longer advances from row to row, then the second.</summary>
    ByRowOrder,

    /// <summary>Always the first pass.</summary>
    First,

    /// <summary>Always the second pass.</summary>
    Second,
}
