using System.Globalization;

namespace SolarEconomics;

/// <summary>The energy between two states of a counter.</summary>
/// <param name="Kwh">Energy counted between them.</param>
/// <param name="WentBack">Whether the later state is below the earlier one.</param>
/// <param name="Words">How a step back was read; empty otherwise.</param>
internal readonly record struct CounterStep(double Kwh, bool WentBack, string Words)
{
    /// <summary>A register is held to have run over where the way over its top is at most this share of its size.</summary>
    private const double NearTop = 0.02;

    /// <summary>Registers people have: whole decades of kWh, and 16 or 32 bits of Wh, 0.01, 0.1 or 1 kWh. Unit: kWh.</summary>
    private static readonly double[] Sizes =
        [65.536, 655.36, 1e3, 6_553.6, 1e4, 65_536, 1e5, 1e6, 4_294_967.296, 1e7, 42_949_672.96, 1e8, 429_496_729.6, 1e9, 4_294_967_296];

    /// <summary>Reads a step. A counter near the top of such a register that starts again near 0 ran over; any other step back is a reset to 0.</summary>
    internal static CounterStep Between(double fromKwh, double toKwh)
    {
        if (toKwh >= fromKwh) return new(toKwh - fromKwh, false, "");
        foreach (var size in Sizes)
        {
            if (fromKwh >= size || size - fromKwh > size * NearTop || toKwh > size * NearTop) continue;
            return new(size - fromKwh + toKwh, true, string.Create(CultureInfo.InvariantCulture,
                $"a rising counter; it is read as a register of {size:0.###} kWh that ran over, which adds {size - fromKwh + toKwh:0.###} kWh (a reset would add {toKwh:0.###})"));
        }
        return new(toKwh, true, string.Create(CultureInfo.InvariantCulture,
            $"a rising counter; it is read as a reset to 0, which adds {toKwh:0.###} kWh; what it counted between the last state and the reset is unknown"));
    }
}
