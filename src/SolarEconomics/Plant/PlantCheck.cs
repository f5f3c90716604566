using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Looks for what a schema cannot see: devices that contradict themselves or one another.</summary>
internal static class PlantCheck
{
    internal static IEnumerable<PlantMistake> Mistakes(Plant plant)
    {
        for (var i = 0; i < plant.Devices.Count; i++)
            foreach (var (place, found, expected) in Alone(plant.Devices[i]).Concat(AmongOthers(plant, i)))
                yield return new PlantMistake(FormattableString.Invariant($"/devices/{i}{place}"), found, expected);
    }

    private static IEnumerable<(string Place, string Found, string Expected)> Alone(Device device)
    {
        if (device.ToAcLow > device.ToAcHigh)
            yield return ("/toAcLow", $"{Say(device.ToAcLow)} above toAcHigh {Say(device.ToAcHigh)}",
                "the lower efficiency in toAcLow and the higher in toAcHigh; where only one is known, write it in both");
        if (device.OutOfService <= device.InService)
            yield return ("/outOfService", $"{Say(device.OutOfService)}, not after inService {Say(device.InService)}",
                "the first day on which the device no longer worked");
        for (var s = 1; s < device.Stages.Count; s++)
            if (device.Stages[s].From <= device.Stages[s - 1].From)
                yield return (FormattableString.Invariant($"/stages/{s}/from"),
                    $"{Say(device.Stages[s].From)}, not after {Say(device.Stages[s - 1].From)}", "stages in the order of their days");
        if (device.Stages.Count > 0 && !device.Stages[^1].RatedKwp.Equals(device.RatedKwp))
            yield return ("/ratedKwp", $"{Say(device.RatedKwp)} kWp beside {Say(device.Stages[^1].RatedKwp)} kWp in the last stage",
                "the rated power of the last stage in ratedKwp too");
    }

    private static IEnumerable<(string Place, string Found, string Expected)> AmongOthers(Plant plant, int index)
    {
        var device = plant.Devices[index];
        if (plant.Devices.Take(index).Any(d => string.Equals(d.Name, device.Name, StringComparison.Ordinal)))
            yield return ("/name", $"\"{device.Name}\" a second time", "a name of its own for each device");
        if (device.Replaces is not { } before) yield break;
        if (plant.Find(before) is null)
            yield return ("/replaces", $"\"{before}\"",
                $"the name of another device of this file, such as {Nearest.List(before, plant.Devices.Select(d => d.Name).Except([device.Name], StringComparer.Ordinal))}");
        else if (EndsInACircle(plant, device))
            yield return ("/replaces", $"\"{before}\", from which the line of replaced devices runs in a circle", "a line with a first device, which replaces none");
    }

    /// <summary>Whether following "replaces" never comes to a first device.</summary>
    private static bool EndsInACircle(Plant plant, Device device)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var at = device; at is not null; at = at.Replaces is { } before ? plant.Find(before) : null)
            if (!seen.Add(at.Name)) return true;
        return false;
    }

    private static string Say(double value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Say(LocalDate? day) => day is { } d ? LocalDatePattern.Iso.Format(d) : "nothing";
}
