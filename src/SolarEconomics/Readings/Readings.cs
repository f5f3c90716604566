namespace SolarEconomics;

/// <summary>All readings of a site: interval channels and lifetime counters, with every problem found on the way.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed partial class Readings
{
    /// <summary>Readings from parts.</summary>
    /// <param name="channels">Interval channels, one per meter or device and flow.</param>
    /// <param name="counters">Lifetime counters, one per device.</param>
    /// <param name="problems">What was found on the way, in file order.</param>
    public Readings(IReadOnlyList<Channel> channels, IReadOnlyList<Counter> counters, IReadOnlyList<Problem> problems)
    {
        Channels = channels;
        Counters = counters;
        Problems = problems;
    }

    /// <summary>Interval channels, one per meter or device and flow; never added up silently.</summary>
    public IReadOnlyList<Channel> Channels { get; }

    /// <summary>Lifetime counters, one per device.</summary>
    public IReadOnlyList<Counter> Counters { get; }

    /// <summary>What was found on the way, in file order.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>The interval channels of one flow.</summary>
    /// <param name="flow">The flow wanted.</param>
    public IReadOnlyList<Channel> Of(FlowKind flow) => [.. Channels.Where(c => c.Flow == flow)];
}
