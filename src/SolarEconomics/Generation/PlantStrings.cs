using NodaTime;

namespace SolarEconomics;

/// <summary>String checks of a whole plant, array by array, as it stands on a day.</summary>
public static class PlantStrings
{
    /// <summary>Checks every array that stands on a day against the device behind it.</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="on">Any local calendar day: past, or planned.</param>
    /// <param name="site">Temperatures of the place, and the battery's voltages.</param>
    /// <returns>One check per array, with the arrays that share its input or device reckoned in. An array whose device has neither controller nor inverter described is checked against an inverter of which nothing is known: it cannot be told.</returns>
    public static IReadOnlyList<StringCheck> Check(this Plant plant, LocalDate on, StringSite site)
    {
        ArgumentNullException.ThrowIfNull(plant);
        ArgumentNullException.ThrowIfNull(site);
        var standing = plant.StandingOn(on);
        return [.. standing.Select(p =>
        {
            var device = plant.Find(p.Device);
            var onDevice = standing.Where(o => o != p && string.Equals(o.Device, p.Device, StringComparison.Ordinal)).ToList();
            ModuleArray[] others = [.. onDevice.Select(o => o.Array)], onInput = [.. onDevice.Where(o => o.Input == p.Input).Select(o => o.Array)];
            if (device?.Controller is { } controller) return StringCheck.On(p.Array, controller, site, p.Input, onInput, others);
            var inverter = device?.Inverter ?? new InverterType(p.Device, Math.Max(1, (device?.RatedAcKw ?? 0) * 1000)) { Inputs = p.Input };
            return StringCheck.On(p.Array, inverter, site, p.Input, onInput, others);
        })];
    }

    /// <summary>Arrays that share an input, as strings in parallel at one voltage.</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="on">Any local calendar day.</param>
    /// <returns>One result for each input on which arrays of different strings meet.</returns>
    public static IReadOnlyList<(string Device, int Input, MixedStrings Strings)> SharedInputs(this Plant plant, LocalDate on)
    {
        ArgumentNullException.ThrowIfNull(plant);
        return [.. plant.StandingOn(on).GroupBy(p => (p.Device, p.Input)).Where(g => g.Count() > 1)
            .Select(g => (g.Key.Device, g.Key.Input, MixedStrings.Of([.. g.SelectMany(p => Enumerable.Repeat(ModuleString.Of(p.Array.Module, p.Array.InSeries), p.Array.Strings))])))];
    }
}
