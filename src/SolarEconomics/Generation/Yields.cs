namespace SolarEconomics;

/// <summary>Yields and performance ratio of a span of time.</summary>
/// <param name="AcKwh">Energy at AC, in kWh. Curtailed and clipped energy is in no counter: leave such intervals out of both figures, or state them.</param>
/// <param name="RatedKwp">Rated power, in kWp. Above 0.</param>
/// <param name="PlaneKwhM2">Light on the plane, in kWh/m². 0 or more.</param>
/// <remarks>Source: gen-7. The <c>default</c> has no plant and no ratio.</remarks>
public readonly record struct Yields(double AcKwh, double RatedKwp, double PlaneKwhM2)
{
    /// <summary>Final yield: hours at rated power that would make the same energy. Equation: kWh / kWp.</summary>
    public double FinalHours => RatedKwp > 0 ? AcKwh / RatedKwp : 0;

    /// <summary>Reference yield: hours of 1 kW/m² that would bring the same light. Equation: kWh/m² over 1 kW/m².</summary>
    public double ReferenceHours => PlaneKwhM2;

    /// <summary>Performance ratio: final over reference yield; 0 without light.</summary>
    public double PerformanceRatio => ReferenceHours > 0 ? FinalHours / ReferenceHours : 0;

    /// <summary>Performance ratio as it would be at 25 °C cell.</summary>
    /// <param name="powerPerK">Change of power with cell temperature, fraction per K. Range: −0.01 to 0.</param>
    /// <param name="meanCellC">Mean cell temperature, weighted by light, in °C.</param>
    /// <remarks>Equation: PR / (1 + γ (cell − 25)). Source: gen-7.</remarks>
    public double AtTwentyFiveDegrees(double powerPerK, double meanCellC) =>
        PerformanceRatio / (1 + (Require.Within(powerPerK, -0.01, 0, "fraction per K; −0.40 %/°C is written −0.0040") * (Require.Within(meanCellC, -60, 120, "°C") - 25)));
}
