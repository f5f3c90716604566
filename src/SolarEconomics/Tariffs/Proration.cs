namespace SolarEconomics;

/// <summary>How a charge for a month, year or bill counts for part of it.</summary>
public enum Proration
{
    /// <summary>By days of the calendar month, year or billing period.</summary>
    ByDays,

    /// <summary>A month by thirtieths and a year by 360ths, at most whole: a thirty-first day is free.</summary>
    ByThirtieths,

    /// <summary>Not at all: every month, year or bill that is begun counts whole.</summary>
    Whole,
}
