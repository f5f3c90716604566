namespace SolarEconomics;

/// <summary>The converter between the board and the battery's DC bus: a battery inverter, a hybrid inverter, an inverter with a charger.</summary>
/// <remarks>It works one way at a time. <see cref="Ideal"/> is right where the battery's figures are already counted at the board.</remarks>
public sealed record Converter
{
    /// <summary>No loss, no limit.</summary>
    public static Converter Ideal { get; } = new();

    /// <summary>Efficiency from DC to the board. Range: above 0 to 1. Default: 1.</summary>
    public double ToAc { get; init => field = Require.Efficiency(value); } = 1;

    /// <summary>Efficiency from the board to DC. Range: above 0 to 1. Default: 1.</summary>
    public double ToDc { get; init => field = Require.Efficiency(value); } = 1;

    /// <summary>The most it gives to the board. Unit: kW AC. Default: no limit.</summary>
    public double MostToAcKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>The most it takes from the board. Unit: kW AC. Default: no limit.</summary>
    public double MostToDcKw { get; init => field = Require.LimitKw(value); } = double.PositiveInfinity;

    /// <summary>Power it takes all year. Unit: W. Load of the plant, never self-use. Default: 0.</summary>
    public double StandbyW { get; init => field = Require.AtLeastZero(value, "W"); }
}
