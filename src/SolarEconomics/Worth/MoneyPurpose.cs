namespace SolarEconomics;

/// <summary>What a flow of money in an outlook is for.</summary>
public enum MoneyPurpose
{
    /// <summary>Purchases, grants and what belongs to them.</summary>
    Investment,

    /// <summary>Purchases of energy avoided, the plant's own standby already taken off.</summary>
    Savings,

    /// <summary>Paid for export.</summary>
    FeedIn,

    /// <summary>Running, repairing and insuring the plant.</summary>
    Running,

    /// <summary>Parts replaced in the future.</summary>
    Replacement,

    /// <summary>Sales of parts and other income, and the residual at the horizon.</summary>
    Income,
}
