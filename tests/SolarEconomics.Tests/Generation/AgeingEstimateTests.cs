using System.Globalization;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class AgeingEstimateTests
{
    [Fact]
    public void A_short_scattered_record_leaves_the_published_rate_almost_untouched_and_says_what_would_suffice()
    {
        var estimate = AgeingEstimate.ByRegression([3000.0, 3150, 2950, 3100]);
        Assert.False(estimate.RecordTells);
        Assert.InRange(estimate.RecordWeight, 0, 0.05);
        Assert.Equal(AgeingEstimate.PublishedRate, estimate.Rate, 0.002);
        var said = estimate.Say(CultureInfo.InvariantCulture);
        Assert.Contains("too short to tell", said.Words, StringComparison.Ordinal);
        Assert.Contains(said.Notes, n => n.Contains("Weather correction: none", StringComparison.Ordinal));
        Assert.True(AgeingEstimate.HalfWidth(estimate.Scatter, estimate.YearsToTell) <= 0.005);
        Assert.True(AgeingEstimate.HalfWidth(estimate.Scatter, estimate.YearsToTell - 1) > 0.005);
    }

    [Fact]
    public void A_long_even_record_speaks_for_itself()
    {
        var estimate = AgeingEstimate.ByRegression([.. Enumerable.Range(0, 12).Select(k => (double?)(3000 * (1 - (0.009 * k))))]);
        Assert.True(estimate.RecordTells);
        Assert.Equal(1, estimate.RecordWeight, 1e-6);
        Assert.Equal(-0.009, estimate.Rate, 1e-9);
        Assert.Equal(0.91, estimate.AsAgeing.FactorAt(10), 1e-9);
    }

    [Fact]
    public void The_range_of_a_record_holds_the_true_rate_in_nineteen_of_twenty_histories()
    {
        // Independent weather of 4 %, a true loss of 0.7 % a year, ten years of months that share their year's weather.
        var random = new Random(42);
        double Normal() => NormalDistribution.Standard.Quantile(random.NextDouble() + 1e-12);
        double[] shape = [0.35, 0.5, 0.8, 1.1, 1.35, 1.4, 1.4, 1.25, 1.05, 0.75, 0.5, 0.35];
        var (regression, yearOnYear) = (0, 0);
        const int Histories = 600;
        for (var h = 0; h < Histories; h++)
        {
            var months = new double?[120];
            var years = new double?[10];
            for (var y = 0; y < 10; y++)
            {
                var weather = 1 + (0.04 * Normal());
                years[y] = 0;
                for (var m = 0; m < 12; m++)
                {
                    months[(12 * y) + m] = 100 * shape[m] * (1 - (0.007 * y)) * weather;
                    years[y] += months[(12 * y) + m];
                }
            }
            if (AgeingEstimate.ByRegression(years).RecordInterval.Contains(-0.007)) regression++;
            if (AgeingEstimate.ByYearOnYear(months).RecordInterval.Contains(-0.007)) yearOnYear++;
        }
        // By chance √(0.95 · 0.05 / 600) = 0.009; three of these. Both may be wider than they need be, never narrower.
        Assert.InRange(regression / (double)Histories, 0.95 - 0.027, 1);
        Assert.InRange(yearOnYear / (double)Histories, 0.95 - 0.027, 1);
    }

    [Fact]
    public void Censored_years_and_months_are_left_out()
    {
        double?[] with = [3000, 2976, null, 2928, 2904];
        Assert.Equal(-0.008, AgeingEstimate.ByRegression(with).RecordRate, 1e-9);
        double?[] months = [.. Enumerable.Range(0, 48).Select(m => (double?)(100 * Math.Pow(0.99, m / 12)))];
        months[13] = null;
        Assert.Equal(-0.01, AgeingEstimate.ByYearOnYear(months).RecordRate, 1e-9);
    }

    [Fact]
    public void Too_few_years_are_refused_in_words()
    {
        Assert.Equal("Found 2 values, expected at least 3. A longer record is needed to tell.", Assert.Throws<ArgumentException>(() => AgeingEstimate.ByRegression([1.0, 2.0])).Message);
        Assert.Equal("Found 24 months, expected at least 36: a slope with an error needs three whole years.",
            Assert.Throws<ArgumentException>(() => AgeingEstimate.ByYearOnYear(new double?[24])).Message);
    }
}
