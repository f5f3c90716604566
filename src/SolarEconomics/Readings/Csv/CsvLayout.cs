using System.Text;

namespace SolarEconomics;

/// <summary>How a table in text form is laid out: everything that is decided before the first row is read.</summary>
internal sealed record CsvLayout
{
    internal required Encoding Encoding { get; init; }

    internal required char Delimiter { get; init; }

    internal required NumberText Numbers { get; init; }

    /// <summary>Line of the first row of data, counted from 1.</summary>
    internal required int FirstDataLine { get; init; }

    internal required IReadOnlyList<ColumnMeaning> Columns { get; init; }

    internal required StampColumns Stamp { get; init; }

    /// <summary>Where each row names its channel; <see langword="null"/> where channels stand in columns.</summary>
    internal LongForm? Long { get; init; }

    /// <summary>Quotation marks above the rows that are never closed.</summary>
    internal IReadOnlyList<(int Line, int Field, string Raw)> NeverClosed { get; init; } = [];

    /// <summary>Number of fields that a whole row has.</summary>
    internal int Fields => Columns.Count;
}
