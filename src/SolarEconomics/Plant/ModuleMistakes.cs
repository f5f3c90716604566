using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Looks for single modules that contradict themselves or the arrays that they are said to be in.</summary>
internal static class ModuleMistakes
{
    internal static IEnumerable<PlantMistake> Of(Plant plant)
    {
        for (var i = 0; i < plant.Modules.Count; i++)
        {
            var at = FormattableString.Invariant($"/modules/{i}");
            foreach (var mistake in Alone(plant.Modules[i], at).Concat(InArrays(plant, plant.Modules[i], at))) yield return mistake;
        }
        foreach (var id in plant.Modules.GroupBy(m => m.Id, StringComparer.Ordinal).Where(g => g.Count() > 1))
            yield return new("/modules", $"\"{id.Key}\" {id.Count()} times", "a mark of its own for each module");
    }

    private static IEnumerable<PlantMistake> Alone(IndividualModule m, string at)
    {
        if (m.TestedW > m.Type.RatedW * 1.1)
            yield return new(at + "/testedW", Say($"{m.TestedW} W for {m.Id}, rated {m.Type.RatedW} W"), "at most 110 % of the rating; was another module on the tester, or the light above 1,000 W/m²?");
        if (m.TestedW is not null && m.TestedOn is null)
            yield return new(at + "/testedOn", $"a test of {m.Id} without a day", "the day of the test, as it ages from there");
        if (m.TestedOn < m.MadeOn)
            yield return new(at + "/testedOn", Say($"{m.TestedOn:uuuu-MM-dd}, before madeOn {m.MadeOn:uuuu-MM-dd}"), "a test on or after the maker's date");
        if (m.Places.FirstOrDefault(p => p.From < m.MadeOn) is { } early)
            yield return new(at + "/places", Say($"{m.Id} in {early.Array ?? "store"} from {early.From:uuuu-MM-dd}, before madeOn {m.MadeOn:uuuu-MM-dd}"), "places on or after the maker's date");
    }

    private static IEnumerable<PlantMistake> InArrays(Plant plant, IndividualModule m, string at)
    {
        foreach (var place in m.Places.Where(p => p.Array is not null))
        {
            var named = plant.Placements.Where(p => string.Equals(p.Array.Name, place.Array, StringComparison.Ordinal)).ToList();
            if (named.Find(p => p.StandsOn(place.From)) is not { } array)
            {
                yield return new(at + "/places", Say($"{m.Id} in \"{place.Array}\" from {place.From:uuuu-MM-dd}"), named.Count == 0
                    ? $"the name of an array, such as {Nearest.List(place.Array!, plant.Placements.Select(p => p.Array.Name).Distinct(StringComparer.Ordinal))}"
                    : "a day on which that array stands");
            }
            else if (SeatMistake(plant, array, place.From) is { } why)
            {
                yield return new(at + "/places", why, Say($"at most {array.Array.InSeries} in each of its {array.Array.Strings} strings"));
            }
        }
    }

    private static string? SeatMistake(Plant plant, Placement array, LocalDate day)
    {
        var own = plant.Modules.Where(m => string.Equals(m.ArrayOn(day), array.Array.Name, StringComparison.Ordinal)).ToList();
        if (own.Count > array.Array.Count) return Say($"{own.Count} modules in {array.Array.Name} on {day:uuuu-MM-dd}, which has {array.Array.Count}");
        var full = own.GroupBy(m => m.PlaceOn(day)!.String).FirstOrDefault(g => g.Key is { } s && (s < 1 || s > array.Array.Strings || g.Count() > array.Array.InSeries));
        return full is null ? null : Say($"{full.Count()} modules in string {full.Key} of {array.Array.Name} on {day:uuuu-MM-dd}");
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
