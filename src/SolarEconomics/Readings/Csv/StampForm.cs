namespace SolarEconomics;

/// <summary>How a time is written in a table.</summary>
internal enum StampForm
{
    /// <summary>A date, with or without time of day.</summary>
    Text,

    /// <summary>Whole seconds since 1970 UTC.</summary>
    UnixSeconds,

    /// <summary>Whole milliseconds since 1970 UTC.</summary>
    UnixMilliseconds,

    /// <summary>Days and parts of a day since the first day of a workbook, where the user says so.</summary>
    DaysOfWorkbook,
}
