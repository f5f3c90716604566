using NodaTime;

namespace SolarEconomics;

/// <summary>What one file held.</summary>
/// <param name="File">Path as the user gave it.</param>
/// <param name="Format">Name of the format.</param>
/// <param name="Clock">The clock by which its local days are counted.</param>
public sealed record RecordContent(string File, string Format, DateTimeZone Clock)
{
    /// <summary>Interval channels, one per meter or device and flow.</summary>
    public IReadOnlyList<Channel> Channels { get; init; } = [];

    /// <summary>Lifetime counters, one per device.</summary>
    public IReadOnlyList<Counter> Counters { get; init; } = [];

    /// <summary>What was found on the way, in the order of discovery.</summary>
    public IReadOnlyList<Problem> Problems { get; init; } = [];

    /// <summary>How each column of a table was understood, with the reason; empty for formats that say it themselves.</summary>
    public IReadOnlyList<ColumnMeaning> Columns { get; init; } = [];
}
