namespace SolarEconomics;

/// <summary>Ageing by comparing each value with the one a year earlier: the season falls out, weather does not.</summary>
/// <remarks>Rates are fractions a year, below 0 where output falls. Source: gen-8.</remarks>
public static class YearOnYear
{
    /// <summary>Rates of all pairs a year apart, relative to the earlier value.</summary>
    /// <param name="values">Values at equal distances, in any unit of energy. Censored, filled or missing ones are <see langword="null"/>: their pairs are left out.</param>
    /// <param name="perYear">Values per year: 12 for months, 1 for years.</param>
    /// <remarks>Equation: (yₘ₊ₙ − yₘ) / yₘ, n values a year.</remarks>
    public static double[] Rates(IReadOnlyList<double?> values, int perYear)
    {
        ArgumentNullException.ThrowIfNull(values);
        return Pairs(values, perYear, earlier => values[earlier]!.Value);
    }

    /// <summary>Rates of all pairs a year apart, relative to the initial level of their season.</summary>
    /// <param name="values">Values at equal distances. Censored, filled or missing ones are <see langword="null"/>.</param>
    /// <param name="perYear">Values per year: 12 for months, 1 for years.</param>
    /// <param name="initial">Initial level of each season, <paramref name="perYear"/> values above 0, the first belonging to the first value.</param>
    /// <remarks>Equation: (yₘ₊ₙ − yₘ) / initial of the season. For a loss linear of the initial power every pair gives the same rate.</remarks>
    /// <exception cref="ArgumentException">The initial levels are not one per season, or not above 0.</exception>
    public static double[] RatesOfInitial(IReadOnlyList<double?> values, int perYear, IReadOnlyList<double> initial)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(initial);
        if (initial.Count != perYear || initial.Any(level => !(level > 0))) throw Throw.InitialLevels(initial.Count, perYear);
        return Pairs(values, perYear, earlier => initial[earlier % perYear]);
    }

    private static double[] Pairs(IReadOnlyList<double?> values, int perYear, Func<int, double> level)
    {
        Require.Within(perYear, 1, 366, "values a year");
        var rates = new List<double>();
        for (var m = 0; m + perYear < values.Count; m++)
        {
            if (values[m] is { } earlier && values[m + perYear] is { } later && earlier > 0 && double.IsFinite(earlier) && double.IsFinite(later))
                rates.Add((later - earlier) / level(m));
        }
        return [.. rates];
    }
}
