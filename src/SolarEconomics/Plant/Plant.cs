namespace SolarEconomics;

/// <summary>The devices of a site. Source of kWp, measurement points, opening values and standby.</summary>
/// <param name="Devices">The devices, each with a name of its own.</param>
public sealed partial record Plant(IReadOnlyList<Device> Devices)
{
    /// <summary>A plant about which nothing is known.</summary>
    public static Plant Unknown { get; } = new([]);

    /// <summary>The device of a name; <see langword="null"/> where there is none.</summary>
    /// <param name="name">Name as the readings use it; case matters.</param>
    public Device? Find(string name) => Devices.FirstOrDefault(d => string.Equals(d.Name, name, StringComparison.Ordinal));
}
