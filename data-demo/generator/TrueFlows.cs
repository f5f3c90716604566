using NodaTime;

namespace AlderWeir;

/// <summary>What really happened at Alder Weir, half hour by half hour, holes and faults included. No record shows it; tests compare with it.</summary>
/// <param name="start">Start of half hour 0.</param>
/// <param name="count">Number of half hours.</param>
/// <remarks>All energies are kWh at the AC board unless said otherwise. In every half hour, to better than 1e-9 kWh:
/// generation + delivered + imported = wanted + standby + stored + exported;
/// generation = used directly + to standby + stored + exported;
/// stored = delivered + battery loss + rise of the stock.</remarks>
public sealed class TrueFlows(Instant start, int count)
{
    /// <summary>Start of half hour 0.</summary>
    public Instant Start => start;

    /// <summary>Number of half hours.</summary>
    public int Count => count;

    /// <summary>Names of the arrays, in the order of <see cref="Generation"/>.</summary>
    public IReadOnlyList<string> ArrayNames { get; } = [.. Arrays.All.Select(a => a.Name)];

    /// <summary>What each array gave to the board, holes of the record included.</summary>
    public IReadOnlyList<double[]> Generation { get; } = [new double[count], new double[count], new double[count]];

    /// <summary>What each array could have given beside that, and was throttled.</summary>
    public IReadOnlyList<double[]> Curtailed { get; } = [new double[count], new double[count], new double[count]];

    /// <summary>What each array could have given beside that had nothing failed in it: in five-minute steps, before any throttling.</summary>
    public IReadOnlyList<double[]> Failed { get; } = [new double[count], new double[count], new double[count]];

    /// <summary>The load of house and workshop, with the plant or without it.</summary>
    public double[] Wanted { get; } = new double[count];

    /// <summary>What the plant's own electronics drew.</summary>
    public double[] Standby { get; } = new double[count];

    /// <summary>Generation used by the wanted load as it was made.</summary>
    public double[] UsedDirectly { get; } = new double[count];

    /// <summary>Generation taken by standby.</summary>
    public double[] GenerationToStandby { get; } = new double[count];

    /// <summary>Into the battery at its AC side; all of it generation.</summary>
    public double[] Stored { get; } = new double[count];

    /// <summary>Out of the battery at its AC side.</summary>
    public double[] Delivered { get; } = new double[count];

    /// <summary>The part of <see cref="Delivered"/> that the wanted load used; standby took the rest.</summary>
    public double[] UsedFromStorage { get; } = new double[count];

    /// <summary>From the grid, standby included.</summary>
    public double[] Imported { get; } = new double[count];

    /// <summary>To the grid.</summary>
    public double[] Exported { get; } = new double[count];

    /// <summary>Lost in the battery and its inverter.</summary>
    public double[] BatteryLoss { get; } = new double[count];

    /// <summary>Inside the battery at the end of the half hour, on the battery's side of its inverter.</summary>
    public double[] Stock { get; } = new double[count];

    /// <summary>Whether the battery stood full at some moment of the half hour.</summary>
    public bool[] BatteryFull { get; } = new bool[count];

    /// <summary>True share of the ground array's counted DC that reached AC.</summary>
    public double GroundDcToAc => Arrays.GroundDcToAc;
}
