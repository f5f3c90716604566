using CsvHelper;

namespace SolarEconomics.Benchmarks;

/// <summary>A row of the interval table as CsvHelper's source generator reads it.</summary>
[CsvRecord]
internal sealed partial class LocalRow
{
    [CsvColumn(Index = 0)]
    [CsvFormat("yyyy-MM-dd HH:mm")]
    public DateTime Start { get; set; }

    [CsvColumn(Index = 1)]
    public double ImportKwh { get; set; }

    [CsvColumn(Index = 2)]
    public double ExportKwh { get; set; }

    [CsvColumn(Index = 3)]
    public double GenerationKwh { get; set; }
}
