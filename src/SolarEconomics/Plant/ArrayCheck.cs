using System.Globalization;

namespace SolarEconomics;

/// <summary>Looks for arrays that contradict themselves, their device or one another.</summary>
internal static class ArrayCheck
{
    private const double MostCableLoss = 0.2;

    internal static IEnumerable<PlantMistake> Mistakes(Plant plant)
    {
        for (var i = 0; i < plant.Placements.Count; i++)
        {
            var at = FormattableString.Invariant($"/arrays/{i}");
            foreach (var mistake in Alone(plant.Placements[i], at).Concat(OnDevice(plant, plant.Placements[i], at)).Concat(AmongOthers(plant, i, at)))
                yield return mistake;
        }
    }

    private static IEnumerable<PlantMistake> Alone(Placement p, string at)
    {
        if (p.Until <= p.From)
            yield return new(at + "/until", $"{p.Until:uuuu-MM-dd}, not after from {p.From:uuuu-MM-dd}", $"the first day on which {p.Array.Name} no longer stood there");
        if (p.MadeOn > p.From)
            yield return new(at + "/madeOn", $"{p.MadeOn:uuuu-MM-dd}, after from {p.From:uuuu-MM-dd}", "the maker's date, on or before the first day in its place");
        if (p.Array.Plane.TiltDeg > 90)
            yield return new(at + "/face", Say($"a tilt of {p.Array.Plane.TiltDeg}° for {p.Array.Name}"), "0 to 90°; an array that leans the other way has its azimuth turned by 180°");
        if (p.Array.Cable?.LossAtRated(p.Array) is { } lost and > MostCableLoss)
            yield return new(at + "/cable", Say($"a cable of {p.Array.Cable.LengthM} m and {p.Array.Cable.SquareMm} mm² that loses {lost * 100:0} % at the rated power of {p.Array.Name}"), "1 to 3 %: thicker, shorter, or more modules in series");
        foreach (var mistake in ModuleMistakes(p.Array.Module, at + "/modules")) yield return mistake;
        if (p.Array is { Face.RoomM2: { } room, Module.AreaM2: { } area } && area * p.Array.Count > room * 1.001)
            yield return new(at + "/face", Say($"{area * p.Array.Count:0.#} m² of modules of {p.Array.Name} on {p.Array.Face.Name}"), Say($"at most the {room:0.#} m² of that face"));
    }

    /// <summary>What no module can be; <see cref="ModuleType.Contradictions"/> also names what is only unlikely.</summary>
    internal static IEnumerable<PlantMistake> ModuleMistakes(ModuleType m, string at)
    {
        if (m is { VmpV: { } vmp, VocV: { } voc } && vmp >= voc)
            yield return new(at, Say($"Vmp {vmp} V at or above Voc {voc} V for {m.Name}"), "vmpV 15 to 25 % below vocV. Are the two swapped?");
        if (m is { ImpA: { } imp, IscA: { } isc } && imp >= isc)
            yield return new(at, Say($"Imp {imp} A at or above Isc {isc} A for {m.Name}"), "impA 4 to 8 % below iscA. Are the two swapped?");
    }

    private static IEnumerable<PlantMistake> OnDevice(Plant plant, Placement p, string at)
    {
        if (plant.Find(p.Device) is not { } device)
        {
            yield return new(at + "/device", $"\"{p.Device}\" for {p.Array.Name}", plant.Devices.Count == 0
                ? "the name of a device of the plant; it has none" : $"the name of a device, such as {Nearest.List(p.Device, plant.Devices.Select(d => d.Name))}");
            yield break;
        }
        var inputs = device.Controller?.Inputs ?? device.Inverter?.Inputs;
        if (p.Input < 1 || p.Input > inputs)
            yield return new(at + "/input", Say($"input {p.Input} for {p.Array.Name}"), Say($"1 to {inputs ?? 1}, the inputs of {device.Name}"));
        var highestV = device.Controller is { } controller ? controller.HighestInputV : device.Inverter?.HighestInputV;
        if (p.Array.Module.VocV is { } voc && highestV is { } limit && voc * p.Array.InSeries > limit)
            yield return new(at + "/inSeries", Say($"{p.Array.InSeries} in series: {voc * p.Array.InSeries:0.#} V open at 25 °C for {p.Array.Name}"),
                Say($"below the {limit:0.#} V that destroys {device.Name}, with room for the coldest dawn; see the string check"));
    }

    private static IEnumerable<PlantMistake> AmongOthers(Plant plant, int index, string at)
    {
        var p = plant.Placements[index];
        if (plant.Placements.Take(index).Any(o => o.Overlaps(p) && string.Equals(o.Array.Name, p.Array.Name, StringComparison.Ordinal)))
            yield return new(at + "/name", $"\"{p.Array.Name}\" a second time in the same days", "a name of its own for each array");
        var device = plant.Find(p.Device);
        var limit = LimitsOf(device, p.Input)?.HighestShortCircuitA;
        var beside = plant.Placements.Take(index).Where(o => o.Overlaps(p) && o.Input == p.Input && string.Equals(o.Device, p.Device, StringComparison.Ordinal)).ToList();
        if (beside.Count == 0 || limit is not { } most || beside.Append(p).Any(o => o.Array.Module.IscA is null)) yield break;
        var amps = beside.Append(p).Sum(o => o.Array.Module.IscA!.Value * o.Array.Strings);
        if (amps > most)
            yield return new(at + "/input", Say($"{amps:0.#} A of short circuit on input {p.Input} of {p.Device}: {p.Array.Name} beside {string.Join(", ", beside.Select(o => o.Array.Name))}"),
                Say($"at most the {most:0.#} A of that input; put one of them on another input"));
    }

    private static InputLimits? LimitsOf(Device? device, int input)
    {
        if (device?.Controller is { } controller) return input >= 1 && input <= controller.Inputs ? controller.LimitsOf(input, 1) : null;
        return device?.Inverter is { } inverter && input >= 1 && input <= inverter.Inputs ? inverter.LimitsOf(input) : null;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
