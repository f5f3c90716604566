using NodaTime;

namespace SolarEconomics;

/// <summary>One device of the plant that makes or counts energy: an inverter, a charge controller, a battery.</summary>
/// <param name="Name">Name as the readings use it.</param>
/// <param name="Point">Where its counter measures.</param>
public sealed record Device(string Name, MeasurementPoint Point)
{
    /// <summary>Rated power of the modules behind it. Unit: kWp. 0 for a device without modules.</summary>
    public double RatedKwp { get; init; }

    /// <summary>Day on which it was put to work here.</summary>
    public LocalDate? InService { get; init; }

    /// <summary>First day on which it was no longer at work; <see langword="null"/> while it is.</summary>
    public LocalDate? OutOfService { get; init; }

    /// <summary>What its counter showed on the first day here. Unit: kWh. Default: 0; a second-hand device starts higher.</summary>
    public double OpeningKwh { get; init; }

    /// <summary>Lowest efficiency from its measurement point to AC at the board. Range: above 0 to 1. Default: 1, right for an AC counter.</summary>
    public double ToAcLow { get; init; } = 1.0;

    /// <summary>Highest efficiency from its measurement point to AC at the board. Range: <see cref="ToAcLow"/> to 1. Default: 1.</summary>
    public double ToAcHigh { get; init; } = 1.0;

    /// <summary>Power the device takes all year. Unit: W. It is load of the plant, never self-use. Default: 0.</summary>
    public double StandbyW { get; init; }

    /// <summary>Usable capacity, for a battery. Unit: kWh. Default: 0.</summary>
    public double UsableKwh { get; init; }
}
