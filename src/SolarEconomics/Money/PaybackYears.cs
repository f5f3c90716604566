namespace SolarEconomics;

/// <summary>When a running sum of yearly amounts comes back to 0, in years from the start of year 0.</summary>
/// <param name="First">First time it reaches 0 or above; <see langword="null"/> where it never does.</param>
/// <param name="Lasting">Last time it rises to 0 or above, where it also ends there; <see langword="null"/> where it ends below.</param>
/// <param name="RunningSums">Sum after each year, year 0 first.</param>
/// <remarks>Inside a year the amount is taken to arrive evenly. Later negative years make the two times differ.</remarks>
public sealed record PaybackYears(double? First, double? Lasting, IReadOnlyList<double> RunningSums)
{
    /// <summary>The sum after the last year; below 0 it says what is short at the horizon.</summary>
    public double AtEnd => RunningSums[^1];
}
