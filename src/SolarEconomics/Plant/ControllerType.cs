namespace SolarEconomics;

/// <summary>A type of charge controller that searches the best point (MPPT), as its data sheet has it.</summary>
/// <remarks>What the sheet does not say stays <see langword="null"/>, and checks that need it cannot tell. Immutable.</remarks>
/// <param name="Name">Name of the type.</param>
public sealed record ControllerType(string Name)
{
    /// <summary>Highest input voltage: above it the controller is destroyed. Unit: V.</summary>
    public double? HighestInputV { get; init; }

    /// <summary>Highest charging current; more is left unused. Unit: A.</summary>
    public double? HighestChargeA { get; init; }

    /// <summary>Highest short-circuit current that may be connected. Unit: A.</summary>
    public double? HighestShortCircuitA { get; init; }

    /// <summary>Voltage that the input must stand above the battery. Unit: V. Default: 5, common practice, no source.</summary>
    public double HeadroomV { get; init; } = 5;

    /// <summary>Inputs that each find a best point of their own. Range: 1 to 50. Default: 1, or as many as <see cref="EachInput"/> has.</summary>
    public int Inputs { get => EachInput.Count > 0 ? EachInput.Count : field; init => field = (int)Require.Within(value, 1, 50, "inputs", nameof(Inputs)); } = 1;

    /// <summary>The limits of each input, where they differ. Default: none, all inputs are alike.</summary>
    public IReadOnlyList<InputLimits> EachInput { get; init; } = [];

    /// <summary>The limits of one input at a battery voltage: its own, and the type's where it has none.</summary>
    /// <param name="input">Input, counted from 1.</param>
    /// <param name="batteryV">Voltage of the battery now: the input must stand <see cref="HeadroomV"/> above it. Above 0.</param>
    public InputLimits LimitsOf(int input, double batteryV) => InputLimits.Of(EachInput, Inputs, input, new InputLimits
    {
        TrackingFromV = Require.Within(batteryV, 1, 1500, "V of the battery") + HeadroomV,
        HighestShortCircuitA = HighestShortCircuitA,
    });

    /// <summary>Efficiency from input to battery terminals. Range: 0.5 to 1. Default: 0.98.</summary>
    public double Efficiency { get; init => field = Require.Within(value, 0.5, 1, "a fraction; 98 % is written 0.98", nameof(Efficiency)); } = 0.98;

    /// <summary>Most power that goes into the battery at a battery voltage; <see langword="null"/> where the current limit is unknown. Unit: W.</summary>
    /// <param name="batteryV">Voltage of the battery now. Above 0.</param>
    /// <remarks>Equation: P = I · U. An empty battery has less voltage, so less power passes.</remarks>
    public double? LimitW(double batteryV) => HighestChargeA * Require.Within(batteryV, 1, 1500, "V of the battery");
}
