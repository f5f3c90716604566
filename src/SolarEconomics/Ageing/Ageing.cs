using System.Globalization;

namespace SolarEconomics;

/// <summary>How the power of modules falls with their age. It acts on DC, before the inverter, on the module's own clock.</summary>
/// <remarks>
/// Three rules in use, and they differ: a straight line of the initial power, a compound loss of what is left, and either
/// of them after a first year of its own. The name of the rule is part of every result: print <see cref="ToString"/>.
/// Ages are years since the maker's date, or since the module's first day where that is unknown.
/// </remarks>
public sealed record Ageing
{
    /// <summary>Above this a loss is asked back: 0.6 was meant to be 0.6 %.</summary>
    private const double MostPerYear = 0.2;

    private Ageing(bool isCompound, double lossPerYear, double? firstYearLoss) =>
        (IsCompound, LossPerYear, FirstYearLoss) = (isCompound, lossPerYear, firstYearLoss);

    /// <summary>Whether each year loses a share of what is left (true) or of the initial power (false).</summary>
    public bool IsCompound { get; }

    /// <summary>Share lost per year, a fraction: 0.005 is 0.5 %.</summary>
    public double LossPerYear { get; }

    /// <summary>Share of the initial power lost evenly over the first year instead; <see langword="null"/> where the first year is like the others.</summary>
    public double? FirstYearLoss { get; }

    /// <summary>No ageing: what a straight line takes for granted.</summary>
    public static Ageing None { get; } = new(isCompound: true, 0, null);

    /// <summary>The published median of nearly 2,000 rates: 0.5 % a year, taken as compound. Use it where the record cannot tell.</summary>
    /// <remarks>Source: ageing-1.</remarks>
    public static Ageing PublishedMedian { get; } = Compound(0.005);

    /// <summary>Each year loses a share of what is left.</summary>
    /// <param name="lossPerYear">Share lost per year, a fraction. Range: 0 to 0.2; 0.6 % is written 0.006.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    /// <remarks>Equation: factor = (1 - d)^age. Source: ageing-2.</remarks>
    public static Ageing Compound(double lossPerYear) => new(isCompound: true, Loss(lossPerYear), null);

    /// <summary>Each year loses the same share of the initial power.</summary>
    /// <param name="lossPerYear">Share lost per year, a fraction. Range: 0 to 0.2; 0.6 % is written 0.006.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    /// <remarks>Equation: factor = 1 - d·age, not below 0. Source: ageing-2.</remarks>
    public static Ageing Linear(double lossPerYear) => new(isCompound: false, Loss(lossPerYear), null);

    /// <summary>The same rule after a first year with a loss of its own, as module warranties state it.</summary>
    /// <param name="firstYearLoss">Share of the initial power lost in the first year, a fraction. Range: 0 to 0.2; 2 % is written 0.02.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    /// <remarks>Inside the first year the loss falls evenly; warranties state its end only.</remarks>
    public Ageing WithFirstYear(double firstYearLoss) => new(IsCompound, LossPerYear, Loss(firstYearLoss));

    /// <summary>The same rule with another loss per year.</summary>
    /// <param name="lossPerYear">Share lost per year, a fraction. Range: 0 to 0.2; 0.6 % is written 0.006.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ageing WithLossPerYear(double lossPerYear) => new(IsCompound, Loss(lossPerYear), FirstYearLoss);

    /// <summary>Share of the initial power left at an age.</summary>
    /// <param name="ageYears">Age in years. Range: 0 to 200.</param>
    /// <returns>A fraction from 0 to 1; 1 at age 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative age, or one above 200 years.</exception>
    /// <remarks>Equation: (1 - d)^age, or 1 - d·age; with a first year f: 1 - f·age up to 1, then (1 - f)(1 - d)^(age - 1), or 1 - f - d·(age - 1). Source: ageing-2.</remarks>
    public double FactorAt(double ageYears)
    {
        Require.Within(ageYears, 0, 200, "years of age");
        if (FirstYearLoss is not { } first) return Later(1, ageYears);
        return ageYears <= 1 ? 1 - first * ageYears : Later(1 - first, ageYears - 1);
    }

    /// <summary>Share of the initial energy that a whole year yields, the factor taken at the year's start.</summary>
    /// <param name="year">Year of age, counted from 1. Range: 1 to 200.</param>
    /// <returns><see cref="FactorAt"/> of year - 1: year 1 yields 1.</returns>
    /// <remarks>The usual convention of yearly tables. Where months are added up use <see cref="MeanFactor"/>: at 0.5 % a year the two differ by a quarter of a per cent.</remarks>
    public double FactorOfYear(int year) => FactorAt(year - 1);

    /// <summary>Mean share of the initial power between two ages, for energy that arrives evenly.</summary>
    /// <param name="fromAgeYears">Age at the start, in years. Range: 0 to 200.</param>
    /// <param name="toAgeYears">Age at the end, in years. Range: <paramref name="fromAgeYears"/> to 200.</param>
    /// <returns>A fraction from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An age is out of range.</exception>
    /// <remarks>Equation: ∫ factor d(age) / (to - from), in closed form on both sides of the first birthday.</remarks>
    public double MeanFactor(double fromAgeYears, double toAgeYears)
    {
        Require.Within(fromAgeYears, 0, 200, "years of age");
        Require.Within(toAgeYears, fromAgeYears, 200, "years of age, not before the start");
        return toAgeYears == fromAgeYears
            ? FactorAt(fromAgeYears)
            : (SumTo(toAgeYears) - SumTo(fromAgeYears)) / (toAgeYears - fromAgeYears);
    }

    /// <summary>Prints the rule: <c>0.5 % a year of what is left, 2 % in the first year</c>.</summary>
    public override string ToString()
    {
        var rule = string.Create(CultureInfo.InvariantCulture,
            $"{LossPerYear * 100:0.###} % a year of {(IsCompound ? "what is left" : "the initial power")}");
        return FirstYearLoss is { } first ? rule + string.Create(CultureInfo.InvariantCulture, $", {first * 100:0.###} % in the first year") : rule;
    }

    private double Later(double start, double years) => IsCompound
        ? start * Math.Pow(1 - LossPerYear, years)
        : Math.Max(0, start - LossPerYear * years);

    /// <summary>∫ of the factor from age 0.</summary>
    private double SumTo(double age)
    {
        if (FirstYearLoss is not { } first) return LaterSum(1, age);
        return age <= 1 ? age - first * age * age / 2 : 1 - first / 2 + LaterSum(1 - first, age - 1);
    }

    private double LaterSum(double start, double years)
    {
        if (LossPerYear == 0) return start * years;
        // A loss too small to change 1 - d still has a logarithm.
        if (IsCompound) return start * Growth.OverPeriods(-LossPerYear, years) / Growth.LogOnePlus(-LossPerYear);
        var counted = Math.Min(years, start / LossPerYear);
        return (start - LossPerYear * counted / 2) * counted;
    }

    private static double Loss(double loss) => loss is >= 0 and <= MostPerYear ? loss : throw Throw.LossAskedBack(loss);
}
