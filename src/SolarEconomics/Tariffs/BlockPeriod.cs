namespace SolarEconomics;

/// <summary>The time for which the sizes of blocks are stated.</summary>
public enum BlockPeriod
{
    /// <summary>A bill, whole; part of a billing period by its days.</summary>
    Bill,

    /// <summary>Each day: the blocks start anew every billing day.</summary>
    Day,

    /// <summary>A day, times the days of the bill: the blocks run through the bill.</summary>
    DaysOfBill,

    /// <summary>A calendar month; part of a month by its days. A bill longer than a month starts the blocks anew with each calendar month.</summary>
    Month,

    /// <summary>A calendar quarter; part of a quarter by its days. A bill longer than a quarter starts the blocks anew with each.</summary>
    Quarter,

    /// <summary>Thirty days; the bill takes as many thirtieths as it has days.</summary>
    ThirtyDays,

    /// <summary>A year; the bill takes its share by days.</summary>
    Year,

    /// <summary>The season of the tariff in which a day lies; the bill takes its share by days. Days of no season count as of a year.</summary>
    Season,
}
