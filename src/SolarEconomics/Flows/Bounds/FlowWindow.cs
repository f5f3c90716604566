namespace SolarEconomics;

/// <summary>What the records say of one stretch of time, be it five minutes or the whole life of a counter: each total as a range.</summary>
/// <remarks>All at one place, as a rule the board (AC); off-grid the battery's bus, with what the charger brings as import. What no record tells stays at its default, and is bounded by the rest. Curtailed energy is in no counter and so in none of these.</remarks>
public sealed record FlowWindow
{
    /// <summary>Made by the plant. Default: 0 or more.</summary>
    public EnergyRange Generation { get; init; } = EnergyRange.AtLeast(0);

    /// <summary>From the grid. Default: 0 or more.</summary>
    public EnergyRange Import { get; init; } = EnergyRange.AtLeast(0);

    /// <summary>To the grid. Default: 0 or more.</summary>
    public EnergyRange Export { get; init; } = EnergyRange.AtLeast(0);

    /// <summary>Import less export, where the meter nets them; below 0 where more was sent than taken. Default: anything.</summary>
    public EnergyRange NetImport { get; init; } = EnergyRange.Unbounded;

    /// <summary>Into the battery. Default: none.</summary>
    public EnergyRange Charge { get; init; }

    /// <summary>Out of the battery. Default: none.</summary>
    public EnergyRange Discharge { get; init; }

    /// <summary>Charge less discharge: lost in the battery or still in it; below 0 where it gave what it held before. Default: anything.</summary>
    public EnergyRange HeldByBattery { get; init; } = EnergyRange.Unbounded;

    /// <summary>Used on site, the plant's own standby included. Default: 0 or more.</summary>
    public EnergyRange Use { get; init; } = EnergyRange.AtLeast(0);

    /// <summary>The lowest and the highest of every flow between that the records allow.</summary>
    /// <exception cref="RecordException">No flows at all agree with the records; the message names those that contradict and by how much.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A range is not a number, or its low end lies above its high end or, but for <see cref="NetImport"/> and <see cref="HeldByBattery"/>, below 0.</exception>
    /// <remarks>
    /// Generation goes to use, battery or export; import to use or battery; discharge to use or export. Equation: the largest flow from a to b is the least,
    /// over all ways to part the sources and sinks in two with a on one side and b on the other, of what may cross back less what must cross with it;
    /// the lowest likewise. Every end is attained by flows that agree with all records of the window. Source: flow-1.
    /// </remarks>
    public FlowBounds Bounds()
    {
        var records = FlowNetwork.RecordsOf(this);
        if (FlowNetwork.Contradiction(records) is { ByKwh: > FlowNetwork.DustKwh } contradiction) throw Throw.RecordsContradict(this, contradiction);
        return FlowBounds.Of(FlowNetwork.WaysOf(records));
    }
}
