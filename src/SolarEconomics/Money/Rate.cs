using System.Globalization;

namespace SolarEconomics;

/// <summary>A rate of interest, discount or growth: effective per year, and either nominal or real.</summary>
/// <remarks>
/// A fraction, so 5 % is 0.05. A number of 1 or more is asked back instead of guessed at: whoever means 500 % writes
/// <see cref="NominalPercent"/>. The <c>default</c> is 0 a year, nominal.
/// </remarks>
public readonly record struct Rate
{
    private Rate(double perYear, bool isReal) => (PerYear, IsReal) = (perYear, isReal);

    /// <summary>Effective rate per year as a fraction. Range: above -1.</summary>
    public double PerYear { get; }

    /// <summary>Whether the rate is free of inflation (real) or contains it (nominal).</summary>
    public bool IsReal { get; }

    /// <summary>A nominal rate: it contains inflation and goes with money of the day.</summary>
    /// <param name="perYear">Effective per year, as a fraction. Range: above -1, below 1; 5 % is written 0.05.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, -1 or less, or 1 or more.</exception>
    public static Rate Nominal(double perYear) => new(Asked(perYear), isReal: false);

    /// <summary>A real rate: it is free of inflation and goes with the money of one named year.</summary>
    /// <param name="perYear">Effective per year, as a fraction. Range: above -1, below 1; 3 % is written 0.03.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, -1 or less, or 1 or more.</exception>
    public static Rate Real(double perYear) => new(Asked(perYear), isReal: true);

    /// <summary>A nominal rate in per cent, for rates that would be asked back as a fraction.</summary>
    /// <param name="percentPerYear">Effective per year, in per cent. Range: above -100, finite; 5 % is written 5.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number above -100.</exception>
    public static Rate NominalPercent(double percentPerYear) => new(Unbounded(percentPerYear / 100), isReal: false);

    /// <summary>A real rate in per cent, for rates that would be asked back as a fraction.</summary>
    /// <param name="percentPerYear">Effective per year, in per cent. Range: above -100, finite; 3 % is written 3.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number above -100.</exception>
    public static Rate RealPercent(double percentPerYear) => new(Unbounded(percentPerYear / 100), isReal: true);

    /// <summary>The effective rate of a quoted one: 6 % a year payable monthly is 6.1678 % effective.</summary>
    /// <param name="quotedPerYear">Rate as quoted per year, a fraction. Range: 0 to below 1.</param>
    /// <param name="timesPerYear">How often interest is added. Range: 1 to 366.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <remarks>Equation: r = (1 + q/m)ᵐ - 1. Source: money-2.</remarks>
    public static Rate Quoted(double quotedPerYear, int timesPerYear)
    {
        Asked(quotedPerYear);
        Require.Within(timesPerYear, 1, 366, "times a year");
        return new Rate(Math.Pow(1 + quotedPerYear / timesPerYear, timesPerYear) - 1, isReal: false);
    }

    /// <summary>The rate per period that compounds to this one in a year.</summary>
    /// <param name="periodsPerYear">Periods in a year: 12 for months. Range: above 0.</param>
    /// <remarks>Equation: i = (1 + r)^(1/m) - 1. It is not r/m. Source: money-2.</remarks>
    public double PerPeriod(double periodsPerYear) =>
        Math.Pow(1 + PerYear, 1 / Require.Within(periodsPerYear, 1e-6, 1e6, "periods a year")) - 1;

    /// <summary>This nominal rate without inflation.</summary>
    /// <param name="inflationPerYear">Inflation per year, a fraction. Range: above -1, below 1.</param>
    /// <exception cref="BasisMismatchException">The rate is real already.</exception>
    /// <remarks>Equation: (1 + real) = (1 + nominal) / (1 + inflation), not the difference. Source: money-3 (Fisher).</remarks>
    public Rate ToReal(double inflationPerYear) => IsReal
        ? throw Throw.AlreadyReal(this)
        : new Rate((1 + PerYear) / (1 + Asked(inflationPerYear)) - 1, isReal: true);

    /// <summary>This real rate with inflation added.</summary>
    /// <param name="inflationPerYear">Inflation per year, a fraction. Range: above -1, below 1.</param>
    /// <exception cref="BasisMismatchException">The rate is nominal already.</exception>
    /// <remarks>Equation: (1 + nominal) = (1 + real) · (1 + inflation). Source: money-3 (Fisher).</remarks>
    public Rate ToNominal(double inflationPerYear) => IsReal
        ? new Rate((1 + PerYear) * (1 + Asked(inflationPerYear)) - 1, isReal: false)
        : throw Throw.AlreadyNominal(this);

    /// <summary>Prints <c>5.00 % a year, nominal</c> in invariant form.</summary>
    public override string ToString() =>
        (PerYear * 100).ToString("0.00", CultureInfo.InvariantCulture) + " % a year, " + (IsReal ? "real" : "nominal");

    /// <summary>A rate that a solver found: any size, of the kind of the money it was found from.</summary>
    internal static Rate Solved(double perYear, bool isReal = false) => new(Unbounded(perYear), isReal);

    /// <summary>The guard for every rate a person types: 5 is asked back, not taken for 500 %.</summary>
    internal static double Asked(double perYear) =>
        perYear is > -1 and < 1 ? perYear : throw Throw.RateAskedBack(perYear);

    /// <summary>The same guard for a rate per month or another period of a loan.</summary>
    internal static double AskedPerPeriod(double perPeriod) =>
        perPeriod is > -1 and < 1 ? perPeriod : throw Throw.PeriodRateAskedBack(perPeriod);

    private static double Unbounded(double perYear) =>
        perYear > -1 && double.IsFinite(perYear) ? perYear : throw Throw.RateAskedBack(perYear);
}
