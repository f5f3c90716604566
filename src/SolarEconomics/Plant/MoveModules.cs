using NodaTime;

namespace SolarEconomics;

/// <summary>Modules go from one place of the plant to another: some strings of an array, or all of them.</summary>
/// <param name="On">First day in the new place.</param>
/// <param name="Array">Name of the array that they leave.</param>
/// <param name="Name">Name of the array that they become.</param>
/// <param name="Device">Name of the device behind the new place.</param>
/// <param name="Face">Where they lie from then on.</param>
/// <remarks>They keep their age and their test. The strings that stay, stay under the old name.</remarks>
public sealed record MoveModules(LocalDate On, string Array, string Name, string Device, Face Face) : PlantChange(On)
{
    /// <summary>Strings taken from the old array. Default: <see langword="null"/>, all.</summary>
    public int? Strings { get; init; }

    /// <summary>Modules in series in the new place. Default: <see langword="null"/>, as before. What does not fill a string is left over.</summary>
    public int? NewInSeries { get; init; }

    /// <summary>Input of the new device, counted from 1. Default: 1.</summary>
    public int Input { get; init; } = 1;

    /// <inheritdoc/>
    public override string Words => (Strings is { } some ? FormattableString.Invariant($"{some} {(some == 1 ? "string" : "strings")} of {Array}") : Array) + $" moved to {Face.Name} behind {Device} as {Name}";

    internal override Plant Apply(Plant plant, List<PlantMistake> mistakes)
    {
        if (Standing(plant, Array, mistakes) is not { } old) return plant;
        var taken = Strings ?? old.Array.Strings;
        if (taken < 1 || taken > old.Array.Strings)
        {
            mistakes.Add(new PlantMistake("/strings", FormattableString.Invariant($"{taken} strings of {Array}"),
                FormattableString.Invariant($"1 to the {old.Array.Strings} that stand there")));
            return plant;
        }
        var modules = taken * old.Array.InSeries;
        var inSeries = NewInSeries ?? old.Array.InSeries;
        if (inSeries < 1 || inSeries > modules)
        {
            mistakes.Add(new PlantMistake("/newInSeries", FormattableString.Invariant($"{inSeries} in series"),
                FormattableString.Invariant($"1 to the {modules} modules that are moved")));
            return plant;
        }
        var staying = old.Array.Strings - taken;
        var moved = old with
        {
            Array = old.Array with { Name = Name, InSeries = inSeries, Strings = modules / inSeries, Face = Face, Cable = null },
            Device = Device,
            Input = Input,
            From = On,
            MadeOn = old.MadeOn ?? old.From,
            TestedOn = old.TestedShare is null ? null : old.TestedOn ?? old.From,
            CameFrom = Array,
        };
        IEnumerable<Placement> rest = staying > 0
            ? [old with { Array = old.Array with { Strings = staying }, From = On, MadeOn = old.MadeOn ?? old.From, TestedOn = moved.TestedOn }]
            : [];
        return plant.WithMoved(old, staying, On, moved.Array).WithPlacements([.. Ended(plant, old), .. rest, moved]);
    }
}
