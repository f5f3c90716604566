using System.Text.Json;
using NodaTime;

namespace SolarEconomics;

/// <summary>Arrays, changes, single modules and the log of a plant file.</summary>
internal sealed partial class PlantFile
{
    private Placement? Placement(JsonElement at, string pointer, PlantTypes types, IReadOnlyList<Face> faces)
    {
        var module = types.Module(at, pointer, "modules");
        var face = FaceOf(at, pointer, faces);
        if (module is null || face is null) return null;
        var array = new ModuleArray(PlantFields.Text(at, "name")!, module, PlantFields.Whole(at, "inSeries")!.Value, PlantFields.Whole(at, "strings") ?? 1, face)
        {
            Cable = at.TryGetProperty("cable", out var cable) ? new Cable(PlantFields.Number(cable, "lengthM")!.Value, PlantFields.Number(cable, "squareMm")!.Value) : null,
        };
        return new Placement(array, PlantFields.Text(at, "device")!)
        {
            Input = PlantFields.Whole(at, "input") ?? 1,
            From = _read.Day(at, pointer, "from"),
            Until = _read.Day(at, pointer, "until"),
            MadeOn = _read.Day(at, pointer, "madeOn"),
            TestedShare = PlantFields.Number(at, "testedShare"),
            TestedOn = _read.Day(at, pointer, "testedOn"),
        };
    }

    private Face? FaceOf(JsonElement at, string pointer, IReadOnlyList<Face> faces) =>
        _read.Named(at, pointer, "face", faces.DistinctBy(f => f.Name, StringComparer.Ordinal).ToDictionary(f => f.Name, StringComparer.Ordinal), "a face");

    private Plant Changed(Plant plant, JsonElement root, PlantTypes types, IReadOnlyList<Face> faces, bool isTrial = false)
    {
        foreach (var (at, pointer) in _read.Items(root, "changes"))
        {
            if (Change(at, pointer, types, faces) is not { } change) continue;
            var mistakes = new List<PlantMistake>();
            var before = ArrayCheck.Mistakes(plant).ToHashSet();
            var after = change.Apply(plant, mistakes);
            // A contradiction that the change brings stands at the change, as its arrays have no place of their own in the file.
            mistakes.AddRange(ArrayCheck.Mistakes(after).Where(m => !before.Contains(m)).Select(m => m with { Place = "" }));
            if (!isTrial) foreach (var m in mistakes) _read.Add(pointer + m.Place, m.Found, m.Expected);
            if (mistakes.Count == 0) plant = plant.Recorded(after, change);
        }
        return plant;
    }

    private PlantChange? Change(JsonElement at, string pointer, PlantTypes types, IReadOnlyList<Face> faces)
    {
        var on = _read.Day(at, pointer, "on") ?? default;
        var array = PlantFields.Text(at, "array")!;
        switch (PlantFields.Text(at, "change"))
        {
            case "add":
                return Placement(at, pointer, types, faces) is { } added ? new AddModules(added with { From = on }) : null;
            case "retire":
                return new RetireModules(on, array) { Fate = PlantFields.Text(at, "fate") };
            case "replace":
                return types.Module(at, pointer, "modules") is { } module
                    ? new ReplaceModules(on, array, PlantFields.Text(at, "name")!, module, PlantFields.Whole(at, "inSeries")!.Value, PlantFields.Whole(at, "strings") ?? 1) : null;
            default:
                return FaceOf(at, pointer, faces) is { } face
                    ? new MoveModules(on, array, PlantFields.Text(at, "name")!, PlantFields.Text(at, "device")!, face)
                    {
                        Strings = PlantFields.Whole(at, "strings"),
                        NewInSeries = PlantFields.Whole(at, "newInSeries"),
                        Input = PlantFields.Whole(at, "input") ?? 1,
                    }
                    : null;
        }
    }

    private IndividualModule? Module(JsonElement at, string pointer, PlantTypes types) =>
        types.Module(at, pointer, "type") is not { } type ? null : new IndividualModule(PlantFields.Text(at, "id")!, type)
        {
            MadeOn = _read.Day(at, pointer, "madeOn"),
            TestedW = PlantFields.Number(at, "testedW"),
            TestedOn = _read.Day(at, pointer, "testedOn"),
            Places = [.. _read.Items(at, "places", pointer).Select(p =>
                new ModulePlace(_read.Day(p.At, p.Pointer, "from") ?? default, PlantFields.Text(p.At, "array"), PlantFields.Text(p.At, "note")) { String = PlantFields.Whole(p.At, "string") })],
        };

    private LogEntry Entry(JsonElement at, string pointer) =>
        new(_read.Day(at, pointer, "on") ?? default, Enum.Parse<LogKind>(PlantFields.Text(at, "kind")!, ignoreCase: true))
        {
            Where = PlantFields.Text(at, "where"),
            Note = PlantFields.Text(at, "note"),
        };
}
