namespace SolarEconomics;

/// <summary>What an entry does to the account of the plant.</summary>
public enum LedgerClass
{
    /// <summary>Part of what has to be paid back; grants and refunds make it smaller.</summary>
    Investment,

    /// <summary>Cost of keeping the plant at work.</summary>
    Running,

    /// <summary>Money that came in beside the saved energy.</summary>
    Income,

    /// <summary>Loan flows: part of the owner's view, not of the project's.</summary>
    Finance,

    /// <summary>Worth knowing, but no money moved.</summary>
    NoMoney,
}
