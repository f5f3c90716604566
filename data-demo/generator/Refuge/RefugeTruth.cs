using NodaTime;

namespace AlderWeir;

/// <summary>What really happened at the refuge, half hour by half hour. No record shows it; tests compare with it.</summary>
/// <param name="start">Start of half hour 0.</param>
/// <param name="count">Number of half hours.</param>
/// <remarks>Whole watt-hours. In every half hour: array + generator + discharge = use + standby + charge + conversion loss.</remarks>
public sealed class RefugeTruth(Instant start, int count)
{
    /// <summary>Start of half hour 0.</summary>
    public Instant Start => start;

    /// <summary>Number of half hours.</summary>
    public int Count => count;

    /// <summary>From the array, counted in DC at its controller.</summary>
    public long[] ArrayWh { get; } = new long[count];

    /// <summary>What the array could have given beside that.</summary>
    public long[] CurtailedWh { get; } = new long[count];

    /// <summary>From the generator, AC at its terminals. No meter counts it.</summary>
    public long[] GeneratorWh { get; } = new long[count];

    /// <summary>Into the battery at its terminals.</summary>
    public long[] ChargeWh { get; } = new long[count];

    /// <summary>The part of <see cref="ChargeWh"/> that came from the generator through the charger.</summary>
    public long[] ChargedByGeneratorWh { get; } = new long[count];

    /// <summary>Out of the battery at its terminals.</summary>
    public long[] DischargeWh { get; } = new long[count];

    /// <summary>Used by the refuge, AC.</summary>
    public long[] UsedWh { get; } = new long[count];

    /// <summary>Wanted and not served, AC.</summary>
    public long[] UnservedWh { get; } = new long[count];

    /// <summary>Whether the generator started in the half hour.</summary>
    public bool[] Starts { get; } = new bool[count];

    /// <summary>Fuel burned by the engine: its own line, which is not that of the data sheet. Unit: litres.</summary>
    /// <param name="half">A half hour.</param>
    public double Litres(int half) => GeneratorWh[half] == 0 ? 0 : (0.5 * 0.085 * RefugeSite.GeneratorKw) + (0.262 * GeneratorWh[half] / 1000.0);

    /// <summary>Share of its first capacity that the battery still has.</summary>
    /// <param name="half">A half hour.</param>
    public double Health(int half) => RefugeSite.HealthAt(half);
}
