namespace SolarEconomics;

/// <summary>Rounds parts so that they still sum to the rounded total: Hamilton's method of largest remainders.</summary>
internal static class LargestRemainder
{
    /// <param name="parts">Exact parts of either sign.</param>
    /// <param name="digits">Digits after the point, 2 for cents.</param>
    /// <returns>Rounded parts that sum to the rounded sum of <paramref name="parts"/>.</returns>
    internal static decimal[] Round(IReadOnlyList<decimal> parts, int digits)
    {
        var unit = 1m;
        for (var k = 0; k < digits; k++) unit /= 10;
        var total = Math.Round(parts.Sum(), digits, MidpointRounding.AwayFromZero);
        var rounded = parts.Select(p => Math.Floor(p / unit) * unit).ToArray();
        var missing = (int)Math.Round((total - rounded.Sum()) / unit);
        foreach (var i in Enumerable.Range(0, parts.Count).OrderByDescending(i => parts[i] - rounded[i]).ThenBy(i => i).Take(missing))
            rounded[i] += unit;
        return rounded;
    }
}
