namespace SolarEconomics;

/// <summary>The limits of one input of an inverter or charge controller. What is not known stays <see langword="null"/>: the type's own figure stands in where it has one.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record InputLimits
{
    /// <summary>Lowest voltage at which the best point is found. Unit: V.</summary>
    public double? TrackingFromV { get; init => field = ModuleChecks.Voltage(value); }

    /// <summary>Highest voltage at which the best point is found. Unit: V.</summary>
    public double? TrackingToV { get; init => field = ModuleChecks.Voltage(value); }

    /// <summary>Highest operating current; more is left unused. Unit: A. Range: above 0 to 10,000.</summary>
    public double? HighestInputA { get; init => field = Positive(value, 1e4, "A", nameof(HighestInputA)); }

    /// <summary>Highest short-circuit current that may be connected. Unit: A. Range: above 0 to 10,000.</summary>
    public double? HighestShortCircuitA { get; init => field = Positive(value, 1e4, "A", nameof(HighestShortCircuitA)); }

    /// <summary>Highest DC power used of this input; more is left unused. Unit: W. Range: above 0 to 2,000,000.</summary>
    public double? HighestInputW { get; init => field = Positive(value, 2e6, "W", nameof(HighestInputW)); }

    /// <summary>Whether nothing limits what modules give here.</summary>
    internal bool IsOpen => TrackingFromV is null && TrackingToV is null && HighestInputA is null && HighestInputW is null;

    /// <summary>These limits, with another's where they are silent.</summary>
    internal InputLimits Or(InputLimits type) => new()
    {
        TrackingFromV = TrackingFromV ?? type.TrackingFromV,
        TrackingToV = TrackingToV ?? type.TrackingToV,
        HighestInputA = HighestInputA ?? type.HighestInputA,
        HighestShortCircuitA = HighestShortCircuitA ?? type.HighestShortCircuitA,
        HighestInputW = HighestInputW ?? type.HighestInputW,
    };

    /// <summary>The limits of one of a type's inputs, counted from 1.</summary>
    internal static InputLimits Of(IReadOnlyList<InputLimits> each, int inputs, int input, InputLimits type)
    {
        Require.Within(input, 1, inputs, "input, counted from 1");
        return each.Count == 0 ? type : each[input - 1].Or(type);
    }

    private static double? Positive(double? value, double most, string unit, string name) =>
        value is { } given ? Require.Within(given, 0.01, most, unit, name) : null;
}
