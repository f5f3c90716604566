using NodaTime;

namespace SolarEconomics;

/// <summary>The single modules of a plant: what is left of the arrays that they make up, and where changes take them.</summary>
public sealed partial record Plant
{
    /// <summary>What age has left of an array on a day: by its modules' own dates and tests where they are known one by one, by the array's for the others.</summary>
    /// <param name="placement">An array of this plant in its place.</param>
    /// <param name="day">Any local calendar day.</param>
    /// <param name="ageing">A rule for all modules. Default: <see langword="null"/>, each type's own.</param>
    /// <remarks>In series the weakest module rules its string; strings add. Second-hand modules bring their past.</remarks>
    /// <exception cref="ArgumentException">More modules are said to be in the array, or in one of its strings, than it has.</exception>
    public ArrayShare ShareLeft(Placement placement, LocalDate day, Ageing? ageing = null)
    {
        ArgumentNullException.ThrowIfNull(placement);
        var rest = placement.ShareLeft(day, ageing);
        var laid = ModuleSeats.Lay(placement, Modules, day);
        double[] strings = [.. laid.Select(known => ModuleSeats.ShareOf(placement.Array, known, rest, day, ageing))];
        return new ArrayShare(strings.Average(), strings, laid.Sum(known => known.Count(m => m.ShareLeft(day, ageing) is not null)));
    }

    /// <summary>The same plant with the modules of an array's later strings gone to another array, or away.</summary>
    internal Plant WithMoved(Placement old, int stayingStrings, LocalDate on, ModuleArray? to)
    {
        if (Modules.Count == 0) return this;
        var seats = ModuleSeats.Lay(old, Modules, on);
        var moved = new Dictionary<IndividualModule, int>(ReferenceEqualityComparer.Instance);
        for (var s = stayingStrings; s < seats.Length; s++)
            foreach (var module in seats[s]) moved[module] = s - stayingStrings + 1;
        int? StringOf(int number) => to?.InSeries == old.Array.InSeries ? number : null;
        return this with
        {
            Modules = [.. Modules.Select(m => moved.TryGetValue(m, out var number)
                ? m with { Places = [.. m.Places, new ModulePlace(on, to?.Name) { String = StringOf(number) }] } : m)],
        };
    }
}
