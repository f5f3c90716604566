namespace SolarEconomics;

/// <summary>A place where modules can lie: a roof face, a row of frames on the ground, a wall.</summary>
/// <param name="Name">Name of the face, as the plant's owner says it.</param>
/// <param name="Plane">How modules are laid there.</param>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record Face(string Name, Plane Plane)
{
    /// <summary>How modules shed heat there. Default: <see cref="SolarEconomics.Mounting.OpenRack"/>.</summary>
    public Mounting Mounting { get; init; } = Mounting.OpenRack;

    /// <summary>What stands around this face. Default: <see cref="SolarEconomics.Horizon.Free"/>; the horizon of the whole place then holds.</summary>
    public Horizon Horizon { get; init; } = Horizon.Free;

    /// <summary>Rows on this face that shade each other. Default: <see langword="null"/>, none.</summary>
    public Rows? Rows { get; init; }

    /// <summary>Area that modules may cover. Unit: m². Default: <see langword="null"/>, not known.</summary>
    public double? RoomM2 { get; init => field = value is { } room ? Require.Within(room, 0.1, 1e6, "m²", nameof(RoomM2)) : null; }
}
