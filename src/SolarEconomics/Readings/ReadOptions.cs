using NodaTime;

namespace SolarEconomics;

/// <summary>What the reader of a record cannot know from the record itself. Every setting has a default that guesses nothing.</summary>
public sealed record ReadOptions
{
    /// <summary>Clock of bare local stamps, and of local days. Default: none; a format with a clock of its own (NEM12, ESPI, stamps with an offset) then uses that.</summary>
    public DateTimeZone? Zone { get; init; }

    /// <summary>The devices, for measurement points and opening values. Default: nothing known.</summary>
    public Plant Plant { get; init; } = Plant.Unknown;

    /// <summary>Columns that the user reads otherwise than the guess. Default: none.</summary>
    public IReadOnlyList<ColumnMeaning> Columns { get; init; } = [];

    /// <summary>Order of day and month in dates such as 03/04/2024. Default: as the record shows; where it does not, the file is refused with both readings.</summary>
    public DateOrder DateOrder { get; init; } = DateOrder.FromRecord;

    /// <summary>From which day dates that are bare numbers count, as a workbook writes them without a date format (45413 for 1 May 2024).
    /// Default: not told; such a file is refused with both readings.</summary>
    public SerialDays SerialDates { get; init; } = SerialDays.NotToldYet;

    /// <summary>Whether a stamp names the start or the end of its interval. Default: start, unless a header says otherwise.</summary>
    public StampEdge StampEdge { get; init; } = StampEdge.FromRecord;

    /// <summary>Unit of columns whose header names none, for example <c>Wh</c>. Default: none; such a column is kept but not counted as energy.</summary>
    public string? UnitWhereNone { get; init; }

    /// <summary>What becomes of local stamps that stand twice or never on the wall clock. Default: by row order, and skipped ones reported.</summary>
    public StampPolicy StampPolicy { get; init; } = StampPolicy.ByRowOrder;

    /// <summary>Longest time between two samples of power over which they are joined by a straight line. Default: 15 minutes.</summary>
    public Duration LongestBridge { get; init; } = Duration.FromMinutes(15);

    /// <summary>Hears how much of the file is read, 0 to 1. Default: nobody.</summary>
    public IProgress<double>? Progress { get; init; }

    /// <summary>Stops a long read. Default: never.</summary>
    public CancellationToken Cancel { get; init; }

    /// <summary>Reads every row of a CSV the slow, general way, so that tests can compare it with the fast one.</summary>
    internal bool PlainRowsToo { get; init; }
}
