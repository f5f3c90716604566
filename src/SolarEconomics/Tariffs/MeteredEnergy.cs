namespace SolarEconomics;

/// <summary>All that a meter counts for a bill, one value per interval of a plan's grid. A column that is left out counts as none.</summary>
/// <param name="ImportKwh">Energy taken from the grid, the controlled load left out. Unit: kWh.</param>
/// <param name="ExportKwh">Energy sent to the grid, never netted with import. Unit: kWh.</param>
/// <remarks>Keeps the arrays it is given: do not change them while a bill is worked out.</remarks>
public sealed record MeteredEnergy(double[] ImportKwh, double[] ExportKwh)
{
    /// <summary>Energy of the controlled load's own circuit. Unit: kWh. Default: empty, none.</summary>
    public double[] ControlledLoadKwh { get; init; } = [];

    /// <summary>Energy held back on request or at the export limit. Unit: kWh. Default: empty, none.</summary>
    public double[] CurtailedKwh { get; init; } = [];

    /// <summary>All that the home uses, for tariffs that buy all and sell all. Unit: kWh. Default: empty, not known.</summary>
    public double[] UseKwh { get; init; } = [];

    /// <summary>All that the plant generates, for tariffs that buy all and sell all. Unit: kWh. Default: empty, not known.</summary>
    public double[] GenerationKwh { get; init; } = [];

    /// <summary>Reactive energy, for demand in kVA and the power factor. Unit: kvarh. Default: empty, which counts as a power factor of 1.</summary>
    public double[] ReactiveKvarh { get; init; } = [];
}
