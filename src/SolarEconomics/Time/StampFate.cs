namespace SolarEconomics;

/// <summary>How a local stamp became an instant.</summary>
internal enum StampFate
{
    /// <summary>One instant, no doubt.</summary>
    Sure,

    /// <summary>In the repeated hour, and resolved by the policy.</summary>
    Resolved,

    /// <summary>In the repeated hour, and the order of the rows does not tell which pass.</summary>
    Ambiguous,

    /// <summary>In the skipped hour, and moved on as the policy says.</summary>
    Moved,

    /// <summary>In the skipped hour: there is no such instant.</summary>
    Skipped,
}
