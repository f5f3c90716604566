using System.Globalization;

namespace SolarEconomics;

/// <summary>When a plant is paid back over many draws. What is not paid back within the horizon has no date, so there is no mean.</summary>
public sealed class PaybackOdds : IFinding
{
    // Years in ascending order; infinite, and so last, where a draw is not paid back.
    private readonly double[] _years;

    internal PaybackOdds(double[] years, int count, int horizonYears)
    {
        _years = years.AsSpan(0, count).ToArray();
        Array.Sort(_years);
        HorizonYears = horizonYears;
    }

    /// <summary>How far each draw looks, in years from the first purchase.</summary>
    public int HorizonYears { get; }

    /// <summary>Number of draws.</summary>
    public int Count => _years.Length;

    /// <summary>Share of draws that are paid back for good within the horizon. Range: 0 to 1.</summary>
    public double ChanceWithinHorizon => ChanceWithin(HorizonYears);

    /// <summary>Share of draws that are paid back for good within a number of years. Range: 0 to 1.</summary>
    /// <param name="years">Years from the first purchase. Range: 0 to the horizon.</param>
    /// <exception cref="ArgumentOutOfRangeException">Beyond the horizon nothing is known.</exception>
    public double ChanceWithin(double years)
    {
        Require.Within(years, 0, HorizonYears, "years, to the horizon");
        var end = Array.FindIndex(_years, y => y > years);
        return (double)(end < 0 ? Count : end) / Count;
    }

    /// <summary>Years within which a share of the draws is paid back; <see langword="null"/> where that is beyond the horizon.</summary>
    /// <param name="share">Share of draws. Range: 0 to 1.</param>
    public double? Percentile(double share)
    {
        var value = _years[(int)Math.Ceiling(Require.Fraction(share) * (Count - 1))];
        return double.IsFinite(value) ? Statistics.PercentileOfSorted(_years, share) : null;
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var half = Percentile(0.5) is { } middle ? $"; half of all cases within {Wording.Years(middle, culture)}" : "";
        string Within(double? years) => years is { } y ? $"{Wording.Years(y, culture)} or sooner" : $"not within {Wording.Count(HorizonYears, "year", culture)}";
        List<IReadOnlyList<string>> rows = [];
        for (var years = 5; years <= HorizonYears; years += 5)
        {
            var share = ChanceWithin(years);
            var error = Math.Sqrt(share * (1 - share) / Count);
            rows.Add([Wording.Years(years, culture), ChanceWords.Percent(share, culture), $"± {(error * 100).ToString("0.0", culture)}"]);
        }
        return new Finding(ChanceWords.Percent(ChanceWithinHorizon, culture),
            $"of all cases are paid back for good within {Wording.Count(HorizonYears, "year", culture)}{half}. The luckiest tenth: {Within(Percentile(0.1))}; nine tenths: {Within(Percentile(0.9))}.")
        {
            Tables = [new FindingTable("Paid back for good within (share of all cases; one standard error in percentage points)", ["Years from the first purchase", "Share", "Off by chance"], rows)],
            Notes = ["A case that is not paid back within the horizon has no date, so no mean is given."],
            Cautions = [Cautions.Money],
        };
    }
}
