namespace SolarEconomics;

/// <summary>A price per kWh and when it applies.</summary>
/// <param name="Name">Name on the bill, for example <c>evening peak</c>.</param>
/// <param name="PerKwh">Price before tax, in the tariff's currency per kWh; of the first block where there are blocks.</param>
/// <param name="Windows">When it applies; empty means all hours that no other rate of the part claims.</param>
public sealed record EnergyRate(string Name, decimal PerKwh, IReadOnlyList<RateWindow> Windows)
{
    /// <summary>Blocks by quantity; <see langword="null"/> where every kWh costs the same.</summary>
    public RateBlocks? Blocks { get; init; }

    /// <summary>A rate for all hours.</summary>
    /// <param name="name">Name on the bill.</param>
    /// <param name="perKwh">Price before tax, per kWh.</param>
    public static EnergyRate Flat(string name, decimal perKwh) => new(Require.Given(name), perKwh, []);

    /// <summary>A rate for all hours that falls or rises with quantity.</summary>
    /// <param name="name">Name on the bill.</param>
    /// <param name="blocks">The blocks.</param>
    public static EnergyRate InBlocks(string name, RateBlocks blocks)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(blocks);
        return new EnergyRate(name, blocks.Steps.Count > 0 ? blocks.Steps[0].PerKwh : 0, []) { Blocks = blocks };
    }

    /// <summary>Whether the rate takes the hours that no other rate claims.</summary>
    public bool IsOtherwise => Windows.Count == 0;

    internal EnergyRate Scaled(decimal factor) => this with
    {
        PerKwh = PerKwh * factor,
        Blocks = Blocks is null ? null : Blocks with { Steps = [.. Blocks.Steps.Select(b => b with { PerKwh = b.PerKwh * factor })] },
    };
}
