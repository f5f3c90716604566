using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Reads our own plant file.</summary>
internal sealed class PlantFile
{
    internal const int Version = 1;
    internal const string Kind = "a plant file";
    private const string Schema = "SolarEconomics.Plant.plant.schema.json";
    private static readonly Lazy<JsonRules> Rules = new(() => new JsonRules(Schema));
    private readonly CheckedJson _json;
    private readonly List<Problem> _problems = [];

    private PlantFile(CheckedJson json) => _json = json;

    /// <exception cref="RecordException">Anything in the file is wrong; every mistake is in the message.</exception>
    internal static Plant Read(CheckedJson json, string path)
    {
        if (json.Root.ValueKind == JsonValueKind.Object && json.Root.TryGetProperty("version", out var version)
            && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var number) && number > Version)
            throw Throw.JsonNewer(path, number, Version);
        json.ThrowIfAny(json.Judge(Rules.Value));
        var file = new PlantFile(json);
        var plant = new Plant([.. json.Root.GetProperty("devices").EnumerateArray().Select((d, i) => file.Device(d, Pointer(i)))]);
        var mistakes = PlantCheck.Mistakes(plant).Select(m => json.At(Pointer(m.Device) + m.Place, m.Found, m.Expected));
        json.ThrowIfAny([.. file._problems.Concat(mistakes).OrderBy(p => p.Line).ThenBy(p => p.Column)]);
        return plant;
    }

    private Device Device(JsonElement at, string pointer) =>
        new(Text(at, "name")!, Enum.Parse<MeasurementPoint>(Text(at, "point")!, ignoreCase: true))
        {
            RatedKwp = Number(at, "ratedKwp", 0),
            RatedAcKw = Number(at, "ratedAcKw", 0),
            Stages = at.TryGetProperty("stages", out var stages)
                ? [.. stages.EnumerateArray().Select((s, i) => Stage(s, FormattableString.Invariant($"{pointer}/stages/{i}")))] : [],
            InService = Day(at, pointer, "inService"),
            OutOfService = Day(at, pointer, "outOfService"),
            Replaces = Text(at, "replaces"),
            OpeningKwh = Number(at, "openingKwh", 0),
            ToAcLow = Number(at, "toAcLow", 1),
            ToAcHigh = Number(at, "toAcHigh", 1),
            StandbyW = Number(at, "standbyW", 0),
            UsableKwh = Number(at, "usableKwh", 0),
            Note = Text(at, "note"),
        };

    private DeviceStage Stage(JsonElement at, string pointer) =>
        new(Day(at, pointer, "from") ?? default, Number(at, "ratedKwp", 0), Text(at, "note"));

    private LocalDate? Day(JsonElement at, string pointer, string field)
    {
        if (Text(at, field) is not { } text) return null;
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (parsed.Success) return parsed.Value;
        _problems.Add(_json.At(pointer + "/" + field, $"\"{text}\"", "a day that exists, such as \"2022-03-01\""));
        return null;
    }

    private static string? Text(JsonElement at, string field) => at.TryGetProperty(field, out var text) ? text.GetString() : null;

    private static double Number(JsonElement at, string field, double otherwise) =>
        at.TryGetProperty(field, out var number) ? number.GetDouble() : otherwise;

    private static string Pointer(int device) => FormattableString.Invariant($"/devices/{device}");
}
