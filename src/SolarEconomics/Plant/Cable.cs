namespace SolarEconomics;

/// <summary>The cable from an array to its device: two copper conductors of one section that carry all its strings. Where each string has a cable of its own, describe each as an array.</summary>
/// <param name="LengthM">Length one way, in m. Range: 0 to 1,000.</param>
/// <param name="SquareMm">Section of a conductor, in mm². Range: 0.5 to 500.</param>
/// <remarks>Immutable, so safe to share between threads. What section is allowed is the local wiring code's matter, not a loss's.</remarks>
public sealed record Cable(double LengthM, double SquareMm)
{
    // Annealed copper at 20 °C, and its rise per K.
    private const double OhmMm2PerM = 1 / 58.0;
    private const double RisePerK = 0.00393;

    /// <summary>Length one way. Unit: m.</summary>
    public double LengthM { get; init => field = Long(value); } = Long(LengthM);

    /// <summary>Section of a conductor. Unit: mm².</summary>
    public double SquareMm { get; init => field = Thick(value); } = Thick(SquareMm);

    /// <summary>Resistance out and back. Unit: Ω.</summary>
    /// <param name="conductorC">Temperature of the conductor, in °C. Range: −60 to 120. Default: 45, a warm day (an assumption).</param>
    /// <remarks>Equation: 2 · ρ · length / section · (1 + 0.00393 (t − 20)), ρ = 1/58 Ω mm²/m. Source: plant-1.</remarks>
    public double Ohm(double conductorC = 45) =>
        2 * OhmMm2PerM * LengthM / SquareMm * (1 + (RisePerK * (Require.Within(conductorC, -60, 120, "°C") - 20)));

    /// <summary>Share of the rated power lost in it; <see langword="null"/> where the module's operating voltage or current is unknown.</summary>
    /// <param name="array">The array.</param>
    /// <remarks>Equation: R · I / U at the best point. At less power the share falls in proportion.</remarks>
    public double? LossAtRated(ModuleArray array)
    {
        ArgumentNullException.ThrowIfNull(array);
        return array.Module is { ImpA: { } imp, VmpV: { } vmp } ? Ohm() * imp * array.Strings / (vmp * array.InSeries) : null;
    }

    private static double Long(double lengthM) => Require.Within(lengthM, 0, 1000, "m, one way", nameof(LengthM));

    private static double Thick(double squareMm) => Require.Within(squareMm, 0.5, 500, "mm²", nameof(SquareMm));
}
