namespace SolarEconomics;

/// <summary>The channels behind the meter that a tariff needs which buys all generation and sells all use.</summary>
internal sealed record PlantChannels(IReadOnlyList<Channel> Generation, IReadOnlyList<Channel> Use, IReadOnlyList<Channel> Charge, IReadOnlyList<Channel> Discharge)
{
    internal static PlantChannels None { get; } = new([], [], [], []);

    internal static PlantChannels Of(Readings readings) => new(BillColumn.Channels(readings, FlowKind.Generation), BillColumn.Channels(readings, FlowKind.Use),
        BillColumn.Channels(readings, FlowKind.BatteryCharge), BillColumn.Channels(readings, FlowKind.BatteryDischarge));

    internal bool IsThere => Generation.Count > 0;

    internal IReadOnlyList<IReadOnlyList<Channel>> Sides => IsThere ? [Generation, Use, Charge, Discharge] : [];

    internal IEnumerable<Channel> All => Sides.SelectMany(side => side);

    internal IReadOnlyList<string> Notes => !IsThere ? [] : Use.Count > 0 ? ["All use is billed and all generation paid, as metered behind the meter of the grid."]
        : ["All use is billed and all generation paid; use is import, generation and what the battery gave, less export and what it took."];

    /// <summary>Adds use and generation to what the meter of the grid counts.</summary>
    /// <param name="energy">Import and export.</param>
    /// <param name="kwh">The columns of <see cref="Sides"/>.</param>
    /// <remarks>Equation: use = import + generation + discharge − export − charge, at least 0, where no channel counts it.</remarks>
    internal MeteredEnergy Add(MeteredEnergy energy, IReadOnlyList<double[]> kwh)
    {
        var (generation, use, charge, discharge) = (kwh[0], kwh[1], kwh[2], kwh[3]);
        if (Use.Count == 0)
        {
            for (var i = 0; i < use.Length; i++)
            {
                var apart = energy.ControlledLoadKwh.Length > 0 ? energy.ControlledLoadKwh[i] : 0;
                use[i] = Math.Max(0, energy.ImportKwh[i] + apart + generation[i] + discharge[i] - energy.ExportKwh[i] - charge[i]);
            }
        }
        return energy with { UseKwh = use, GenerationKwh = generation };
    }
}
