using NodaTime;

namespace AlderWeir;

/// <summary>A stretch of half hours in which some columns of the meter file stand empty: <c>[From, To)</c> in local time.</summary>
internal sealed record Hole(Columns Where, LocalDateTime From, LocalDateTime To)
{
    /// <summary>All holes of the record, and why.</summary>
    internal static readonly Hole[] All =
    [
        // The meter's data service was down for hours and for days.
        new(Columns.Import | Columns.Export, new(2022, 7, 11, 14, 0), new(2022, 7, 12, 9, 30)),
        new(Columns.Import | Columns.Export, new(2022, 11, 25, 3, 0), new(2022, 11, 28, 11, 0)),
        new(Columns.Export, new(2023, 4, 2, 6, 0), new(2023, 4, 2, 11, 0)),
        new(Columns.Import | Columns.Export, new(2024, 1, 21, 17, 30), new(2024, 1, 23, 8, 0)),
        new(Columns.Import, new(2024, 8, 15, 9, 0), new(2024, 8, 15, 15, 0)),
        // The logger of the south roof hung.
        new(Columns.South, new(2023, 10, 5, 0, 0), new(2023, 10, 9, 12, 0)),
        // A dead inverter reports nothing.
        new(Columns.West, Midnight(Timeline.WestFailed), Midnight(Timeline.WestReplaced)),
        // The ground array's logger kept nothing in its first five months.
        new(Columns.Ground, Midnight(Timeline.GroundOn), Midnight(Timeline.GroundLogged)),
        // The battery's software was renewed.
        new(Columns.Charge | Columns.Discharge | Columns.Full, new(2024, 10, 12, 0, 0), new(2024, 10, 13, 0, 0)),
    ];

    private static LocalDateTime Midnight(LocalDate day) => day.AtMidnight();
}

/// <summary>Columns of the meter file, in file order.</summary>
[Flags]
internal enum Columns
{
    Nothing = 0,
    Import = 1,
    Export = 2,
    South = 4,
    West = 8,
    Ground = 16,
    Charge = 32,
    Discharge = 64,
    Full = 128,
}
