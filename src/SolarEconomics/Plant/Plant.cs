using NodaTime;

namespace SolarEconomics;

/// <summary>The devices of a site. Source of kWp, measurement points, opening values and standby.</summary>
/// <param name="Devices">The devices, each with a name of its own.</param>
public sealed partial record Plant(IReadOnlyList<Device> Devices)
{
    /// <summary>The devices, each with a name of its own. Where arrays stand behind them, with the rated powers that follow from these.</summary>
    public IReadOnlyList<Device> Devices
    {
        get;
        init
        {
            field = value;
            Stated = null;
        }
    } = Devices;

    /// <summary>A plant about which nothing is known.</summary>
    public static Plant Unknown { get; } = new([]);

    /// <summary>The device of a name; <see langword="null"/> where there is none.</summary>
    /// <param name="name">Name as the readings use it; case matters.</param>
    public Device? Find(string name) => Devices.FirstOrDefault(d => string.Equals(d.Name, name, StringComparison.Ordinal));

    /// <summary>A device after those whose place it took over, the first of them first. Its channel holds what all of them made.</summary>
    /// <param name="name">Name as the readings use it; case matters.</param>
    /// <returns>At least one device, or none where the name is not known.</returns>
    public IReadOnlyList<Device> LineOf(string name)
    {
        var line = new List<Device>();
        for (var device = Find(name); device is not null && !line.Contains(device); device = device.Replaces is { } before ? Find(before) : null)
            line.Insert(0, device);
        return line;
    }

    /// <summary>Rated power of all modules in service on a day. Unit: kWp.</summary>
    /// <param name="day">Any local calendar day.</param>
    public double RatedKwpOn(LocalDate day) => Devices.Sum(d => d.RatedKwpOn(day));

    /// <summary>Power that all devices in service take on a day. Unit: W. It is load of the plant, never self-use.</summary>
    /// <param name="day">Any local calendar day.</param>
    public double StandbyWOn(LocalDate day) => Devices.Where(d => d.InServiceOn(day)).Sum(d => d.StandbyW);

    /// <summary>Reads a plant file (JSON, version 1; the schema is <c>plant.schema.json</c> beside this code).</summary>
    /// <param name="path">Path of the file; relative paths start at the working folder.</param>
    /// <exception cref="RecordException">The file is missing, empty, no JSON, or wrong somewhere; every mistake is listed with line and column.</exception>
    public static Plant Load(string path) => PlantFile.Read(CheckedJson.Read(path, PlantFile.Kind), path);
}
