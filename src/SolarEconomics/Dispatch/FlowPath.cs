namespace SolarEconomics;

/// <summary>From where to where energy goes in the flow model. Every kWh of an interval is on exactly one of them. Unit of all: kWh.</summary>
/// <remarks>
/// Measured at the board (AC) unless a member says otherwise. Generation of the arrays is named first to the plant's own standby and the home's use,
/// then to the battery, then to export: an attribution where several sources feed one board, as no meter can tell kWh apart.
/// </remarks>
public enum FlowPath
{
    /// <summary>Generation that the home's use takes as it is made.</summary>
    ArrayToUse,

    /// <summary>Generation that the plant's own standby takes; never self-use.</summary>
    ArrayToStandby,

    /// <summary>Generation that charges the battery, as it leaves the arrays' side: AC at the board, DC at the battery's bus.</summary>
    ArrayToBattery,

    /// <summary>Generation sent to the grid.</summary>
    ArrayToExport,

    /// <summary>What the arrays could have made and nothing took, at the arrays' side: full battery, export limit, inverter limit, outage.</summary>
    ArrayCurtailed,

    /// <summary>Import that the home's use takes.</summary>
    GridToUse,

    /// <summary>Import that the plant's own standby takes.</summary>
    GridToStandby,

    /// <summary>Import that charges the battery.</summary>
    GridToBattery,

    /// <summary>Discharge that the home's use takes.</summary>
    BatteryToUse,

    /// <summary>Discharge that the plant's own standby takes.</summary>
    BatteryToStandby,

    /// <summary>Discharge sent to the grid.</summary>
    BatteryToExport,

    /// <summary>Output of the generator that the home's use takes.</summary>
    GeneratorToUse,

    /// <summary>Output of the generator that the plant's own standby takes.</summary>
    GeneratorToStandby,

    /// <summary>Output of the generator that charges the battery.</summary>
    GeneratorToBattery,

    /// <summary>Wanted use that was not served.</summary>
    Unserved,

    /// <summary>Lost in the converter between the board and the battery's DC bus, both ways.</summary>
    ConverterLost,

    /// <summary>Lost inside the battery while charging, from its terminals to its cells.</summary>
    ChargeLost,

    /// <summary>Lost inside the battery while discharging, from its cells to its terminals.</summary>
    DischargeLost,

    /// <summary>Lost inside the battery as it stands.</summary>
    SelfDischargeLost,

    /// <summary>Charged beyond full to level the cells of a lead-acid bank: heat and gas. At the battery's terminals.</summary>
    EqualisingLost,
}
