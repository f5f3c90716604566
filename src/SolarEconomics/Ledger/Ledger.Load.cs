namespace SolarEconomics;

public sealed partial class Ledger
{
    /// <summary>Reads a ledger file.</summary>
    /// <param name="path">CSV file with a heading line <c>date,kind,amount,currency</c> and, where wanted, <c>device</c>,
    /// <c>description</c>, <c>own hours</c>, <c>market price</c> (where less was paid), and <c>every</c> (month, quarter, year) with <c>until</c> for an entry that repeats. Dates are <c>2024-03-31</c>, numbers have a point. Lines that start with # are remarks.</param>
    /// <exception cref="RecordException">The file is missing or empty, a column is missing, or entries cannot be read: every one of
    /// them is listed with line and column, and none is left out quietly. Also when there is no purchase.</exception>
    /// <remarks>A ledger with a row left out would be a wrong answer, so one bad row refuses the file.</remarks>
    public static Ledger Load(string path) => Load([path]);

    /// <summary>Reads several ledger files as one.</summary>
    /// <param name="paths">CSV files as <see cref="Load(string)"/> reads them.</param>
    /// <exception cref="RecordException">As for one file; problems of all files are listed together.</exception>
    public static Ledger Load(IEnumerable<string> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        var reader = new LedgerReader();
        foreach (var path in paths) reader.ReadFile(path);
        return From(reader);
    }

    /// <summary>Reads a ledger from an open text.</summary>
    /// <param name="text">CSV text as <see cref="Load(string)"/> reads it.</param>
    /// <param name="name">Name of the text for messages.</param>
    /// <exception cref="RecordException">As for a file.</exception>
    public static Ledger Read(TextReader text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        var reader = new LedgerReader();
        reader.Read(text, name);
        return From(reader);
    }

    private static Ledger From(LedgerReader reader) => reader.Lost.Count == 0
        ? new Ledger(reader.Entries, reader.Notes)
        : throw Throw.UnreadableLedger(reader.Lost);
}
