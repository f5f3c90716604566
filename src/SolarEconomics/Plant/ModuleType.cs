namespace SolarEconomics;

/// <summary>A type of module as its data sheet has it, at 1,000 W/m² and 25 °C cell. What the sheet does not say stays <see langword="null"/>, and checks that need it cannot tell.</summary>
/// <remarks>Coefficients are fractions per kelvin: −0.30 %/°C is written −0.0030. Immutable, so safe to share between threads.</remarks>
public sealed record ModuleType
{
    /// <summary>A type by name and rating.</summary>
    /// <param name="name">Name of the type.</param>
    /// <param name="ratedW">Rated power, in W. Range: above 0 to 2,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rating is outside its range.</exception>
    public ModuleType(string name, double ratedW)
    {
        ArgumentNullException.ThrowIfNull(name);
        Name = name;
        RatedW = Require.Within(ratedW, 0.1, 2000, "W per module; 0.27 kW is written 270");
    }

    /// <summary>Name of the type.</summary>
    public string Name { get; }

    /// <summary>Rated power. Unit: W.</summary>
    public double RatedW { get; }

    /// <summary>Open-circuit voltage. Unit: V.</summary>
    public double? VocV { get; init => field = ModuleChecks.Voltage(value); }

    /// <summary>Voltage at rated power. Unit: V. Below <see cref="VocV"/>.</summary>
    public double? VmpV { get; init => field = ModuleChecks.Voltage(value); }

    /// <summary>Short-circuit current. Unit: A.</summary>
    public double? IscA { get; init => field = ModuleChecks.Current(value); }

    /// <summary>Current at rated power. Unit: A. Below <see cref="IscA"/>.</summary>
    public double? ImpA { get; init => field = ModuleChecks.Current(value); }

    /// <summary>Change of power with cell temperature, γ. Unit: fraction per K. Range: −0.01 to 0. Default: −0.0040, usual for older crystalline silicon.</summary>
    public double PowerPerK { get; init => field = ModuleChecks.Falling(value)!.Value; } = -0.0040;

    /// <summary>Change of open-circuit voltage with cell temperature, β. Unit: fraction per K. Range: −0.01 to 0.</summary>
    public double? VocPerK { get; init => field = ModuleChecks.Falling(value); }

    /// <summary>Change of operating voltage with cell temperature. Unit: fraction per K. Range: −0.01 to 0. Where unknown, γ stands in, and the check says so.</summary>
    public double? VmpPerK { get; init => field = ModuleChecks.Falling(value); }

    /// <summary>Change of short-circuit current with cell temperature, α. Unit: fraction per K. Range: 0 to 0.003.</summary>
    public double? IscPerK { get; init => field = ModuleChecks.Rising(value); }

    /// <summary>Area. Unit: m².</summary>
    public double? AreaM2 { get; init; }

    /// <summary>Cell temperature in the open at 800 W/m², 20 °C and 1 m/s wind (NOCT). Unit: °C. Range: 35 to 60. Default: 45.</summary>
    public double NoctC { get; init => field = Require.Within(value, 35, 60, "°C at 800 W/m² and 20 °C air", nameof(NoctC)); } = 45;

    /// <summary>Share of efficiency lost at 200 W/m². Unit: fraction. Range: 0 to 0.3. Default: 0.03.</summary>
    public double LossAt200Wm2 { get; init => field = Require.Within(value, 0, 0.3, "a fraction; 3 % is written 0.03", nameof(LossAt200Wm2)); } = 0.03;

    /// <summary>Highest voltage of the string that the maker allows. Unit: V.</summary>
    public double? HighestSystemV { get; init => field = ModuleChecks.Voltage(value); }

    /// <summary>Largest fuse in series that the maker allows. Unit: A.</summary>
    public double? LargestFuseA { get; init => field = ModuleChecks.Current(value); }

    /// <summary>How its power falls with age, on the module's own clock. Default: <see cref="SolarEconomics.Ageing.PublishedMedian"/>.</summary>
    public Ageing Ageing { get; init; } = Ageing.PublishedMedian;

    /// <summary>What the maker promises of its power; <see langword="null"/> where unknown or lapsed, as it does with many second-hand modules.</summary>
    public Warranty? Warranty { get; init; }

    /// <summary>What cannot be true of a module, in words; empty where nothing contradicts.</summary>
    public IReadOnlyList<string> Contradictions() => ModuleChecks.Contradictions(this);
}
