using NodaTime;

namespace SolarEconomics;

/// <summary>Flows of a stretch of time added up, and what they say: self-consumption, self-sufficiency, cycles, unserved energy, fuel.</summary>
/// <remarks>Every sum closes as its intervals do. Unit of energies: kWh.</remarks>
public sealed partial class FlowTotals
{
    private readonly double[] _kwh;

    internal FlowTotals(LocalDateTime from, double hours, double[] kwh) => (From, Hours, _kwh) = (from, hours, kwh);

    /// <summary>Local time at the start.</summary>
    public LocalDateTime From { get; }

    /// <summary>Length. Unit: h.</summary>
    public double Hours { get; }

    /// <summary>One flow.</summary>
    /// <param name="path">From where to where.</param>
    public double this[FlowPath path] => _kwh[(int)path];

    /// <summary>What the arrays could have made, behind their own devices.</summary>
    public double PotentialKwh { get; internal init; }

    /// <summary>What the arrays made: <see cref="PotentialKwh"/> less what was curtailed.</summary>
    public double GenerationKwh => PotentialKwh - this[FlowPath.ArrayCurtailed];

    /// <summary>Share of what could have been made that nothing took; 0 where nothing could be made.</summary>
    public double CurtailedShare => PotentialKwh > 0 ? this[FlowPath.ArrayCurtailed] / PotentialKwh : 0;

    /// <summary>From the grid.</summary>
    public double ImportKwh => this[FlowPath.GridToUse] + this[FlowPath.GridToStandby] + this[FlowPath.GridToBattery];

    /// <summary>To the grid.</summary>
    public double ExportKwh => this[FlowPath.ArrayToExport] + this[FlowPath.BatteryToExport];

    /// <summary>Use that was wanted.</summary>
    public double WantedKwh { get; internal init; }

    /// <summary>Use that was served.</summary>
    public double UseKwh => WantedKwh - UnservedKwh;

    /// <summary>Use that was wanted and not served.</summary>
    public double UnservedKwh => this[FlowPath.Unserved];

    /// <summary>Hours in which any use was not served. Unit: h.</summary>
    public double UnservedHours { get; internal init; }

    /// <summary>What the plant itself took. Never self-use.</summary>
    public double StandbyKwh =>
        this[FlowPath.ArrayToStandby] + this[FlowPath.GridToStandby] + this[FlowPath.BatteryToStandby] + this[FlowPath.GeneratorToStandby];

    /// <summary>Lost in converter and battery.</summary>
    public double LostKwh =>
        this[FlowPath.ConverterLost] + this[FlowPath.ChargeLost] + this[FlowPath.DischargeLost] + this[FlowPath.SelfDischargeLost]
        + this[FlowPath.EqualisingLost];

    /// <summary>Change of what is stored, from the start to the end of the stretch.</summary>
    public double StoredChangeKwh { get; internal init; }

    /// <summary>The part of <see cref="FlowPath.BatteryToUse"/> that the arrays charged; discharge takes every source in proportion.</summary>
    public double ArrayByBatteryToUseKwh { get; internal init; }

    /// <summary>Self-consumption: used on site, directly or through the battery, of what the arrays made; 0 where they made nothing. Off-grid it says nothing: see
    /// <see cref="UsedShareOfPotential"/>.</summary>
    /// <remarks>Equation: (array → use + array-charged battery → use) / generation. Standby is not use. Source: storage-3.</remarks>
    public double SelfConsumption => GenerationKwh > 0 ? SolarToUseKwh / GenerationKwh : 0;

    /// <summary>Self-sufficiency, off-grid the solar fraction: share of the wanted use that the arrays served, directly or through the battery.</summary>
    /// <remarks>Equation: (array → use + array-charged battery → use) / wanted use. Source: storage-3.</remarks>
    public double SelfSufficiency => WantedKwh > 0 ? SolarToUseKwh / WantedKwh : 0;

    /// <summary>Share of what the arrays could have made that use took, directly or through the battery.</summary>
    public double UsedShareOfPotential => PotentialKwh > 0 ? SolarToUseKwh / PotentialKwh : 0;

    /// <summary>Full cycles: what came out of the cells over what they hold; 0 without a battery.</summary>
    public double Cycles { get; internal init; }

    /// <summary>What the battery gave at its terminals.</summary>
    public double ThroughputKwh { get; internal init; }

    /// <summary>Hours that ended within a thousandth of full. Unit: h.</summary>
    public double HoursFull { get; internal init; }

    /// <summary>Hours that ended within a thousandth of empty, or of the reserve. Unit: h.</summary>
    public double HoursEmpty { get; internal init; }

    /// <summary>Output of the generator.</summary>
    public double GeneratorKwh => this[FlowPath.GeneratorToUse] + this[FlowPath.GeneratorToStandby] + this[FlowPath.GeneratorToBattery];

    /// <summary>Hours in which the generator ran. Unit: h.</summary>
    public double GeneratorHours { get; internal init; }

    /// <summary>How often it started.</summary>
    public int GeneratorStarts { get; internal init; }

    /// <summary>Fuel it burned. Unit: L.</summary>
    public double FuelLitres { get; internal init; }

    /// <summary>Fuel and upkeep of the generator. Unit: the currency of its prices.</summary>
    public double GeneratorCost { get; internal init; }

    private double SolarToUseKwh => this[FlowPath.ArrayToUse] + ArrayByBatteryToUseKwh;
}
