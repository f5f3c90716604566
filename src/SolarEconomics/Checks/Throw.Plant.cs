namespace SolarEconomics;

/// <summary>Messages of plants and their changes.</summary>
internal static partial class Throw
{
    internal static ArgumentException PlantMistakes(IReadOnlyList<PlantMistake> mistakes) =>
        new(string.Join(" ", mistakes.Select(m => $"{m.Place}: found {m.Found}, expected {m.Expected}.").Distinct(StringComparer.Ordinal)));

    internal static ArgumentException ChangeWithoutDay(string array) =>
        new($"Found no first day of \"{array}\", expected one: From is the day of the change. An array that was always there is given to Plant.With.");

    internal static ArgumentException NoInverterRating(string device) =>
        new($"Found arrays behind \"{device}\" but neither an inverter nor its rated power, expected one: write \"inverter\" or \"ratedAcKw\" of the device.");

    internal static ArgumentException NoArrays(string site) =>
        new($"Found no array in the plant of {site}, expected at least one in its place: write \"arrays\" in the plant file, or use Plant.With.");

    internal static ArgumentException NoSeat(IndividualModule module, Placement placement, int modules) =>
        new(FormattableString.Invariant($"Found no seat for module \"{module.Id}\" in {placement.Array.Name}, in which {modules} modules are said to be, expected at most {placement.Array.InSeries} in each of its {placement.Array.Strings} strings."));

    internal static ArgumentException NoChange() => new("Found no change, expected at least one: AddModules, MoveModules, ReplaceModules or RetireModules.");
}
