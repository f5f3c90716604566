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

    /// <summary>Reads a step. A counter near the top of a register of whole decades that starts again near 0 ran over; any other step back is a reset to 0.</summary>
    internal static CounterStep Between(double fromKwh, double toKwh)
    {
        if (toKwh >= fromKwh) return new(toKwh - fromKwh, false, "");
        for (var size = 1_000.0; size <= 1e9; size *= 10)
        {
            if (fromKwh >= size || size - fromKwh > size * NearTop || toKwh > size * NearTop) continue;
            return new(size - fromKwh + toKwh, true, string.Create(CultureInfo.InvariantCulture,
                $"a rising counter; it is read as a register of {size:0} kWh that ran over, which adds {size - fromKwh + toKwh:0.###} kWh (a reset would add {toKwh:0.###})"));
        }
        return new(toKwh, true, string.Create(CultureInfo.InvariantCulture,
            $"a rising counter; it is read as a reset to 0, which adds {toKwh:0.###} kWh; what it counted between the last state and the reset is unknown"));
    }
}
