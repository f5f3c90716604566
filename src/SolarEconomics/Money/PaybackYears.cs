using System.Globalization;

namespace SolarEconomics;

/// <summary>When a running sum of yearly amounts comes back to 0, in years from the start of year 0.</summary>
/// <param name="First">First time it reaches 0 or above; <see langword="null"/> where it never does.</param>
/// <param name="Lasting">Last time it rises to 0 or above, where it also ends there; <see langword="null"/> where it ends below.</param>
/// <param name="RunningSums">Sum after each year, year 0 first.</param>
/// <remarks>Inside a year the amount is taken to arrive evenly. Later negative years make the two times differ.</remarks>
public sealed record PaybackYears(double? First, double? Lasting, IReadOnlyList<double> RunningSums) : IFinding
{
    /// <summary>The sum after the last year; below 0 it says what is short at the horizon.</summary>
    public double AtEnd => RunningSums[^1];

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var last = Wording.Count(RunningSums.Count - 1, "year", culture);
        var left = Wording.Minus(AtEnd.ToString("#,0.00", culture));
        var (figure, words) = (First, Lasting) switch
        {
            (null, _) => ("Not paid back", $"within {last}: the sum after the last is {left}."),
            ({ } first, null) => ("Not paid back for good", $"within {last}: the sum reaches 0 after {Print(first)} years, falls below it again, and is {left} after the last."),
            ({ } first, { } lasting) when first == lasting => ($"{Print(lasting)} years", $"until what was paid has come back; the sum after {last} is {left}."),
            ({ } first, { } lasting) => ($"{Print(lasting)} years", $"until what was paid has come back for good. It reaches 0 first after {Print(first)} years and falls below again; after {last} the sum is {left}."),
        };
        return new Finding(figure, words)
        {
            Notes = ["Inside a year the amount is taken to arrive evenly. What comes after the last year is not counted."],
            Tables =
            [
                new FindingTable("Sum by year (unit of the amounts)", ["Year", "Sum"],
                    [.. RunningSums.Select((sum, year) => (IReadOnlyList<string>)[year.ToString(culture), Wording.Minus(sum.ToString("#,0.00", culture))])]),
            ],
        };

        string Print(double years) => years.ToString("0.0", culture);
    }
}
