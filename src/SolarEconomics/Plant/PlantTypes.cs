using System.Text.Json;

namespace SolarEconomics;

/// <summary>The types and faces of a plant file.</summary>
internal sealed class PlantTypes
{
    private readonly PlantFields _read;
    private readonly Dictionary<string, ModuleType> _modules;
    private readonly Dictionary<string, InverterType> _inverters;
    private readonly Dictionary<string, ControllerType> _controllers;

    internal PlantTypes(PlantFields read, JsonElement root)
    {
        _read = read;
        _modules = ByName(root, "moduleTypes", (at, _) => ModuleOf(at), m => m.Name);
        _inverters = ByName(root, "inverterTypes", InverterOf, i => i.Name);
        _controllers = ByName(root, "controllerTypes", ControllerOf, c => c.Name);
        foreach (var (at, pointer) in read.Items(root, "moduleTypes"))
            foreach (var mistake in ArrayCheck.ModuleMistakes(_modules[PlantFields.Text(at, "name")!], pointer)) read.Add(mistake);
    }

    internal ModuleType? Module(JsonElement at, string pointer, string field) => _read.Named(at, pointer, field, _modules, "a module type");

    internal InverterType? Inverter(JsonElement device, string pointer) => _read.Named(device, pointer, "inverter", _inverters, "an inverter type");

    internal ControllerType? Controller(JsonElement device, string pointer) => _read.Named(device, pointer, "controller", _controllers, "a controller type");

    internal Face Face(JsonElement at, string pointer)
    {
        var plane = new Plane(PlantFields.Number(at, "tiltDeg")!.Value, PlantFields.Number(at, "azimuthDeg")!.Value);
        return new Face(PlantFields.Text(at, "name")!, plane)
        {
            Mounting = PlantFields.Text(at, "mounting") switch { "onRoof" => Mounting.OnRoof, "insulated" => Mounting.Insulated, _ => Mounting.OpenRack },
            Horizon = Guarded(pointer + "/horizon", Horizon.Free, () => HorizonOf(at)),
            Rows = Guarded(pointer + "/rows", null, () => at.TryGetProperty("rows", out var rows)
                ? new Rows(plane, PlantFields.Number(rows, "slopeLengthM")!.Value, PlantFields.Number(rows, "pitchM")!.Value) : null),
            RoomM2 = PlantFields.Number(at, "roomM2"),
        };
    }

    private static Horizon HorizonOf(JsonElement at)
    {
        if (!at.TryGetProperty("horizon", out var points)) return Horizon.Free;
        return Horizon.Of([.. points.EnumerateArray().Select(p => (PlantFields.Number(p, "azimuthDeg")!.Value, PlantFields.Number(p, "elevationDeg")!.Value))]);
    }

