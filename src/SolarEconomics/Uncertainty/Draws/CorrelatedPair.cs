namespace SolarEconomics;

/// <summary>Two inputs that move together.</summary>
/// <param name="First">Name of one input.</param>
/// <param name="Second">Name of the other.</param>
/// <param name="Correlation">Correlation of their normal scores. Range: −1 to 1; above 0 where both tend to be high together.</param>
/// <remarks>For bell curves this is the usual correlation; for other shapes it is close to the rank correlation. Source: stat-5.</remarks>
public sealed record CorrelatedPair(string First, string Second, double Correlation)
{
    /// <summary>Correlation of their normal scores. Range: −1 to 1.</summary>
    public double Correlation { get; } = Require.Within(Correlation, -1, 1, "correlation");
}
