namespace SolarEconomics;

/// <summary>New modules come to the plant.</summary>
/// <param name="Placement">What comes where; its <see cref="Placement.From"/> is the day of the change.</param>
public sealed record AddModules(Placement Placement)
    : PlantChange(Placement.From ?? throw Throw.ChangeWithoutDay(Placement.Array.Name))
{
    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"{Placement.Array.Count} × {Placement.Array.Module.Name} added as {Placement.Array.Name}");

    internal override Plant Apply(Plant plant, List<PlantMistake> mistakes) => plant.WithPlacements([.. plant.Placements, Placement]);
}
