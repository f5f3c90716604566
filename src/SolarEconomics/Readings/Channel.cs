using NodaTime;

namespace SolarEconomics;

/// <summary>One channel of interval energy: one meter or device, one flow. Intervals are half-open and may be irregular.</summary>
/// <remarks>Columns are parallel arrays in time order. Unit of energy: kWh. Immutable once read, so safe to share between threads.</remarks>
public sealed partial class Channel
{
    private readonly TimeAxis _times;
    private readonly double[] _kwh;
    private readonly Quality[] _quality;

    /// <summary>A channel from parallel columns. It keeps those of energy and quality: do not change them afterwards.</summary>
    /// <param name="name">Name as the record gives it.</param>
    /// <param name="flow">Which way the energy goes.</param>
    /// <param name="starts">Interval starts in ascending order.</param>
    /// <param name="ends">Interval ends, excluded.</param>
    /// <param name="kwh">Energy per interval; 0 where missing.</param>
    /// <param name="quality">What is known of each value.</param>
    /// <exception cref="ArgumentException">The columns differ in length.</exception>
    public Channel(string name, FlowKind flow, Instant[] starts, Instant[] ends, double[] kwh, Quality[] quality)
        : this(name, flow, starts.Length == ends.Length ? TimeAxis.OfInstants(starts, ends) : TimeAxis.Empty, kwh, quality)
    {
        if (starts.Length != ends.Length || starts.Length != kwh.Length || starts.Length != quality.Length)
            throw new ArgumentException("Expected starts, ends, kwh and quality of one length.", nameof(kwh));
    }

    /// <summary>A channel from the front of columns that have room to spare, so that a long record is not copied.</summary>
    internal Channel(string name, FlowKind flow, TimeAxis times, double[] kwh, Quality[] quality)
    {
        ArgumentNullException.ThrowIfNull(name);
        Name = name;
        Flow = flow;
        _times = times;
        _kwh = kwh;
        _quality = quality;
    }

    /// <summary>Name as the record gives it.</summary>
    public string Name { get; }

    /// <summary>Which way the energy goes.</summary>
    public FlowKind Flow { get; }

    /// <summary>Unit in which the record stated the values, before they became kWh. Default: <c>kWh</c>.</summary>
    public string Unit { get; init; } = "kWh";

    /// <summary>Identifier of the meter, where the record has one.</summary>
    public string? Meter { get; init; }

    /// <summary>The clock that the meter itself keeps, where its format fixes one (NEM12: UTC+10 all year); its days start and end by it.</summary>
    public DateTimeZone? Clock { get; init; }

    /// <summary>Name of the device in the plant's description, where the channel belongs to one.</summary>
    public string? Device { get; init; }

    /// <summary>Where in the plant the channel measures.</summary>
    public MeasurementPoint Point { get; init; }

    /// <summary>File that the channel came from.</summary>
    public string? File { get; init; }

    /// <summary>Readings at times that already had one: put aside, and listed among the problems. Default: 0.</summary>
    public int ExtraReadings { get; init; }

    /// <summary>What each interval cost as the record itself says, without any tariff of ours; empty where it says nothing. Unit: <see cref="CostCurrency"/>.</summary>
    public IReadOnlyList<double> Costs { get; init; } = [];

    /// <summary>Currency of <see cref="Costs"/>; <see langword="null"/> where the record names none.</summary>
    public Currency? CostCurrency { get; init; }

    /// <summary>How often the counter behind the channel went back: reset, or its register ran over. Default: 0.</summary>
    public int Resets { get; init; }

    /// <summary>How many states of a counter stand behind the intervals; <see langword="null"/> where the record states energy itself.</summary>
    public int? CounterStates { get; init; }

    /// <summary>What the counter behind it showed first and last; <see langword="null"/> where there is none that goes on from record to record.</summary>
    internal CounterEnds? CounterEnds { get; init; }

    /// <summary>Whether the values are active energy in a known unit. Where not, they are kept as they stand and never added to anything.</summary>
    public bool IsEnergy => EnergyUnit.Find(Unit) is { IsActiveEnergy: true };

    /// <summary>Number of intervals, missing ones included.</summary>
    public int Count => _times.Count;

    /// <summary>Interval starts, ascending.</summary>
    public Instants Starts => new(_times, ends: false);

    /// <summary>Interval ends, excluded.</summary>
    public Instants Ends => new(_times, ends: true);

    /// <summary>The starts and ends as they are kept.</summary>
    internal TimeAxis Times => _times;

    /// <summary>Energy per interval in kWh; 0 where missing.</summary>
    public ReadOnlySpan<double> Kwh => _kwh.AsSpan(0, Count);

    /// <summary>What is known of each value.</summary>
    public ReadOnlySpan<Quality> Quality => _quality.AsSpan(0, Count);

    /// <summary>Start of the first interval; <see langword="null"/> where there is none.</summary>
    public Instant? Start => Count == 0 ? null : _times.Start(0);

    /// <summary>End of the last interval, excluded; <see langword="null"/> where there is none.</summary>
    public Instant? End => Count == 0 ? null : _times.End(Count - 1);

    /// <summary>Energy of all intervals that are not missing.</summary>
    public Energy Total
    {
        get
        {
            // What is missing is 0, unless the channel came from a caller who left a number there.
            var counted = Quality.ContainsAnyExcept(SolarEconomics.Quality.Good) ? CompensatedSum.OfCounted(Kwh, Quality) : CompensatedSum.Of(Kwh);
            return new Energy(counted);
        }
    }

    /// <summary>The one length that every interval has; <see langword="null"/> where they differ or there is none.</summary>
    public Duration? Step => _times.StepTicks is { } ticks ? Duration.FromTicks(ticks) : null;
}
