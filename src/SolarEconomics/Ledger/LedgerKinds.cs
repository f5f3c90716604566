using System.Collections.Frozen;

namespace SolarEconomics;

/// <summary>The words of a ledger file, and what each kind does to the account.</summary>
internal static class LedgerKinds
{
    /// <summary>Sign +1: the owner receives. Sign -1: the owner pays. 0: no money moves.</summary>
    private static readonly (LedgerKind Kind, string Word, LedgerClass Class, int Sign)[] Table =
    [
        (LedgerKind.Purchase, "purchase", LedgerClass.Investment, -1),
        (LedgerKind.Grant, "grant", LedgerClass.Investment, +1),
        (LedgerKind.Refund, "refund", LedgerClass.Investment, +1),
        (LedgerKind.LoanReceived, "loan received", LedgerClass.Finance, +1),
        (LedgerKind.Finance, "finance", LedgerClass.Finance, -1),
        (LedgerKind.Repair, "repair", LedgerClass.Running, -1),
        (LedgerKind.Part, "part", LedgerClass.Running, -1),
        (LedgerKind.Spare, "spare", LedgerClass.Investment, -1),
        (LedgerKind.SpareUsed, "spare used", LedgerClass.NoMoney, 0),
        (LedgerKind.Labour, "labour", LedgerClass.Running, -1),
        (LedgerKind.OwnHours, "own hours", LedgerClass.NoMoney, 0),
        (LedgerKind.Insurance, "insurance", LedgerClass.Running, -1),
        (LedgerKind.Running, "running", LedgerClass.Running, -1),
        (LedgerKind.Permit, "permit", LedgerClass.Investment, -1),
        (LedgerKind.Inspection, "inspection", LedgerClass.Running, -1),
        (LedgerKind.LiftHire, "lift hire", LedgerClass.Running, -1),
        (LedgerKind.Disposal, "disposal", LedgerClass.Running, -1),
        (LedgerKind.Sale, "sale", LedgerClass.Income, +1),
        (LedgerKind.Certificate, "certificate", LedgerClass.Income, +1),
        (LedgerKind.WarrantyPaid, "warranty paid", LedgerClass.Income, +1),
        (LedgerKind.WarrantyRefused, "warranty refused", LedgerClass.NoMoney, 0),
        (LedgerKind.Gift, "gift", LedgerClass.NoMoney, 0),
        (LedgerKind.Barter, "barter", LedgerClass.NoMoney, 0),
    ];

    private static readonly FrozenDictionary<string, LedgerKind> ByWord =
        Table.ToFrozenDictionary(t => t.Word, t => t.Kind, StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<LedgerKind, (string Word, LedgerClass Class, int Sign)> ByKind =
        Table.ToFrozenDictionary(t => t.Kind, t => (t.Word, t.Class, t.Sign));

    internal static IEnumerable<string> Words => Table.Select(t => t.Word);

    internal static bool TryParse(string word, out LedgerKind kind) => ByWord.TryGetValue(word, out kind);

    internal static string WordOf(LedgerKind kind) => ByKind[kind].Word;

    internal static LedgerClass ClassOf(LedgerKind kind) => ByKind[kind].Class;

    internal static int SignOf(LedgerKind kind) => ByKind[kind].Sign;
}
