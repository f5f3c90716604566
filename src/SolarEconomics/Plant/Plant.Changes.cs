using NodaTime;

namespace SolarEconomics;

/// <summary>The arrays of a plant through the years, and the operations on them.</summary>
public sealed partial record Plant
{
    /// <summary>The arrays in their places, past and planned ones too. Default: none, and the rated powers of <see cref="Devices"/> are all that is known.</summary>
    public IReadOnlyList<Placement> Placements { get; private init; } = [];

    /// <summary>The faces that the plant's file names, with or without modules; those of arrays stated in C# stand on the arrays.</summary>
    public IReadOnlyList<Face> Faces { get; init; } = [];

    /// <summary>Modules known one by one. Default: none.</summary>
    public IReadOnlyList<IndividualModule> Modules { get; init; } = [];

    /// <summary>What was done to the plant or befell it: cleaning, snow, trees cut. Default: nothing noted.</summary>
    public IReadOnlyList<LogEntry> Log { get; init; } = [];

    /// <summary>The changes made, in their order.</summary>
    public IReadOnlyList<PlantChange> Changes { get; private init; } = [];

    /// <summary>The same plant with further devices, behind which modules may then be placed.</summary>
    /// <param name="devices">Devices with names of their own.</param>
    /// <exception cref="ArgumentException">A name is taken, or a device contradicts itself; every mistake is listed.</exception>
    public Plant With(params IReadOnlyList<Device> devices)
    {
        ArgumentNullException.ThrowIfNull(devices);
        var plant = (this with { Devices = [.. Stated ?? Devices, .. devices] }).WithPlacements(Placements);
        var mistakes = PlantCheck.Mistakes(plant).ToList();
        return mistakes.Count == 0 ? plant : throw Throw.PlantMistakes(mistakes);
    }

    /// <summary>The same plant with arrays in their places. Rated powers of the devices follow from them.</summary>
    /// <param name="placements">Arrays with device, input and days.</param>
    /// <exception cref="ArgumentException">An array contradicts itself, its device or another array; every mistake is listed.</exception>
    public Plant With(params IReadOnlyList<Placement> placements)
    {
        ArgumentNullException.ThrowIfNull(placements);
        var plant = WithPlacements([.. Placements, .. placements]);
        var mistakes = ArrayCheck.Mistakes(plant).ToList();
        return mistakes.Count == 0 ? plant : throw Throw.PlantMistakes(mistakes);
    }

    /// <summary>The same plant after dated changes: modules added, moved, replaced, retired. The one before stays as it is.</summary>
    /// <param name="changes">The changes, earliest first.</param>
    /// <exception cref="ArgumentException">A change names an array that does not stand there, or leaves a plant that contradicts itself; every mistake is listed.</exception>
    public Plant After(params IReadOnlyList<PlantChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        var plant = this;
        var mistakes = new List<PlantMistake>();
        foreach (var change in changes) plant = change.Apply(plant, mistakes);
        mistakes.AddRange(ArrayCheck.Mistakes(plant));
        return mistakes.Count == 0 ? plant with { Changes = [.. Changes, .. changes] } : throw Throw.PlantMistakes(mistakes);
    }

    /// <summary>The arrays that stand on a day.</summary>
    /// <param name="day">Any local calendar day.</param>
    public IReadOnlyList<Placement> StandingOn(LocalDate day) => [.. Placements.Where(p => p.StandsOn(day))];

    /// <summary>Rated power of each face on a day, in the order in which the faces are first met. Unit: kWp.</summary>
    /// <param name="day">Any local calendar day.</param>
    public IReadOnlyList<(string Face, double Kwp)> KwpByFaceOn(LocalDate day) =>
        [.. StandingOn(day).GroupBy(p => p.Array.Face.Name, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(p => p.Array.RatedKwp)))];

    /// <summary>A plant after a change that was found to hold, with the change written down.</summary>
    internal Plant Recorded(Plant after, PlantChange change) => after with { Changes = [.. Changes, change] };

    /// <summary>The devices as their owner stated them, before arrays rated them; <see langword="null"/> while no array has.</summary>
    private IReadOnlyList<Device>? Stated { get; init; }

    // Always from the stated devices: an array that left a device bare in one change may be followed by another in the next.
    internal Plant WithPlacements(IReadOnlyList<Placement> placements)
    {
        var stated = Stated ?? Devices;
        return this with { Placements = placements, Devices = [.. stated.Select(d => DeviceRating.Of(d, placements))], Stated = stated };
    }
}
