namespace SolarEconomics;

/// <summary>Kinds of day that a rate applies to. A public holiday is a kind of its own, never its weekday as well.</summary>
[Flags]
public enum TariffDays
{
    /// <summary>No day.</summary>
    None = 0,

    /// <summary>Mondays that are no holiday.</summary>
    Monday = 1,

    /// <summary>Tuesdays that are no holiday.</summary>
    Tuesday = 2,

    /// <summary>Wednesdays that are no holiday.</summary>
    Wednesday = 4,

    /// <summary>Thursdays that are no holiday.</summary>
    Thursday = 8,

    /// <summary>Fridays that are no holiday.</summary>
    Friday = 16,

    /// <summary>Saturdays that are no holiday.</summary>
    Saturday = 32,

    /// <summary>Sundays that are no holiday.</summary>
    Sunday = 64,

    /// <summary>Public holidays, where the tariff names any.</summary>
    Holidays = 128,

    /// <summary>Monday to Friday, holidays left out.</summary>
    Weekdays = Monday | Tuesday | Wednesday | Thursday | Friday,

    /// <summary>Saturday and Sunday.</summary>
    Weekends = Saturday | Sunday,

    /// <summary>All days, holidays included.</summary>
    EveryDay = Weekdays | Weekends | Holidays,
}
