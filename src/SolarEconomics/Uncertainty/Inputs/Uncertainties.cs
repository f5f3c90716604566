namespace SolarEconomics;

/// <summary>All that is not known for sure of an outlook: inputs with their odds, which of them move together, and the weather of each year.</summary>
public sealed record Uncertainties
{
    /// <summary>Inputs with their odds, drawn once for all years. Each input once.</summary>
    public IReadOnlyList<UncertainInput> Inputs { get; init; } = [];

    /// <summary>Inputs that move together, by name. Default: none. Import and feed-in prices usually do.</summary>
    public IReadOnlyList<CorrelatedPair> Pairs { get; init; } = [];

    /// <summary>Spread of each year's generation by itself, relative to it. Range: 0 to 0.5. Default: 0.05, about the spread of yearly sunshine; common practice, no source.</summary>
    public double WeatherSd { get; init; } = 0.05;

    internal Uncertainties Checked()
    {
        Require.Within(WeatherSd, 0, 0.5, "spread of yearly generation; 5 % is written 0.05");
        foreach (var twice in Inputs.GroupBy(i => i.Input.Name, StringComparer.Ordinal).Where(g => g.Count() > 1)) throw Throw.InputTwice(twice.Key);
        foreach (var (input, distribution) in Inputs)
        {
            var middle = distribution.Quantile(0.5);
            if (middle >= input.Lowest && middle <= input.Highest) continue;
            throw input.Unit == InputUnit.SharePerYear ? Throw.RateAsPercent(input.Name, middle)
                : Throw.ReachesTooFar(input.Name, middle, FormattableString.Invariant($"one from {input.Lowest} to {input.Highest}"));
        }
        return this;
    }
}
