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

    /// <summary>Paid out by a lender: the owner's view only, as all loan flows.</summary>
    LoanReceived,

    /// <summary>Interest of a stated loan.</summary>
    Interest,

    /// <summary>Principal of a stated loan, a balloon and extra payments included.</summary>
    Principal,

    /// <summary>Fees of a stated loan.</summary>
    LoanFee,

    /// <summary>A payment to a lender that the ledger holds, interest and principal in one.</summary>
    LoanPayment,
}
