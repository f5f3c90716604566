using System.Globalization;

namespace SolarEconomics;

/// <summary>Generation + import + battery discharge against use + export + battery charge, each over all its channels.</summary>
/// <param name="GenerationLowKwh">Generation at the board, by the lowest efficiency of each device to AC. Unit: kWh.</param>
/// <param name="GenerationHighKwh">The same by the highest efficiency. Unit: kWh.</param>
/// <param name="ImportKwh">From the grid. Unit: kWh.</param>
/// <param name="ExportKwh">To the grid. Unit: kWh.</param>
/// <param name="ChargeKwh">Into the battery, at its own measurement point. Unit: kWh.</param>
/// <param name="DischargeKwh">Out of the battery, at its own measurement point. Unit: kWh.</param>
/// <param name="UseKwh">Use on site; <see langword="null"/> where it is not metered, as the balance then defines it. Unit: kWh.</param>
/// <param name="Missing">Missing intervals of all channels: each may hide energy from one side only.</param>
public sealed record EnergyBalance(double GenerationLowKwh, double GenerationHighKwh, double ImportKwh, double ExportKwh, double ChargeKwh, double DischargeKwh, double? UseKwh, int Missing) : IFinding
{
    /// <summary>What the balance leaves for use and losses, by the lowest generation. Unit: kWh.</summary>
    public double LeftLowKwh => GenerationLowKwh + Others;

    /// <summary>What the balance leaves for use and losses, by the highest generation. Unit: kWh.</summary>
    public double LeftHighKwh => GenerationHighKwh + Others;

    /// <summary>Low and high of what is left beyond metered use: losses and faults; <see langword="null"/> where use is not metered.</summary>
    /// <remarks>A balance has a residual only where every term is metered.</remarks>
    public (double LowKwh, double HighKwh)? Residual => UseKwh is { } use ? (LeftLowKwh - use, LeftHighKwh - use) : null;

    private double Others => ImportKwh + DischargeKwh - ExportKwh - ChargeKwh;

    /// <summary>Adds up the interval channels of a site.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="plant">Devices, for the efficiency from a channel's measurement point to AC. Default: none known; channels are then taken as AC.</param>
    public static EnergyBalance Of(Readings readings, Plant? plant = null)
    {
        ArgumentNullException.ThrowIfNull(readings);
        plant ??= Plant.Unknown;
        var generation = readings.Of(FlowKind.Generation).Where(c => c.IsEnergy).Select(c => (c.Total.Kwh, Device: c.Device is { } name ? plant.Find(name) : null)).ToList();
        var used = readings.Of(FlowKind.Use);
        return new EnergyBalance(
            generation.Sum(g => g.Kwh * (g.Device?.ToAcLow ?? 1)), generation.Sum(g => g.Kwh * (g.Device?.ToAcHigh ?? 1)),
            Sum(readings, FlowKind.Import), Sum(readings, FlowKind.Export), Sum(readings, FlowKind.BatteryCharge), Sum(readings, FlowKind.BatteryDischarge),
            used.Count == 0 ? null : Sum(readings, FlowKind.Use), readings.Channels.Sum(c => ChannelQuality.Of(c).Missing));
    }

    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var figure = Residual is { } r ? $"{Range(r.LowKwh, r.HighKwh, culture)} kWh unexplained" : $"{Range(LeftLowKwh, LeftHighKwh, culture)} kWh used or lost";
        return new Finding(figure, UseKwh is null
            ? "Use is not metered, so the balance defines it, losses included."
            : "Every term is metered; what remains is losses and the errors of the meters.")
        {
            Notes = ["Balance: generation + import + discharge − export − charge, at the board.", $"{Missing.ToString("#,0", culture)} missing intervals may hide energy from one side only."],
            Tables =
            [
                new FindingTable("Energy balance (kWh)", ["term", "kWh"],
                [
                    ["generation", Range(GenerationLowKwh, GenerationHighKwh, culture)], ["import", Text(ImportKwh, culture)], ["battery discharge", Text(DischargeKwh, culture)],
                    ["export", Text(-ExportKwh, culture)], ["battery charge", Text(-ChargeKwh, culture)], ["use", UseKwh is { } use ? Text(-use, culture) : "not metered"],
                ]),
            ],
        };
    }

    private static double Sum(Readings readings, FlowKind flow) => readings.Of(flow).Where(c => c.IsEnergy).Sum(c => c.Total.Kwh);

    private static string Text(double kwh, CultureInfo culture) => kwh.ToString("#,0.0", culture);

    private static string Range(double low, double high, CultureInfo culture) => low == high ? Text(low, culture) : $"{Text(low, culture)} to {Text(high, culture)}";
}
