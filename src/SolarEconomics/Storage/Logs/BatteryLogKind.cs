namespace SolarEconomics;

/// <summary>What a row of a battery's log tells.</summary>
public enum BatteryLogKind
{
    /// <summary>Capacity found by discharging it from full. Unit: kWh.</summary>
    CapacityTest,

    /// <summary>Highest less lowest voltage of its cells. Unit: V.</summary>
    CellSpread,

    /// <summary>Water filled in. Unit: litres.</summary>
    Water,

    /// <summary>Full cycles that its monitor has counted since it was new. Unit: cycles.</summary>
    Cycles,

    /// <summary>Hours of equalising charge. Unit: h.</summary>
    Equalising,
}
