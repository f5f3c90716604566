using System.Globalization;

namespace SolarEconomics;

/// <summary>What a record tells about ageing: its own rate with an honest range, and the rate to use, which is the published one moved by the record.</summary>
/// <remarks>Rates are fractions of the initial level a year, below 0 where output falls. Immutable, so safe to share between threads.</remarks>
public sealed partial record AgeingEstimate : IFinding
{
    /// <summary>Median of nearly 2,000 published rates: −0.5 % a year. Source: ageing-1.</summary>
    public const double PublishedRate = -0.005;

    /// <summary>Spread of plants around the published median taken here: 0.4 % a year. An assumption, as the source's abstract gives none.</summary>
    public const double PublishedSpread = 0.004;

    private const double NormalNinetyFive = 1.959963984540054;

    // √(π/2): how much wider a median's error is than a mean's, for a bell curve.
    private const double MedianOverMean = 1.2533141373155;

    private AgeingEstimate(string method, string correction, int years, double recordRate, ConfidenceInterval recordInterval, double scatter)
    {
        (Method, WeatherCorrection, Years) = (method, correction, years);
        (RecordRate, RecordInterval, Scatter) = (recordRate, recordInterval, scatter);
        // Two estimates weighted by their precision. The weighting knows no degrees of freedom, so a short record's wide range is carried over whole, as
        // if it were ± 1.96 errors of a long one; a record without scatter stands alone.
        var own = recordInterval.HalfWidth / NormalNinetyFive;
        var (ownSquare, priorSquare) = (own * own, PublishedSpread * PublishedSpread);
        RecordWeight = priorSquare / (priorSquare + ownSquare);
        Rate = (RecordWeight * recordRate) + ((1 - RecordWeight) * PublishedRate);
        var half = NormalNinetyFive * Math.Sqrt(ownSquare * RecordWeight);
        Interval = new ConfidenceInterval(Rate - half, Rate + half, 0.95);
    }

    /// <summary>How the record's own rate was found.</summary>
    public string Method { get; }

    /// <summary>Weather correction in the values, or that there is none.</summary>
    public string WeatherCorrection { get; }

    /// <summary>Years of record used.</summary>
    public int Years { get; }

    /// <summary>Rate of the record alone, a year.</summary>
    public double RecordRate { get; }

    /// <summary>95 % range of the record alone.</summary>
    public ConfidenceInterval RecordInterval { get; }

    /// <summary>Scatter of the years around the record's line, relative.</summary>
    public double Scatter { get; }

    /// <summary>Weight of the record against the published rate. Range: 0 to 1.</summary>
    public double RecordWeight { get; }

    /// <summary>The rate to use: the published one, moved by the record as far as the record can tell.</summary>
    public double Rate { get; }

    /// <summary>95 % range of <see cref="Rate"/>.</summary>
    public ConfidenceInterval Interval { get; }

    /// <summary>Whether the record alone tells its rate to half a per cent a year.</summary>
    public bool RecordTells => RecordInterval.HalfWidth <= 0.005;

    /// <summary>Years of record that would tell the rate to half a per cent a year at this scatter.</summary>
    public int YearsToTell => YearsNeeded(Scatter, 0.005);

    /// <summary>The rate to use as a rule of ageing; a rising record is taken as no ageing.</summary>
    public Ageing AsAgeing => Ageing.Linear(Math.Max(0, -Rate));

    /// <summary>Estimate from yearly totals by a straight line, neighbours' likeness allowed for.</summary>
    /// <param name="yearlyKwh">One value per whole year, in order. Censored years are <see langword="null"/> and left out.</param>
    /// <param name="weatherCorrection">What was done about weather, in words; <see langword="null"/> says that nothing was.</param>
    /// <exception cref="ArgumentException">Fewer than three years, or nothing but one value.</exception>
    public static AgeingEstimate ByRegression(IReadOnlyList<double?> yearlyKwh, string? weatherCorrection = null)
    {
        ArgumentNullException.ThrowIfNull(yearlyKwh);
        var kept = Enumerable.Range(0, yearlyKwh.Count).Where(i => yearlyKwh[i] is not null).ToArray();
        double[] x = [.. kept.Select(i => (double)i)];
        double[] y = [.. kept.Select(i => yearlyKwh[i]!.Value)];
        var fit = LineFit.Of(x, y);
        if (!(fit.Intercept > 0)) throw Throw.NoInitialLevel(fit.Intercept);
        var interval = fit.SlopeIntervalWithAutocorrelation();
        return new AgeingEstimate("straight line through yearly totals", weatherCorrection ?? "none", kept.Length, fit.Slope / fit.Intercept,
            new ConfidenceInterval(interval.Low / fit.Intercept, interval.High / fit.Intercept, 0.95), fit.ResidualSd / fit.Intercept);
    }

