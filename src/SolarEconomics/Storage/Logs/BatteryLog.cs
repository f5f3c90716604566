namespace SolarEconomics;

/// <summary>A battery's log kept by hand: capacity tests, cell spread, water, cycles, equalising.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed class BatteryLog
{
    private static readonly string[] s_needed = ["date", "kind", "value", "unit"];
    private static readonly string[] s_optional = ["cell °C", "note"];

    // The words of the file, in the order of the kinds, with the units each may have and what one is in the unit of the kind.
    private static readonly string[] s_kinds = ["capacity test", "cell spread", "water", "cycles", "equalising"];
    private static readonly (string Unit, double Factor)[][] s_units = [[("kWh", 1), ("Wh", 0.001)], [("V", 1), ("mV", 0.001)], [("L", 1)], [("cycles", 1)], [("h", 1)]];

    private BatteryLog(IReadOnlyList<BatteryLogEntry> entries) => Entries = entries;

    /// <summary>The rows, earliest first.</summary>
    public IReadOnlyList<BatteryLogEntry> Entries { get; }

    /// <summary>The rows of one kind, earliest first.</summary>
    /// <param name="kind">Kind to keep.</param>
    public IReadOnlyList<BatteryLogEntry> Of(BatteryLogKind kind) => [.. Entries.Where(e => e.Kind == kind)];

    /// <summary>Reads a log.</summary>
    /// <param name="path">CSV file with a heading line <c>date,kind,value,unit</c> and, where wanted, <c>cell °C</c> and <c>note</c>. Kinds and their units: capacity test (kWh, Wh),
    /// cell spread (V, mV), water (L), cycles (cycles), equalising (h). Lines that start with # are remarks.</param>
    /// <exception cref="RecordException">The file is missing or empty, a column is missing, or fields cannot be read: all of them are listed.</exception>
    public static BatteryLog Load(string path) => From(new LogSheet("battery log", s_needed, s_optional).Load(path, Entry));

    /// <summary>Reads a log from an open text.</summary>
    /// <param name="text">CSV text as <see cref="Load"/> reads it.</param>
    /// <param name="name">Name of the text for messages.</param>
    /// <exception cref="RecordException">As for a file.</exception>
    public static BatteryLog Read(TextReader text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        return From(new LogSheet("battery log", s_needed, s_optional).Read(text, name, Entry));
    }

    /// <summary>A log of rows written in code.</summary>
    /// <param name="entries">Rows in any order.</param>
    public static BatteryLog From(IEnumerable<BatteryLogEntry> entries) => new([.. entries.OrderBy(e => e.Date).ThenBy(e => e.Line)]);

    /// <summary>How the tested capacity falls with the years.</summary>
    /// <param name="sharePerKelvin">Share of the capacity at 25 °C that a lead-acid battery lacks for each degree below it. Range: 0 to 0.02. Default: 0.006: common practice, no source.</param>
    /// <exception cref="RecordException">Fewer than three capacity tests.</exception>
    /// <remarks>Equation: capacity at 25 °C = tested / (1 − share · (25 − cell °C)); then a straight line over the years by least squares. Source: stat-1.</remarks>
    public CapacityTrend Capacity(double sharePerKelvin = 0.006)
    {
        Require.Within(sharePerKelvin, 0, 0.02, "a share per degree; 0.6 % is written 0.006");
        return CapacityTrend.Of(this, sharePerKelvin);
    }

    /// <summary>The ageing that its capacity tests measured, for a run over years.</summary>
    /// <param name="cycleFade">Share of the new capacity that a full cycle takes, as its maker states it: the part of the measured loss that comes with work. The rest is the calendar's.
    /// Range: 0 to 0.01. Default: 0, all of the loss is laid on the calendar, right where the battery goes on working as it did.</param>
    /// <param name="newKwh">Capacity when new, at 25 °C. Unit: kWh. Default: what the line through the tests says for the first one.</param>
    /// <exception cref="RecordException">Fewer than three capacity tests; cycles asked for without two rows that count them; tests that leave the calendar no loss, or more than 20 % a year.</exception>
    /// <remarks>Equation: calendar = −slope / new capacity − cycle fade · cycles / years. One slope cannot tell calendar and cycles apart, so the second must be stated. Source: storage-5, stat-1.</remarks>
    public BatteryAgeing Ageing(double cycleFade = 0, double? newKwh = null) => Capacity().Ageing(this, cycleFade, newKwh);

    private static BatteryLogEntry Entry(LogRow row)
    {
        var kind = row.Word("kind", s_kinds);
        var factor = s_units[kind][row.Word("unit", [.. s_units[kind].Select(u => u.Unit)])].Factor;
        return new BatteryLogEntry(row.Date("date"), (BatteryLogKind)kind, row.NeededNumber("value", 0, 1e6, "0 or more") * factor)
        {
            CellC = row.Number("cell °C", -40, 80, "°C"), Note = row.Text("note"), File = row.File, Line = row.Line,
        };
    }
}
