namespace SolarEconomics;

/// <summary>A type of grid or battery inverter as its data sheet has it. What the sheet does not say stays <see langword="null"/>, and checks that need it cannot tell.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record InverterType
{
    /// <summary>A type by name and rating.</summary>
    /// <param name="name">Name of the type.</param>
    /// <param name="ratedAcW">Highest continuous AC power, in W. Range: above 0 to 1,000,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rating is outside its range.</exception>
    public InverterType(string name, double ratedAcW)
    {
        ArgumentNullException.ThrowIfNull(name);
        Name = name;
        RatedAcW = Require.Within(ratedAcW, 1, 1e6, "W; 5 kW is written 5000");
    }

    /// <summary>Name of the type.</summary>
    public string Name { get; }

    /// <summary>Highest continuous AC power. Unit: W.</summary>
    public double RatedAcW { get; }

    /// <summary>Efficiency by load. Default: <see cref="EfficiencyCurve.Usual"/>.</summary>
    public EfficiencyCurve Efficiency { get; init; } = EfficiencyCurve.Usual;

    /// <summary>Highest input voltage: above it the inverter is destroyed. Unit: V.</summary>
    public double? HighestInputV { get; init; }

    /// <summary>Lowest voltage at which it finds the best point. Unit: V.</summary>
    public double? TrackingFromV { get; init; }

    /// <summary>Highest voltage at which it finds the best point. Unit: V.</summary>
    public double? TrackingToV { get; init; }

    /// <summary>Highest operating current of one input; more is left unused. Unit: A.</summary>
    public double? HighestInputA { get; init; }

    /// <summary>Highest short-circuit current that may be connected to one input. Unit: A.</summary>
    public double? HighestShortCircuitA { get; init; }

    /// <summary>Highest DC power used; more is left unused. Unit: W.</summary>
    public double? HighestInputW { get; init; }

    /// <summary>Inputs that each find a best point of their own; the limits above hold for each of them, the power for all. Range: 1 to 50. Default: 1, or as many as <see cref="EachInput"/> has.</summary>
    public int Inputs { get => EachInput.Count > 0 ? EachInput.Count : field; init => field = (int)Require.Within(value, 1, 50, "inputs", nameof(Inputs)); } = 1;

    /// <summary>The limits of each input, where they differ. Default: none, all inputs are alike.</summary>
    public IReadOnlyList<InputLimits> EachInput { get; init; } = [];

    /// <summary>The limits of one input: its own, and the type's where it has none.</summary>
    /// <param name="input">Input, counted from 1.</param>
    public InputLimits LimitsOf(int input) => InputLimits.Of(EachInput, Inputs, input, new InputLimits
    {
        TrackingFromV = TrackingFromV,
        TrackingToV = TrackingToV,
        HighestInputA = HighestInputA,
        HighestShortCircuitA = HighestShortCircuitA,
    });

    /// <summary>Power taken while there is no sun. Unit: W. It is load of the plant, never self-use. Default: 0.</summary>
    public double NightW { get; init => field = Require.Within(value, 0, 1000, "W", nameof(NightW)); }
}
