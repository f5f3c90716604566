namespace SolarEconomics;

/// <summary>A generator's log of hours, litres, starts, oil and prices, kept by hand. It knows no kWh: they are told as a range.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed class GeneratorLog
{
    private static readonly string[] s_needed = ["date", "hours", "litres"];
    private static readonly string[] s_optional = ["price per litre", "full", "starts", "oil litres", "oil price per litre", "note"];

    private GeneratorLog(IReadOnlyList<GeneratorEntry> entries) => Entries = entries;

    /// <summary>The rows, earliest first.</summary>
    public IReadOnlyList<GeneratorEntry> Entries { get; }

    /// <summary>Hours between the first and the last row. Unit: h.</summary>
    public double Hours => Entries[^1].HourMeter - Entries[0].HourMeter;

    /// <summary>Starts counted after the first row; rows that count none add none.</summary>
    public double Starts => Entries.Skip(1).Sum(e => e.Starts ?? 0);

    /// <summary>Reads a log.</summary>
    /// <param name="path">CSV file with a heading line <c>date,hours,litres</c> and, where wanted, <c>price per litre</c>, <c>full</c> (yes or no), <c>starts</c>,
    /// <c>oil litres</c>, <c>oil price per litre</c>, <c>note</c>. Hours are what the hour meter shows, litres what was filled in. Lines that start with # are remarks.</param>
    /// <exception cref="RecordException">The file is missing or empty, a column is missing, fields cannot be read (all of them are listed), the hour meter goes back, or
    /// there are fewer than two rows.</exception>
    public static GeneratorLog Load(string path) => Of(new LogSheet("generator log", s_needed, s_optional).Load(path, Entry));

    /// <summary>Reads a log from an open text.</summary>
    /// <param name="text">CSV text as <see cref="Load"/> reads it.</param>
    /// <param name="name">Name of the text for messages.</param>
    /// <exception cref="RecordException">As for a file.</exception>
    public static GeneratorLog Read(TextReader text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Of(new LogSheet("generator log", s_needed, s_optional).Read(text, name, Entry));
    }

    /// <summary>A log of rows written in code.</summary>
    /// <param name="entries">Rows in any order; at least two.</param>
    /// <exception cref="RecordException">Fewer than two rows, or an hour meter that goes back.</exception>
    public static GeneratorLog Of(IEnumerable<GeneratorEntry> entries)
    {
        var ordered = entries.OrderBy(e => e.Date).ThenBy(e => e.Line).ToArray();
        if (ordered.Length < 2) throw Throw.LogTooShort("generator log", ordered.Length, 2);
        for (var k = 1; k < ordered.Length; k++)
            if (ordered[k].HourMeter < ordered[k - 1].HourMeter) throw Throw.HourMeterBack(ordered[k - 1], ordered[k]);
        return new GeneratorLog(ordered);
    }

    /// <summary>What it gave and what a kWh of it cost, between the first and the last row.</summary>
    /// <param name="generator">Its rating and fuel line.</param>
    /// <param name="currency">Currency of the log's prices.</param>
    /// <param name="fuelLineDoubt">By which share the real engine may burn more or less than its fuel line. Range: 0 to 0.5. Default: 0.1, as lines come from a data sheet
    /// and engines age: common practice, no source.</param>
    /// <param name="tankLitres">What the tank holds: where the first or last row did not fill it, so much more or less may have been burned. Default:
    /// <see langword="null"/>, the largest filling stands in.</param>
    /// <exception cref="RecordException">More or less fuel was burned than the generator can burn in its hours.</exception>
    /// <remarks>Equation: kWh = (litres / (1 ± doubt) − idle · rated kW · hours) / (litres per kWh), held between 0 and rated kW · hours. Source: offgrid-1.</remarks>
    public GeneratorEnergy Energy(Generator generator, Currency currency, double fuelLineDoubt = 0.1, double? tankLitres = null)
    {
        ArgumentNullException.ThrowIfNull(generator);
        Require.Within(fuelLineDoubt, 0, 0.5, "a share; 10 % is written 0.1");
        return GeneratorEnergy.Of(this, generator, currency, fuelLineDoubt, tankLitres ?? Entries.Max(e => e.Litres));
    }

    private static GeneratorEntry Entry(LogRow row) => new(row.Date("date"), row.NeededNumber("hours", 0, 1e6, "hours on the meter"))
    {
        Litres = row.Number("litres", 0, 1e5, "litres") ?? 0,
        PricePerLitre = row.Number("price per litre", 0, 1000, "currency per litre"),
        IsFull = row.Text("full") is null || row.Word("full", ["yes", "no"]) == 0,
        Starts = row.Number("starts", 0, 1e5, "starts since the row before"),
        OilLitres = row.Number("oil litres", 0, 1000, "litres") ?? 0,
        OilPricePerLitre = row.Number("oil price per litre", 0, 1000, "currency per litre") ?? 0,
        Note = row.Text("note"),
        File = row.File,
        Line = row.Line,
    };
}
