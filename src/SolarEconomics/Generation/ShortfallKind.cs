namespace SolarEconomics;

/// <summary>What a row of short days looks like.</summary>
public enum ShortfallKind
{
    /// <summary>Short, and like none of the others.</summary>
    Unexplained,

    /// <summary>Nothing or next to nothing: inverter off, breaker open.</summary>
    Outage,

    /// <summary>A steady part missing that strings out of so many explain.</summary>
    PartialString,

    /// <summary>More missing from day to day, then all back at once: dirt and rain or a cleaning.</summary>
    Dirt,

    /// <summary>Short on hot days only: a device that holds back when its cooling does not keep up.</summary>
    HeatDerating,

    /// <summary>The inverter stood at its AC limit: more modules than it can pass on the brightest hours, by choice. No failure.</summary>
    Clipping,

    /// <summary>The record says that the battery was full or the export limited: held back, not failed.</summary>
    Curtailment,
}
