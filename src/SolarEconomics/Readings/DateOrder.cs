namespace SolarEconomics;

/// <summary>Order of the parts in a date of three numbers.</summary>
public enum DateOrder
{
    /// <summary>As the record shows by a number above 12, or a year in front; refused where it does not show.</summary>
    FromRecord,

    /// <summary>Year, month, day.</summary>
    YearMonthDay,

    /// <summary>Day, month, year.</summary>
    DayMonthYear,

    /// <summary>Month, day, year.</summary>
    MonthDayYear,
}
