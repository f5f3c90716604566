using NodaTime;

namespace SolarEconomics;

/// <summary>Other modules take an array's place: same face, same device, same input.</summary>
/// <param name="On">First day with the new modules.</param>
/// <param name="Array">Name of the array that goes.</param>
/// <param name="Name">Name of the array that comes.</param>
/// <param name="Module">Type of the new modules.</param>
/// <param name="InSeries">New modules in series. Range: 1 to 100.</param>
/// <param name="Strings">New strings in parallel. Range: 1 to 1,000.</param>
/// <remarks>Modules that go on elsewhere are moved away first with <see cref="MoveModules"/>; then <see cref="AddModules"/> fills the face.</remarks>
public sealed record ReplaceModules(LocalDate On, string Array, string Name, ModuleType Module, int InSeries, int Strings) : PlantChange(On)
{
    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"{Array} replaced by {InSeries * Strings} × {Module.Name} as {Name}");

    internal override Plant Apply(Plant plant, List<PlantMistake> mistakes)
    {
        if (Standing(plant, Array, mistakes) is not { } old) return plant;
        var next = new Placement(new ModuleArray(Name, Module, InSeries, Strings, old.Array.Face) { Cable = old.Array.Cable }, old.Device) { Input = old.Input, From = On };
        return plant.WithMoved(old, 0, On, null).WithPlacements([.. Ended(plant, old), next]);
    }
}
