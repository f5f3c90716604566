namespace SolarEconomics;

/// <summary>Something that could be bought: what it costs now and what it is worth, with what it rules out and what it needs.</summary>
/// <param name="Name">Name, different from those of the other options.</param>
/// <param name="Cost">What has to be paid now. Range: 0 or more; what is received belongs to the worth.</param>
/// <param name="Worth">What doing it is worth over doing nothing, its cost taken off: its net present value. May be below 0 where other options need it.</param>
/// <remarks>The worth of an option counts the same whatever else is chosen. Where it does not (a battery beside more modules), give the combination as an
/// option of its own that excludes its parts.</remarks>
public sealed record BudgetOption(string Name, Money Cost, Money Worth)
{
    /// <summary>Names of options that cannot be chosen together with this one; one side is enough.</summary>
    public IReadOnlyList<string> Excludes { get; init; } = [];

    /// <summary>Names of options without which this one cannot be chosen.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];
}
