using System.Globalization;
using Deedle;

namespace SolarEconomics;

/// <summary>What each device of the plant lost in a run: every array's inverter or controller, the converter, the battery.</summary>
/// <remarks>Lost is what turned into heat on its way. What was curtailed was never made and is no loss of a device, and the devices' own standby is load of the plant.
/// Immutable, so safe to share between threads.</remarks>
public sealed class LossesByDevice : IFinding
{
    private readonly FlowTotals _totals;

    private LossesByDevice(IReadOnlyList<DeviceLoss> devices, double arraysKwh, FlowTotals totals) => (Devices, ArraysKwh, _totals) = (devices, arraysKwh, totals);

    /// <summary>The devices in the order of the energy's way: arrays' own, converter, battery.</summary>
    public IReadOnlyList<DeviceLoss> Devices { get; }

    /// <summary>What the arrays made, counted in front of their inverters and controllers, less what was curtailed. Unit: kWh.</summary>
    public double ArraysKwh { get; }

    /// <summary>What all devices lost. Unit: kWh.</summary>
    /// <remarks>Equation: Σ devices = arrays + import + generator − use served − standby − export − what the battery gained.</remarks>
    public double TotalKwh => Devices.Sum(d => d.Kwh);

    /// <summary>Share of what the arrays, the grid and the generator brought that was lost; 0 where they brought nothing.</summary>
    public double Share => BroughtKwh > 0 ? TotalKwh / BroughtKwh : 0;

    private double BroughtKwh => ArraysKwh + _totals.ImportKwh + _totals.GeneratorKwh;

    /// <summary>The devices as a Deedle frame, one row each, with columns <c>Device</c>, <c>How</c> and <c>Kwh</c>; its <c>SaveCsv</c> writes a file.</summary>
    public Frame<int, string> ToFrame() => Frame.FromRecords(Devices);

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var words = $"of the {Wording.Kwh(BroughtKwh, culture)} that {Sources()} brought turned into heat in devices: {Wording.Kwh(TotalKwh, culture)}.";
        if (Devices.MaxBy(d => d.Kwh) is { Kwh: > 0 } most) words += $" Most of it, {Wording.Kwh(most.Kwh, culture)}, was lost in the {most.Device} while {most.How}.";
        return new Finding(Wording.Percent(Share, culture), words)
        {
            Tables = [new FindingTable("Lost by device, kWh", ["device", "while", "kWh"],
                [.. Devices.Select(d => (IReadOnlyList<string>)[d.Device, d.How, d.Kwh.ToString("#,0.0", culture)])])],
            Notes =
            [
                $"The plant's own standby, {Wording.Kwh(_totals.StandbyKwh, culture)}, is its load and no loss; a generator's heat is counted in litres of fuel.",
                "An array whose series is already counted behind its device shows no loss of it. What was curtailed is taken from the arrays in proportion to what each brings to the board.",
            ],
        };
    }

    /// <summary>What brought energy, in words: <c>arrays and grid</c>.</summary>
    private string Sources()
    {
        string[] sources = [.. new[] { ("arrays", ArraysKwh), ("grid", _totals.ImportKwh), ("generator", _totals.GeneratorKwh) }.Where(s => s.Item2 > 0).Select(s => s.Item1)];
        return sources.Length < 2 ? sources.FirstOrDefault("arrays") : $"{string.Join(", ", sources[..^1])} and {sources[^1]}";
    }

    internal static LossesByDevice Of(EnergyFlows flows)
    {
        var taken = TakenShares.Of(flows);
        var (devices, arraysKwh) = (new List<DeviceLoss>(), 0.0);
        foreach (var device in FeedInDevice.Of(flows.Conditions.Arrays))
        {
            var (shares, lostKwh) = (taken.Of(device.Coupling), 0.0);
            for (var i = 0; i < shares.Length; i++)
            {
                var hours = flows.Time.Hours[i];
                var fedInKwh = device.BehindKwh(i, hours).Given * shares[i];
                var lost = device.LostKwh(fedInKwh, hours);
                lostKwh += lost;
                arraysKwh += fedInKwh + lost;
            }
            devices.Add(new DeviceLoss(device.Name, "feeding in", lostKwh));
        }
        var totals = flows.Totals;
        if (flows.System.Battery is { } battery)
        {
            devices.Add(new DeviceLoss(battery.Name, "charging", totals[FlowPath.ChargeLost]));
            devices.Add(new DeviceLoss(battery.Name, "discharging", totals[FlowPath.DischargeLost]));
            devices.Add(new DeviceLoss(battery.Name, "standing", totals[FlowPath.SelfDischargeLost]));
            if (battery.Equalising is not null) devices.Add(new DeviceLoss(battery.Name, "equalising", totals[FlowPath.EqualisingLost]));
        }
        devices.Add(new DeviceLoss("converter", "converting", totals[FlowPath.ConverterLost]));
        return new LossesByDevice(devices, arraysKwh, totals);
    }
}
