namespace SolarEconomics;

/// <summary>Where each kWh went, interval by interval, and how full the battery was. The result of the flow model.</summary>
/// <remarks>
/// Closes in every interval: generation + import + generator = use served + standby + export + curtailed + lost + what the battery gained; see
/// <see cref="ResidualKwh"/>. Immutable, so safe to share between threads.
/// </remarks>
public sealed partial class EnergyFlows
{
    private static readonly int s_paths = Enum.GetValues<FlowPath>().Length;
    private readonly double[][] _columns;
    private readonly double[] _storedKwh;
    private readonly double[] _wantedKwh;
    private readonly BusSupply _supply;

    internal EnergyFlows(EnergySystem system, Conditions conditions, string control, BusSupply supply, double[] wantedKwh,
        IReadOnlyList<DeferrableOutcome> deferrable, double[][] columns, double[] storedKwh)
    {
        (System, Conditions, ControlName, Deferrable) = (system, conditions, control, deferrable);
        (_supply, _wantedKwh, _columns, _storedKwh) = (supply, wantedKwh, columns, storedKwh);
    }

    /// <summary>The plant.</summary>
    public EnergySystem System { get; }

    /// <summary>What it met.</summary>
    public Conditions Conditions { get; }

    /// <summary>Name of the control that decided.</summary>
    public string ControlName { get; }

    /// <summary>The intervals.</summary>
    public Timeline Time => Conditions.Time;

    /// <summary>How the waiting loads fared.</summary>
    public IReadOnlyList<DeferrableOutcome> Deferrable { get; }

    /// <summary>Equalising charges that were due in the run, in their order; empty where the battery asks for none.</summary>
    public IReadOnlyList<EqualisingCharge> Equalising { get; internal init; } = [];

    /// <summary>Days since the last equalising charge as the run ends, for the run that follows.</summary>
    internal double DaysSinceEqualised { get; init; }

    /// <summary>One flow, one value per interval. Unit: kWh.</summary>
    /// <param name="path">From where to where.</param>
    public ReadOnlySpan<double> this[FlowPath path] => _columns[(int)path];

    /// <summary>Inside the cells, one value more than there are intervals: before the first, then at the end of each. Unit: kWh.</summary>
    public ReadOnlySpan<double> StoredKwh => _storedKwh;

    /// <summary>Wanted use, one value per interval; served or not. A waiting load counts where it ran, and where it was given up. Unit: kWh.</summary>
    public ReadOnlySpan<double> WantedKwh => _wantedKwh;

    /// <summary>What the arrays could have made in an interval, behind their own devices. Unit: kWh.</summary>
    /// <param name="interval">0 to the number of intervals less 1.</param>
    public double PotentialKwh(int interval) => _supply.PotentialKwh(interval);

    /// <summary>From the grid in an interval. Unit: kWh.</summary>
    /// <param name="interval">0 to the number of intervals less 1.</param>
    public double ImportKwh(int interval) =>
        Of(FlowPath.GridToUse, interval) + Of(FlowPath.GridToStandby, interval) + Of(FlowPath.GridToBattery, interval);

    /// <summary>To the grid in an interval. Unit: kWh.</summary>
    /// <param name="interval">0 to the number of intervals less 1.</param>
    public double ExportKwh(int interval) => Of(FlowPath.ArrayToExport, interval) + Of(FlowPath.BatteryToExport, interval);

    /// <summary>Output of the generator in an interval. Unit: kWh.</summary>
    /// <param name="interval">0 to the number of intervals less 1.</param>
    public double GeneratorKwh(int interval) =>
        Of(FlowPath.GeneratorToUse, interval) + Of(FlowPath.GeneratorToStandby, interval) + Of(FlowPath.GeneratorToBattery, interval);

    /// <summary>By how much an interval fails to close: 0 but for the last digits of floating point. Unit: kWh.</summary>
    /// <param name="interval">0 to the number of intervals less 1.</param>
    public double ResidualKwh(int interval)
    {
        var came = PotentialKwh(interval) + ImportKwh(interval) + GeneratorKwh(interval);
        var served = _wantedKwh[interval] - Of(FlowPath.Unserved, interval);
        var standby = Of(FlowPath.ArrayToStandby, interval) + Of(FlowPath.GridToStandby, interval)
            + Of(FlowPath.BatteryToStandby, interval) + Of(FlowPath.GeneratorToStandby, interval);
        var lost = Of(FlowPath.ConverterLost, interval) + Of(FlowPath.ChargeLost, interval)
            + Of(FlowPath.DischargeLost, interval) + Of(FlowPath.SelfDischargeLost, interval) + Of(FlowPath.EqualisingLost, interval);
        var gained = _storedKwh[interval + 1] - _storedKwh[interval];
        return came - served - standby - ExportKwh(interval) - Of(FlowPath.ArrayCurtailed, interval) - lost - gained;
    }

    /// <summary>What more the arrays could have exported in an interval, beside what the plant did export.</summary>
    internal double ExportRoomKwh(int interval)
    {
        if (!Conditions.GridIsOut.IsEmpty && Conditions.GridIsOut.Span[interval]) return 0;
        var limitKw = Conditions.MostExportKw.IsEmpty ? System.Grid.MostExportKw : Math.Min(System.Grid.MostExportKw, Conditions.MostExportKw.Span[interval]);
        return double.IsPositiveInfinity(limitKw) ? limitKw : Math.Max(0, (limitKw * Time.Hours[interval]) - ExportKwh(interval));
    }

    /// <summary>What the arrays' charging would have been at the board: DC arrays reach it through the converter. Unit: kWh.</summary>
    internal double ChargedByArraysAtBoardKwh(int interval)
    {
        var chargedKwh = Of(FlowPath.ArrayToBattery, interval);
        var ofDcKwh = Math.Min(chargedKwh, _supply.DcKwh[interval]);
        return chargedKwh - ofDcKwh + (ofDcKwh * System.Converter.ToAc);
    }

    /// <summary>Inside the cells once what is lost at rest is gone, before anything goes in or out in an interval. Unit: kWh.</summary>
    internal double RestedKwh(int interval) => _storedKwh[interval] - Of(FlowPath.SelfDischargeLost, interval);

    /// <summary>What was charged in an interval, at the battery's terminals, equalising with it. Unit: kWh.</summary>
    internal double ChargedKwh(int interval) =>
        Math.Max(0, _storedKwh[interval + 1] - RestedKwh(interval)) + Of(FlowPath.ChargeLost, interval) + Of(FlowPath.EqualisingLost, interval);

    internal static double[][] NewColumns(int count)
    {
        var columns = new double[s_paths][];
        for (var k = 0; k < columns.Length; k++) columns[k] = new double[count];
        return columns;
    }

    private double Of(FlowPath path, int interval) => _columns[(int)path][interval];
}
