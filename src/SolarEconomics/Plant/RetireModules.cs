using NodaTime;

namespace SolarEconomics;

/// <summary>An array leaves the plant: sold, stored or disposed of.</summary>
/// <param name="On">First day without it.</param>
/// <param name="Array">Name of the array.</param>
public sealed record RetireModules(LocalDate On, string Array) : PlantChange(On)
{
    /// <summary>What became of the modules, in the owner's words. Default: nothing said.</summary>
    public string? Fate { get; init; }

    /// <inheritdoc/>
    public override string Words => $"{Array} retired" + (Fate is null ? "" : $" ({Fate})");

    internal override Plant Apply(Plant plant, List<PlantMistake> mistakes) =>
        Standing(plant, Array, mistakes) is { } old ? plant.WithMoved(old, 0, On, null).WithPlacements([.. Ended(plant, old)]) : plant;
}
