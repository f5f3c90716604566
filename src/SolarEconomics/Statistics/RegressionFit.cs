using MathNet.Numerics.LinearAlgebra;

namespace SolarEconomics;

/// <summary>A fit of one quantity by several others, with how sure it is.</summary>
/// <remarks>Solved by an orthogonal (QR) factorisation of the columns, never by the normal equations, which would lose half of the digits. Immutable.
/// Source: stat-1.</remarks>
public sealed record RegressionFit
{
    private RegressionFit(double[] coefficients, double[] standardErrors, double[] residuals, int degreesOfFreedom, double rSquared)
    {
        Coefficients = coefficients;
        StandardErrors = standardErrors;
        Residuals = residuals;
        DegreesOfFreedom = degreesOfFreedom;
        ResidualSumOfSquares = residuals.Sum(r => r * r);
        ResidualSd = Math.Sqrt(ResidualSumOfSquares / degreesOfFreedom);
        RSquared = rSquared;
    }

    /// <summary>The intercept first, then one coefficient per column.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Standard errors, in the order of <see cref="Coefficients"/>.</summary>
    public IReadOnlyList<double> StandardErrors { get; }

    /// <summary>What the fit leaves unexplained at each point.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>Points less fitted constants.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>Sum of the squared residuals.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Standard deviation of the residuals, by degrees of freedom.</summary>
    public double ResidualSd { get; }

    /// <summary>Share of the squares around the mean that is explained. Range: 0 to 1.</summary>
    public double RSquared { get; }

    /// <summary>Fits y = c₀ + c₁ x₁ + c₂ x₂ + ….</summary>
    /// <param name="columns">The explaining columns, each as long as <paramref name="y"/>.</param>
    /// <param name="y">At least two values more than there are columns.</param>
    /// <exception cref="ArgumentException">Too few points, columns of different length, a value not finite, or columns that repeat each other.</exception>
    public static RegressionFit Of(IReadOnlyList<double[]> columns, double[] y)
    {
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(y);
        Statistics.Checked(y, atLeast: columns.Count + 2);
        // Centred and scaled columns: a year such as 1947 then costs no digits beside a share such as 0.2.
        var means = new double[columns.Count];
        var scales = new double[columns.Count];
        for (var c = 0; c < columns.Count; c++)
        {
            if (columns[c].Length != y.Length) throw Throw.UnequalColumns(columns[c].Length, y.Length);
            Statistics.Checked(columns[c], atLeast: 1);
            means[c] = Statistics.MeanOf(columns[c]);
            scales[c] = columns[c].Max(v => Math.Abs(v - means[c]));
            if (scales[c] == 0) throw Throw.AllAlike(columns[c][0], y.Length);
        }
        var meanY = Statistics.MeanOf(y);
        var centred = Matrix<double>.Build.Dense(y.Length, columns.Count, (r, c) => (columns[c][r] - means[c]) / scales[c]);
        var solved = centred.QR();
        for (var c = 0; c < columns.Count; c++)
        {
            if (Math.Abs(solved.R[c, c]) < 1e-11 * Math.Sqrt(y.Length)) throw Throw.RepeatedColumn(c + 1);
        }
        var scaled = solved.Solve(Vector<double>.Build.Dense(y.Length, r => y[r] - meanY));
        var coefficients = new double[columns.Count + 1];
        coefficients[0] = meanY;
        for (var c = 0; c < columns.Count; c++)
        {
            coefficients[c + 1] = scaled[c] / scales[c];
            coefficients[0] -= coefficients[c + 1] * means[c];
        }
        var residuals = new double[y.Length];
        for (var r = 0; r < y.Length; r++)
        {
            residuals[r] = y[r] - meanY;
            for (var c = 0; c < columns.Count; c++) residuals[r] -= coefficients[c + 1] * (columns[c][r] - means[c]);
        }
        var freedom = y.Length - columns.Count - 1;
        var residualSquares = residuals.Sum(r => r * r);
        var total = y.Sum(v => (v - meanY) * (v - meanY));
        var errors = StandardErrorsOf(solved.R, means, scales, y.Length, Math.Sqrt(residualSquares / freedom));
        return new RegressionFit(coefficients, errors, residuals, freedom, total > 0 ? 1 - (residualSquares / total) : 1);
    }

    // Covariance of the scaled slopes is s² R⁻¹R⁻ᵀ; the intercept's error follows from the means.
    private static double[] StandardErrorsOf(Matrix<double> r, double[] means, double[] scales, int count, double residualSd)
    {
        var columns = means.Length;
        var inverse = r.SubMatrix(0, columns, 0, columns).Inverse();
        var covariance = inverse * inverse.Transpose();
        var errors = new double[columns + 1];
        var atZero = 1.0 / count;
        for (var a = 0; a < columns; a++)
        {
            errors[a + 1] = residualSd * Math.Sqrt(covariance[a, a]) / scales[a];
            for (var b = 0; b < columns; b++) atZero += covariance[a, b] * (means[a] / scales[a]) * (means[b] / scales[b]);
        }
        errors[0] = residualSd * Math.Sqrt(atZero);
        return errors;
    }

    /// <summary>Range of one coefficient, points taken as independent.</summary>
    /// <param name="index">0 is the intercept, then the columns from 1.</param>
    /// <param name="level">Share of cases. Range: above 0 to below 1. Default: 0.95.</param>
    public ConfidenceInterval Interval(int index, double level = 0.95)
    {
        var half = StudentT.TwoSidedQuantile(level, DegreesOfFreedom) * StandardErrors[index];
        return new ConfidenceInterval(Coefficients[index] - half, Coefficients[index] + half, level);
    }
}