    private Dictionary<string, T> ByName<T>(JsonElement root, string field, Func<JsonElement, string, T> read, Func<T, string> nameOf)
    {
        var all = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var (at, pointer) in _read.Items(root, field))
        {
            var type = read(at, pointer);
            if (!all.TryAdd(nameOf(type), type)) _read.Add(pointer + "/name", $"\"{nameOf(type)}\" a second time", "a name of its own for each type");
        }
        return all;
    }

    private static ModuleType ModuleOf(JsonElement at)
    {
        var type = new ModuleType(PlantFields.Text(at, "name")!, PlantFields.Number(at, "ratedW")!.Value)
        {
            VocV = PlantFields.Number(at, "vocV"),
            VmpV = PlantFields.Number(at, "vmpV"),
            IscA = PlantFields.Number(at, "iscA"),
            ImpA = PlantFields.Number(at, "impA"),
            VocPerK = PlantFields.Number(at, "vocPerK"),
            VmpPerK = PlantFields.Number(at, "vmpPerK"),
            IscPerK = PlantFields.Number(at, "iscPerK"),
            AreaM2 = PlantFields.Number(at, "areaM2"),
            HighestSystemV = PlantFields.Number(at, "highestSystemV"),
            LargestFuseA = PlantFields.Number(at, "largestFuseA"),
        };
        return type with
        {
            PowerPerK = PlantFields.Number(at, "powerPerK") ?? type.PowerPerK,
            NoctC = PlantFields.Number(at, "noctC") ?? type.NoctC,
            LossAt200Wm2 = PlantFields.Number(at, "lossAt200Wm2") ?? type.LossAt200Wm2,
            Ageing = at.TryGetProperty("ageing", out var ageing) ? Curve(ageing) : type.Ageing,
            Warranty = at.TryGetProperty("warranty", out var warranty) ? new Warranty(Curve(warranty), PlantFields.Whole(warranty, "years")!.Value) : null,
        };
    }

    private static Ageing Curve(JsonElement at)
    {
        var loss = PlantFields.Number(at, "lossPerYear")!.Value;
        var rule = string.Equals(PlantFields.Text(at, "rule"), "linear", StringComparison.Ordinal) ? Ageing.Linear(loss) : Ageing.Compound(loss);
        return PlantFields.Number(at, "firstYearLoss") is { } first ? rule.WithFirstYear(first) : rule;
    }

    private InverterType InverterOf(JsonElement at, string pointer)
    {
        var type = new InverterType(PlantFields.Text(at, "name")!, PlantFields.Number(at, "ratedAcW")!.Value)
        {
            HighestInputV = PlantFields.Number(at, "highestInputV"),
            TrackingFromV = PlantFields.Number(at, "trackingFromV"),
            TrackingToV = PlantFields.Number(at, "trackingToV"),
            HighestInputA = PlantFields.Number(at, "highestInputA"),
            HighestShortCircuitA = PlantFields.Number(at, "highestShortCircuitA"),
            HighestInputW = PlantFields.Number(at, "highestInputW"),
            Inputs = PlantFields.Whole(at, "inputs") ?? 1,
            EachInput = EachInput(at, pointer),
            NightW = PlantFields.Number(at, "nightW") ?? 0,
        };
        return at.TryGetProperty("efficiency", out var points)
            ? type with { Efficiency = Guarded(pointer + "/efficiency", type.Efficiency, () => EfficiencyCurve.Through(
                PlantFields.Number(points, "atTenth")!.Value, PlantFields.Number(points, "atHalf")!.Value, PlantFields.Number(points, "atFull")!.Value)) }
            : type;
    }

    private ControllerType ControllerOf(JsonElement at, string pointer)
    {
        var type = new ControllerType(PlantFields.Text(at, "name")!)
        {
            HighestInputV = PlantFields.Number(at, "highestInputV"),
            HighestChargeA = PlantFields.Number(at, "highestChargeA"),
            HighestShortCircuitA = PlantFields.Number(at, "highestShortCircuitA"),
            Inputs = PlantFields.Whole(at, "inputs") ?? 1,
            EachInput = EachInput(at, pointer),
        };
        return type with { HeadroomV = PlantFields.Number(at, "headroomV") ?? type.HeadroomV, Efficiency = PlantFields.Number(at, "efficiency") ?? type.Efficiency };
    }

    private IReadOnlyList<InputLimits> EachInput(JsonElement type, string pointer)
    {
        InputLimits[] each = [.. _read.Items(type, "eachInput", pointer).Select(i => new InputLimits
        {
            TrackingFromV = PlantFields.Number(i.At, "trackingFromV"),
            TrackingToV = PlantFields.Number(i.At, "trackingToV"),
            HighestInputA = PlantFields.Number(i.At, "highestInputA"),
            HighestShortCircuitA = PlantFields.Number(i.At, "highestShortCircuitA"),
            HighestInputW = PlantFields.Number(i.At, "highestInputW"),
        })];
        if (each.Length > 0 && PlantFields.Whole(type, "inputs") is { } inputs && inputs != each.Length)
            _read.Add(pointer + "/inputs", FormattableString.Invariant($"{inputs} inputs beside {each.Length} in eachInput"), "the same number, or inputs left out");
        for (var i = 0; i < each.Length; i++)
        {
            if (each[i].TrackingFromV >= each[i].TrackingToV)
                _read.Add(FormattableString.Invariant($"{pointer}/eachInput/{i}/trackingFromV"), FormattableString.Invariant($"{each[i].TrackingFromV} V, not below trackingToV {each[i].TrackingToV} V"), "the lower end of the window in trackingFromV");
        }
        return each;
    }

    /// <summary>What a schema cannot say is said by the type itself; its words become a mistake of the file.</summary>
    private T Guarded<T>(string pointer, T otherwise, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException e)
        {
            _read.Add(pointer, $"what cannot be ({e.Message.TrimEnd('.')})", "figures as the data sheet or a tape measure has them");
            return otherwise;
        }
    }
}
