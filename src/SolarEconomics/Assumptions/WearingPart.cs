using NodaTime;

namespace SolarEconomics;

/// <summary>A part that fails at an age nobody knows, and is then replaced by its like: an inverter, a controller, a battery, a fan.</summary>
/// <param name="Part">The part, in words.</param>
/// <param name="Cost">What one replacement costs at today's prices, fitted, after what a warranty pays. Unit: the site's currency.</param>
/// <param name="Life">How long such parts last. Unit: years.</param>
/// <param name="InService">First day of the one at work now; it has lasted until the records end.</param>
public sealed record WearingPart(string Part, decimal Cost, WeibullDistribution Life, LocalDate InService)
{
    /// <summary>Replacements expected in each step of a span, the part at work counted with the age it has reached.</summary>
    /// <param name="ageYears">Age at the start of the span.</param>
    /// <param name="stepYears">Length of a step in years.</param>
    /// <param name="steps">Number of steps.</param>
    /// <remarks>Renewal: m(k) = f₀(k) + Σ f(j) m(k − j), f the share that fails in a step, f₀ the same for the part that has lasted until now. Source: stat-6.</remarks>
    internal double[] ExpectedFailures(double ageYears, double stepYears, int steps)
    {
        var fresh = new double[steps];
        for (var k = 0; k < steps; k++) fresh[k] = Life.ShareBelow((k + 1) * stepYears) - Life.ShareBelow(k * stepYears);
        var survived = 1 - Life.ShareBelow(ageYears);
        var expected = new double[steps];
        for (var k = 0; k < steps; k++)
        {
            var first = survived > 0 ? (Life.ShareBelow(ageYears + ((k + 1) * stepYears)) - Life.ShareBelow(ageYears + (k * stepYears))) / survived : k == 0 ? 1 : 0;
            expected[k] = first;
            for (var j = 0; j <= k; j++) expected[k] += fresh[j] * (j == k ? 0 : expected[k - j - 1]);
        }
        return expected;
    }

    /// <summary>Years until the one at work fails, for a standard normal score: low scores fail early.</summary>
    internal double YearsLeft(double ageYears, double score)
    {
        var share = Math.Clamp(MathNet.Numerics.Distributions.Normal.CDF(0, 1, score), 0, 1 - 1e-16);
        var failed = Life.ShareBelow(ageYears);
        return Math.Max(0, Life.Quantile(Math.Min(failed + (share * (1 - failed)), 1 - 1e-16)) - ageYears);
    }
}
