namespace SolarEconomics;

/// <summary>Which array is on which input, and what limits it there.</summary>
public sealed partial record GenerationModel
{
    /// <summary>Input of each array, counted from 1. Default: none stated; then the arrays take the inputs in their order, and those for which none is left share the last.</summary>
    /// <remarks>Inputs of the controller where there is one, of the inverter otherwise. Arrays on one input work at one voltage.</remarks>
    public IReadOnlyList<int> InputOfArray { get; init; } = [];

    private int InputCount => Controller?.Inputs ?? Inverter.Inputs;

    /// <summary>Whether any input can hold power back: by a limit of its own, or because unlike strings share its voltage.</summary>
    internal bool ReckonsInputs
    {
        get
        {
            var inputs = InputOfEachArray();
            return Enumerable.Range(0, inputs.Length).GroupBy(i => inputs[i], i => Arrays[i])
                .Any(g => !LimitsOf(g.Key).IsOpen || g.Any(a => a.Module != g.First().Module || a.InSeries != g.First().InSeries || a.Face != g.First().Face));
        }
    }

    internal InputLimits LimitsOf(int input) => Controller is { } controller ? controller.LimitsOf(input, BatteryV) : Inverter.LimitsOf(input);

    internal int[] InputOfEachArray()
    {
        if (InputOfArray.Count == 0) return [.. Arrays.Select((_, i) => Math.Min(i + 1, InputCount))];
        if (InputOfArray.Count != Arrays.Count || InputOfArray.Any(i => i < 1 || i > InputCount))
            throw Throw.InputsOfArrays(InputOfArray, Arrays.Count, InputCount, Controller?.Name ?? Inverter.Name);
        return [.. InputOfArray];
    }
}
