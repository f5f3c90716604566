using NodaTime;

namespace SolarEconomics;

/// <summary>One device of the plant that makes or counts energy: an inverter, a charge controller, a battery.</summary>
/// <param name="Name">Name as the readings use it.</param>
/// <param name="Point">Where its counter measures.</param>
public sealed record Device(string Name, MeasurementPoint Point)
{
    /// <summary>Rated power of the modules behind it today, or when it left. Unit: kWp. 0 for a device without modules.</summary>
    public double RatedKwp { get; init; }

    /// <summary>Rated power of its inverter. Unit: kW AC. Default: 0, not known.</summary>
    public double RatedAcKw { get; init; }

    /// <summary>The rated powers it has had, earliest first, where they changed. Default: none, <see cref="RatedKwp"/> holds for all its days.</summary>
    public IReadOnlyList<DeviceStage> Stages { get; init; } = [];

    /// <summary>Day on which it was put to work here.</summary>
    public LocalDate? InService { get; init; }

    /// <summary>First day on which it was no longer at work; <see langword="null"/> while it is.</summary>
    public LocalDate? OutOfService { get; init; }

    /// <summary>Name of the device whose place and channel it took over; <see langword="null"/> where it is the first.</summary>
    public string? Replaces { get; init; }

    /// <summary>What its counter showed on the first day here. Unit: kWh. Default: 0; a second-hand device starts higher.</summary>
    public double OpeningKwh { get; init; }

    /// <summary>Lowest efficiency from its measurement point to AC at the board. Range: above 0 to 1. Default: 1, right for an AC counter.</summary>
    public double ToAcLow { get; init; } = 1.0;

    /// <summary>Highest efficiency from its measurement point to AC at the board. Range: <see cref="ToAcLow"/> to 1. Default: 1.</summary>
    public double ToAcHigh { get; init; } = 1.0;

    /// <summary>Its inverter as the data sheet has it; <see langword="null"/> where it has none or it is not described.</summary>
    public InverterType? Inverter { get; init; }

    /// <summary>The charge controller in front of it as the data sheet has it; <see langword="null"/> where there is none or it is not described.</summary>
    public ControllerType? Controller { get; init; }

    /// <summary>Power the device takes all year. Unit: W. It is load of the plant, never self-use. Default: 0.</summary>
    public double StandbyW { get; init; }

    /// <summary>Usable capacity, for a battery. Unit: kWh. Default: 0.</summary>
    public double UsableKwh { get; init; }

    /// <summary>The owner's note, where there is one.</summary>
    public string? Note { get; init; }

    /// <summary>Rated power of modules over that of the inverter, kWp per kW; <see langword="null"/> where either is not known.</summary>
    /// <remarks>Equation: <see cref="RatedKwp"/> ÷ <see cref="RatedAcKw"/>.</remarks>
    public double? DcAcRatio => RatedKwp > 0 && RatedAcKw > 0 ? RatedKwp / RatedAcKw : null;

    /// <summary>Whether it was in service on a day: <c>[InService, OutOfService)</c>. A day that is not stated leaves that end open.</summary>
    /// <param name="day">Any local calendar day.</param>
    public bool InServiceOn(LocalDate day) => !(day < InService) && !(day >= OutOfService);

    /// <summary>Rated power of the modules behind it on a day. Unit: kWp. 0 on a day on which it was not in service.</summary>
    /// <param name="day">Any local calendar day.</param>
    public double RatedKwpOn(LocalDate day) =>
        !InServiceOn(day) ? 0
        : Stages.LastOrDefault(s => s.From <= day) is { } stage ? stage.RatedKwp
        : Stages.Count > 0 ? 0
        : RatedKwp;
}
