namespace SolarEconomics;

internal static partial class Throw
{
    private const string LedgerHeading = "date,kind,amount,currency,device,description";

    internal static RecordException LedgerMissing(string path) =>
        new($"{path}: found no such file, expected a ledger (CSV). Looked for it as {Path.GetFullPath(path)}.");

    internal static RecordException LedgerClosed(string path, Exception error) =>
        new($"{path}: found a file that cannot be opened ({error.Message}), expected a ledger (CSV). Close it elsewhere, or check who may read it.");

    internal static RecordException LedgerEmpty(string name) =>
        new($"{name}: found no entries, expected a heading line such as {LedgerHeading} and a line for each payment.");

    internal static RecordException LedgerColumns(string name, string[] missing, string[] header)
    {
        var nearest = string.Join("; ", missing.Select(m => $"nearest to \"{m}\": {Nearest.List(m, header)}"));
        return new($"{name}: found no column {string.Join(", ", missing.Select(m => $"\"{m}\""))} in the heading " +
            $"\"{string.Join(",", header)}\", expected {LedgerHeading}. Rename the column ({nearest}).");
    }

    internal static RecordException LedgerQuotes(string name, long? line, Exception error) =>
        new($"{name}, line {line}: found quotes that do not pair ({error.Message}), expected a text in quotes to end with one. Double a quote inside a text.");

    internal static RecordException UnreadableLedger(IReadOnlyList<Problem> problems) => new(problems.Count == 1
        ? problems[0] + "."
        : $"Found {problems.Count} entries or fields of the ledger that cannot be read, expected none. Put these right first:\n" +
          string.Join("\n", problems.Take(20)) + (problems.Count > 20 ? $"\n… and {problems.Count - 20} more." : ""), problems);

    internal static RecordException NoPurchase(IReadOnlyList<LedgerEntry> entries)
    {
        var where = entries.Select(e => e.File).FirstOrDefault(f => f is not null) ?? "ledger";
        var kinds = entries.Count == 0 ? "no entries" : "only " + string.Join(", ", entries.Select(e => LedgerKinds.WordOf(e.Kind)).Distinct(StringComparer.Ordinal));
        return new($"{where}: found {kinds}, expected at least one entry of kind purchase: payback is counted from the day the first one was paid.");
    }

    internal static ArgumentOutOfRangeException NegativeEntry(LedgerEntry entry) =>
        new("entries", entry.Amount.Amount, $"Found {entry.Amount} for {LedgerKinds.WordOf(entry.Kind)} on {Day(entry.Date)}, expected 0 or more: " +
            "the kind says which way money went, and money back is kind refund or sale.");

    internal static ArgumentOutOfRangeException EntryTooLarge(LedgerEntry entry, Money amount) =>
        new("entries", amount.Amount, $"Found {amount} for {LedgerKinds.WordOf(entry.Kind)} on {Day(entry.Date)}, expected at most 1,000,000,000,000: " +
            "check the digits, sums of such amounts are no money.");

    internal static MixedMoneyException MixedLedger(LedgerEntry a, LedgerEntry b) =>
        new($"Found {a.Amount.Currency} ({a.Origin ?? Day(a.Date)}) together with {b.Amount.Currency} ({b.Origin ?? Day(b.Date)}), expected one currency. " +
            "Enter each payment in the currency of the site, at the rate of its day.");
}
