using System.Text.Json;

namespace SolarEconomics;

/// <summary>Reads our own plant file: devices, and where they are described the types, faces, arrays, changes, modules and log.</summary>
internal sealed partial class PlantFile
{
    internal const int Version = 1;
    internal const string Kind = "a plant file";
    private const string Schema = "SolarEconomics.Plant.plant.schema.json";
    private static readonly Lazy<JsonRules> Rules = new(() => new JsonRules(Schema));
    private readonly PlantFields _read;

    private PlantFile(PlantFields read) => _read = read;

    /// <exception cref="RecordException">Anything in the file is wrong; every mistake is in the message.</exception>
    internal static Plant Read(CheckedJson json, string path)
    {
        if (json.Root.ValueKind == JsonValueKind.Object && json.Root.TryGetProperty("version", out var version)
            && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var number) && number > Version)
            throw Throw.JsonNewer(path, number, Version);
        json.ThrowIfAny(json.Judge(Rules.Value));
        var read = new PlantFields(json);
        var plant = new PlantFile(read).Whole(json.Root);
        json.ThrowIfAny(read.InOrder);
        return plant;
    }

    private Plant Whole(JsonElement root)
    {
        var types = new PlantTypes(_read, root);
        var devices = new Plant([.. _read.Items(root, "devices").Select(d => Device(d.At, d.Pointer, types))]);
        foreach (var mistake in PlantCheck.Mistakes(devices)) _read.Add(mistake);
        var faces = _read.Items(root, "faces").Select(f => types.Face(f.At, f.Pointer)).ToList();
        var placements = _read.Items(root, "arrays").Select(a => Placement(a.At, a.Pointer, types, faces)).OfType<Placement>().ToList();
        var modules = _read.Items(root, "modules").Select(m => Module(m.At, m.Pointer, types)).OfType<IndividualModule>().ToList();
        var plant = devices.WithPlacements(placements) with { Faces = faces };
        foreach (var mistake in ArrayCheck.Mistakes(plant).Where(m => !m.Place.EndsWith("/modules", StringComparison.Ordinal))) _read.Add(mistake); // a type's contradictions stand at the type
        // Changes take modules with them; those that do not fit their arrays are said first and moved nowhere.
        var unfit = ModuleMistakes.Of(Changed(plant, root, types, faces, isTrial: true) with { Modules = modules }).ToList();
        foreach (var mistake in unfit) _read.Add(mistake);
        plant = Changed(unfit.Count == 0 ? plant with { Modules = modules } : plant, root, types, faces);
        foreach (var mistake in StatedRatings(devices, plant)) _read.Add(mistake);
        return plant with
        {
            Log = [.. _read.Items(root, "log").Select(l => Entry(l.At, l.Pointer))],
        };
    }

    private Device Device(JsonElement at, string pointer, PlantTypes types) =>
        new(PlantFields.Text(at, "name")!, Enum.Parse<MeasurementPoint>(PlantFields.Text(at, "point")!, ignoreCase: true))
        {
            RatedKwp = PlantFields.Number(at, "ratedKwp") ?? 0,
            RatedAcKw = PlantFields.Number(at, "ratedAcKw") ?? 0,
            Stages = at.TryGetProperty("stages", out _) ? [.. _read.Items(at, "stages", pointer).Select(s => Stage(s.At, s.Pointer))] : [],
            InService = _read.Day(at, pointer, "inService"),
            OutOfService = _read.Day(at, pointer, "outOfService"),
            Replaces = PlantFields.Text(at, "replaces"),
            OpeningKwh = PlantFields.Number(at, "openingKwh") ?? 0,
            ToAcLow = PlantFields.Number(at, "toAcLow") ?? 1,
            ToAcHigh = PlantFields.Number(at, "toAcHigh") ?? 1,
            Inverter = types.Inverter(at, pointer),
            Controller = types.Controller(at, pointer),
            StandbyW = PlantFields.Number(at, "standbyW") ?? 0,
            UsableKwh = PlantFields.Number(at, "usableKwh") ?? 0,
            Note = PlantFields.Text(at, "note"),
        };

    private DeviceStage Stage(JsonElement at, string pointer) =>
        new(_read.Day(at, pointer, "from") ?? default, PlantFields.Number(at, "ratedKwp") ?? 0, PlantFields.Text(at, "note"));

    /// <summary>Rated powers that the file states beside arrays must be those of the arrays.</summary>
    private static IEnumerable<PlantMistake> StatedRatings(Plant stated, Plant rated)
    {
        for (var i = 0; i < stated.Devices.Count; i++)
        {
            var (own, fromArrays) = (stated.Devices[i], rated.Devices[i]);
            if (own.RatedKwp > 0 && Math.Abs(own.RatedKwp - fromArrays.RatedKwp) > 0.005 * own.RatedKwp)
                yield return new PlantMistake(FormattableString.Invariant($"/devices/{i}/ratedKwp"),
                    FormattableString.Invariant($"{own.RatedKwp} kWp beside arrays of {fromArrays.RatedKwp} kWp"), "one figure; leave ratedKwp and stages out where arrays are described");
            else if (own.Stages.Count > 0 && !own.Stages.Select(s => s.RatedKwp).SequenceEqual(fromArrays.Stages.Select(s => s.RatedKwp)))
                yield return new PlantMistake(FormattableString.Invariant($"/devices/{i}/stages"),
                    $"stages of {string.Join(", ", own.Stages.Select(Kwp))} kWp beside arrays that give {string.Join(", ", fromArrays.Stages.Select(Kwp))}",
                    "the same; leave stages out where arrays are described");
        }

        static string Kwp(DeviceStage stage) => FormattableString.Invariant($"{stage.RatedKwp}");
    }
}
