namespace SolarEconomics;

/// <summary>What a place should have made, by its own record beside another's: fitted over the years, season by season.</summary>
/// <remarks>Equation: y = y₂ (c₁ + c₂ cos θ + c₃ sin θ + c₄ cos 2θ + c₅ sin 2θ + c₆ y₂) + c₀, y and y₂ the daily yields of the place and its reference, θ the day of the year as an angle.
/// Days more than three scatters away are left out of the fit and the fit is made again, so that a failure does not become what is usual. Source: gen-11.</remarks>
internal sealed class OwnModel
{
    private const int FewestDays = 60;
    private const double DullKwhPerKwp = 0.1;
    private readonly OutputDays _reference;
    private readonly IReadOnlyList<double> _coefficients;

    private OwnModel(OutputDays reference, RegressionFit fit, double scatter, int days) =>
        (_reference, _coefficients, Scatter, Days) = (reference, fit.Coefficients, scatter, days);

    internal OutputDays Reference => _reference;

    /// <summary>Name of the reference.</summary>
    internal string Name => _reference.Name;

    /// <summary>Scatter of a day around the fit. Unit: kWh/kWp.</summary>
    internal double Scatter { get; }

    /// <summary>Days that the fit stands on.</summary>
    internal int Days { get; }

    /// <summary>Yield that the reference lets expect; <see langword="null"/> where it has none, or failed itself. Unit: kWh/kWp.</summary>
    internal double? Expected(int day, bool[] referenceFailed) =>
        referenceFailed[day] || _reference.IsBetweenDevices[day] || _reference.Yield(day) is not { } yield ? null
        : Math.Max(0, _coefficients[0] + Columns(_reference.Dates[day].DayOfYear, yield).Take(_coefficients.Count - 1).Select((x, c) => x * _coefficients[c + 1]).Sum());

    /// <summary>A fit on the days that both know and neither failed on; <see langword="null"/> with fewer than 60 of them.</summary>
    internal static OwnModel? Fit(OutputDays place, OutputDays reference, bool[] placeFailed, bool[] referenceFailed)
    {
        var days = Enumerable.Range(0, place.Dates.Length)
            .Where(d => !placeFailed[d] && !referenceFailed[d] && !place.IsBetweenDevices[d] && !reference.IsBetweenDevices[d]
                && place.Yield(d) is not null && reference.Yield(d) > DullKwhPerKwp)
            .ToList();
        for (var round = 0; ; round++)
        {
            if (days.Count < FewestDays) return null;
            var rows = days.Select(d => Columns(reference.Dates[d].DayOfYear, reference.Yield(d)!.Value)).ToArray();
            var columns = Enumerable.Range(0, rows[0].Length).Select(c => rows.Select(r => r[c]).ToArray()).ToArray();
            // Less than a year does not tell seasons apart: then the plain share is the model.
            if (days.Count < 300) columns = [columns[0]];
            var fit = RegressionFit.Of(columns, [.. days.Select(d => place.Yield(d)!.Value)]);
            var scatter = 1.4826 * Statistics.Median([.. fit.Residuals.Select(Math.Abs)]);
            if (round == 4) return new OwnModel(reference, fit, scatter, days.Count);
            var limit = Math.Max(3 * scatter, 0.02);
            days = [.. days.Where((_, i) => Math.Abs(fit.Residuals[i]) <= limit)];
        }
    }

    private static double[] Columns(int dayOfYear, double yield)
    {
        var angle = 2 * Math.PI * dayOfYear / 365.25;
        return [yield, yield * Math.Cos(angle), yield * Math.Sin(angle), yield * Math.Cos(2 * angle), yield * Math.Sin(2 * angle), yield * yield];
    }
}
