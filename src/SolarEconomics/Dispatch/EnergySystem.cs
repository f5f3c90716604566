namespace SolarEconomics;

/// <summary>What the flow model knows of a plant beside its arrays: battery, converter, grid connection, generator.</summary>
/// <remarks>
/// Two buses: the board (AC) with use, grid, generator and AC-coupled arrays; the battery's DC bus with the battery and DC-coupled arrays; one
/// <see cref="Converter"/> between them. AC-coupled, DC-coupled and mixed plants differ only in which arrays feed in where. Phase-neutral: all phases of the
/// board are one, so import in one phase and export in another inside an interval are not seen, and use met by generation is an upper bound.
/// Immutable, so safe to share between threads.
/// </remarks>
public sealed partial record EnergySystem
{
    /// <summary>The battery. Default: none.</summary>
    public Battery? Battery { get; init; }

    /// <summary>What stands between the board and the battery's DC bus. Default: <see cref="Converter.Ideal"/>.</summary>
    public Converter Converter { get; init; } = Converter.Ideal;

    /// <summary>The connection to the grid. Default: <see cref="GridConnection.Unlimited"/>.</summary>
    public GridConnection Grid { get; init; } = GridConnection.Unlimited;

    /// <summary>The generator. Default: none.</summary>
    public Generator? Generator { get; init; }

    /// <summary>Power that the other devices of the plant take all year, such as inverters at night. Unit: W. Default: 0.</summary>
    public double OtherStandbyW { get; init => field = Require.AtLeastZero(value, "W"); }

    /// <summary>Power that the whole plant takes all year. Unit: W.</summary>
    public double StandbyW => OtherStandbyW + Converter.StandbyW + (Battery?.StandbyW ?? 0);

    /// <summary>Works out where each kWh goes, interval after interval.</summary>
    /// <param name="conditions">The wanted use, what the arrays could make, and all that changes with time.</param>
    /// <param name="control">Who decides; <see cref="Control.SelfConsumption"/> where there is nothing to decide.</param>
    /// <param name="progress">Receives the share done, 0 to 1, some hundred times. Default: nobody.</param>
    /// <param name="cancellation">Ends the work within a few thousand intervals.</param>
    /// <exception cref="ImpossibleOrderException">The control ordered what cannot be done in that interval.</exception>
    /// <exception cref="ArgumentException">A series has a gap, a wrong length or a wrong value; the message names it with its local time.</exception>
    public EnergyFlows Run(Conditions conditions, Control control, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(control);
        using var work = WorkProgress.Begin(progress);
        return new DispatchRun(this, conditions).Run(control, work, cancellation);
    }
}
