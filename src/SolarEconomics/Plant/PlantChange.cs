using NodaTime;

namespace SolarEconomics;

/// <summary>A dated operation on a plant. History and future are the same: <see cref="Plant.After"/> takes both.</summary>
/// <param name="On">First day on which the plant stands as changed.</param>
public abstract record PlantChange(LocalDate On)
{
    /// <summary>The change in a few words, without its day.</summary>
    public abstract string Words { get; }

    /// <summary>Does the change, or says what keeps it from being done; then the plant comes back as it was.</summary>
    internal abstract Plant Apply(Plant plant, List<PlantMistake> mistakes);

    /// <summary>The array's placement on the day of the change, what is left of it by earlier changes of that day; <see langword="null"/>, with a mistake said, where there is none.</summary>
    internal Placement? Standing(Plant plant, string array, List<PlantMistake> mistakes)
    {
        var found = plant.Placements.FirstOrDefault(p => string.Equals(p.Array.Name, array, StringComparison.Ordinal)
            && p.StandsOn(On));
        if (found is not null) return found;
        var names = plant.Placements.Where(p => p.StandsOn(On)).Select(p => p.Array.Name).Distinct(StringComparer.Ordinal).ToList();
        mistakes.Add(new PlantMistake("/array", $"\"{array}\", which does not stand on {On:uuuu-MM-dd}",
            names.Count == 0 ? "an array that stands on that day; none does" : $"an array that stands on that day, such as {Nearest.List(array, names)}"));
        return null;
    }

    /// <summary>The placements with one of them ended; gone altogether where it began on the same day.</summary>
    internal IEnumerable<Placement> Ended(Plant plant, Placement old) =>
        plant.Placements.Where(p => p != old || p.From < On || p.From is null).Select(p => p == old ? p with { Until = On } : p);
}
