namespace SolarEconomics;

/// <summary>What an entry of the ledger is for. The kind, not the sign, says which way the money went.</summary>
public enum LedgerKind
{
    /// <summary>Plant bought: modules, inverter, battery, mounting, the paid work of putting it up.</summary>
    Purchase,

    /// <summary>Grant or rebate received towards the plant.</summary>
    Grant,

    /// <summary>Money back for something returned.</summary>
    Refund,

    /// <summary>Loan paid out to the owner.</summary>
    LoanReceived,

    /// <summary>Instalment, interest or fee of a loan.</summary>
    Finance,

    /// <summary>Repair done by somebody who was paid.</summary>
    Repair,

    /// <summary>Part bought to keep the plant at work.</summary>
    Part,

    /// <summary>Spare bought for stock.</summary>
    Spare,

    /// <summary>Spare taken from stock and put to use, at what it had cost: no money moves.</summary>
    SpareUsed,

    /// <summary>Paid work other than a repair.</summary>
    Labour,

    /// <summary>Own hours: no money moves, and results are shown without and with them.</summary>
    OwnHours,

    /// <summary>Insurance premium.</summary>
    Insurance,

    /// <summary>Running cost: meter rent, monitoring, cleaning, data.</summary>
    Running,

    /// <summary>Permit, connection application or registration.</summary>
    Permit,

    /// <summary>Inspection or test.</summary>
    Inspection,

    /// <summary>Hire of a lift, scaffold or tools.</summary>
    LiftHire,

    /// <summary>Taking away and disposal of old parts.</summary>
    Disposal,

    /// <summary>Old part sold.</summary>
    Sale,

    /// <summary>Certificates of renewable generation sold, or another payment for generating.</summary>
    Certificate,

    /// <summary>Warranty or insurance claim that was paid out.</summary>
    WarrantyPaid,

    /// <summary>Warranty or insurance claim that was refused: what was claimed, no money moves.</summary>
    WarrantyRefused,

    /// <summary>Something received for nothing: its market price, no money moves.</summary>
    Gift,

    /// <summary>Something got in exchange: its market price, no money moves.</summary>
    Barter,
}
