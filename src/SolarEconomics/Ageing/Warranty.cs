using System.Globalization;

namespace SolarEconomics;

/// <summary>What a maker promises of a module's power, and for how long.</summary>
/// <param name="Promised">The curve promised.</param>
/// <param name="Years">Years from the maker's date. Range: 1 to 50.</param>
/// <remarks>A promise holds for the first owner in many cases, and a claim takes a measurement, months and freight: a floor only where it is honoured.</remarks>
public sealed record Warranty(Ageing Promised, int Years)
{
    private const double StepYears = 1 / 12.0;

    /// <summary>Years from the maker's date.</summary>
    public int Years { get; } = (int)Require.Within(Years, 1, 50, "years of warranty", nameof(Years));

    /// <summary>Share of the rating promised at an age; <see langword="null"/> once the warranty has ended.</summary>
    /// <param name="ageYears">Age in years. Range: 0 to 200.</param>
    public double? ShareAt(double ageYears) => ageYears < Years ? Promised.FactorAt(ageYears) : null;

    /// <summary>Share of the rating at an age where the maker makes up what falls below the promise.</summary>
    /// <param name="ageing">How the modules age.</param>
    /// <param name="ageYears">Age in years. Range: 0 to 200.</param>
    /// <remarks>Equation: max(factor, promised) while the warranty runs, then the factor.</remarks>
    public double Floor(Ageing ageing, double ageYears)
    {
        ArgumentNullException.ThrowIfNull(ageing);
        return Math.Max(ageing.FactorAt(ageYears), ShareAt(ageYears) ?? 0);
    }

    /// <summary>First age, to the month, at which modules that age so fall below the promise; <see langword="null"/> where they never do while it runs.</summary>
    /// <param name="ageing">How the modules age.</param>
    public double? FirstClaimYears(Ageing ageing)
    {
        ArgumentNullException.ThrowIfNull(ageing);
        for (var month = 0; month < Years * 12; month++)
            if (ageing.FactorAt(month * StepYears) < Promised.FactorAt(month * StepYears) - 1e-12) return month * StepYears;
        return null;
    }

    /// <summary>Prints <c>0.5 % a year of what is left, for 25 years</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Promised}, for {Years} years");
}