    /// <summary>Estimate from months by the median of all pairs a year apart.</summary>
    /// <param name="monthlyKwh">One value per month, in order. Censored months are <see langword="null"/> and left out.</param>
    /// <param name="weatherCorrection">What was done about weather, in words; <see langword="null"/> says that nothing was.</param>
    /// <remarks>The range treats the pairs of one year as one draw, because a sunny year lifts all its months together:
    /// ± t · √(π/2) · sd of the yearly medians / √(their number). Wider than that of a line, whose every year weighs in; a line is the sharper tool where
    /// years are whole, this one where months are missing. Source: gen-8.</remarks>
    /// <exception cref="ArgumentException">Fewer than three whole years.</exception>
    public static AgeingEstimate ByYearOnYear(IReadOnlyList<double?> monthlyKwh, string? weatherCorrection = null)
    {
        ArgumentNullException.ThrowIfNull(monthlyKwh);
        var years = monthlyKwh.Count / 12;
        if (years < 3) throw Throw.TooFewYears(monthlyKwh.Count);
        var median = Statistics.Median(YearOnYear.Rates(monthlyKwh, 12));
        double[] yearly = [.. Enumerable.Range(0, years - 1)
            .Select(y => YearOnYear.Rates([.. monthlyKwh.Skip(12 * y).Take(24)], 12))
            .Where(rates => rates.Length > 0)
            .Select(rates => Statistics.Median(rates))];
        if (yearly.Length < 2) throw Throw.TooFewYears(monthlyKwh.Count);
        var spread = Statistics.StandardDeviation(yearly);
        var half = StudentT.TwoSidedQuantile(0.95, yearly.Length - 1) * MedianOverMean * spread / Math.Sqrt(yearly.Length);
        // A rate is the difference of two years, so its scatter is √2 times that of a year.
        return new AgeingEstimate("median of months a year apart", weatherCorrection ?? "none", years, median,
            new ConfidenceInterval(median - half, median + half, 0.95), spread / Math.Sqrt(2));
    }

    /// <summary>How far a yearly slope from so many years is uncertain, both ways, at 95 %.</summary>
    /// <param name="yearlyScatter">Independent scatter of yearly totals, relative: 4 % is usual weather. Range: 0 to 1.</param>
    /// <param name="years">Years of record. Range: 3 to 100.</param>
    /// <remarks>Equation: t · σ / √(n (n² − 1) / 12), t with n − 2 degrees of freedom. Source: gen-9.</remarks>
    public static double HalfWidth(double yearlyScatter, int years)
    {
        Require.Fraction(yearlyScatter);
        double n = Require.Within(years, 3, 100, "years; a slope with an error needs three");
        return StudentT.TwoSidedQuantile(0.95, n - 2) * yearlyScatter / Math.Sqrt(n * ((n * n) - 1) / 12);
    }

    /// <summary>Fewest years of record that tell a yearly slope to a half-width at 95 %; 100 where even these do not.</summary>
    /// <param name="yearlyScatter">Independent scatter of yearly totals, relative. Range: 0 to 1.</param>
    /// <param name="halfWidth">Half-width wanted, a year: 0.005 is half a per cent. Above 0.</param>
    public static int YearsNeeded(double yearlyScatter, double halfWidth)
    {
        Require.Within(halfWidth, 1e-9, 1, "a fraction a year; 0.5 % is written 0.005");
        for (var years = 3; years < 100; years++)
            if (HalfWidth(yearlyScatter, years) <= halfWidth) return years;
        return 100;
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        if (Years < FewestYears) return SayTooShort(culture);
        var own = string.Create(culture, $"The record alone says {RecordRate * 100:+0.00;-0.00} % a year, somewhere from {RecordInterval.Low * 100:+0.0;-0.0} to {RecordInterval.High * 100:+0.0;-0.0} %.");
        var tells = RecordTells
            ? "That is narrow enough to stand by itself."
            : string.Create(culture, $"{Years} years are too short to tell; at this scatter {YearsToTell} years would tell to half a per cent.");
        return new Finding(
            string.Create(culture, $"{Rate * 100:+0.00;-0.00} % a year"),
            own + " " + tells)
        {
            Notes =
            [
                "Method: " + Method + ". Weather correction: " + WeatherCorrection + ".",
                string.Create(culture, $"The rate to use is the published median of {PublishedRate * 100:0.0} % a year, moved by the record with a weight of {RecordWeight * 100:0} %. The spread of plants around it, {PublishedSpread * 100:0.0} %, is an assumption."),
                "Censored months and years are left out: what a full battery or an export limit held back is not age.",
            ],
        };
    }
}
