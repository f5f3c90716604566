using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Ageing from a plant's own readings in one call.</summary>
public sealed partial record AgeingEstimate
{
    private const int FewestYears = 3;
    private const int FewestDaysOfAMonth = 15;
    private const double UsualWeatherScatter = 0.04;

    /// <summary>Estimate for one place of the plant, by the median of months a year apart: held-back and missing days left out, yields per kWp.</summary>
    /// <param name="site">The site with its plant.</param>
    /// <param name="readings">Interval generation with its marks of what was held back.</param>
    /// <param name="device">Name of the device at work there last.</param>
    /// <param name="weather">Weather over the days of the record, measured at the place or near: months are then set beside what a model of new modules makes of the same days. Default: <see langword="null"/>, no correction, and that is said.</param>
    /// <param name="exportLimitKw">Most that may go to the grid, in kW: until export comes near it a full battery holds nothing back. Default: <see langword="null"/>, every marked day is left out.</param>
    /// <remarks>A month counts from 15 whole days on. With less than three whole years the published rate stands alone. Source: gen-8.</remarks>
    /// <exception cref="UnknownNameException">No generation of that name is on record.</exception>
    public static AgeingEstimate Of(Site site, Readings readings, string device, Weather? weather = null, double? exportLimitKw = null)
    {
        var (months, correction) = Told(site, readings, device, weather, exportLimitKw);
        return months.Count / 12 < FewestYears || YearsTold(months) < FewestYears - 1 ? TooShort(months.Count / 12, correction) : ByYearOnYear(months, correction);
    }

    /// <summary>The same by a straight line through whole years, neighbours' likeness allowed for: sharper than months a year apart where years are whole, as a year in which a month cannot be told is left out.</summary>
    /// <param name="site">The site with its plant.</param>
    /// <param name="readings">Interval generation with its marks of what was held back.</param>
    /// <param name="device">Name of the device at work there last.</param>
    /// <param name="weather">Weather over the days of the record, as in <see cref="Of"/>. Default: <see langword="null"/>, no correction, and that is said.</param>
    /// <param name="exportLimitKw">Most that may go to the grid, in kW, as in <see cref="Of"/>. Default: <see langword="null"/>.</param>
    /// <remarks>A year is the mean of its twelve months, from the first month told. With less than three whole years the published rate stands alone. Source: gen-9.</remarks>
    /// <exception cref="UnknownNameException">No generation of that name is on record.</exception>
    public static AgeingEstimate OfYears(Site site, Readings readings, string device, Weather? weather = null, double? exportLimitKw = null)
    {
        var (months, correction) = Told(site, readings, device, weather, exportLimitKw);
        double?[] years = [.. Enumerable.Range(0, months.Count / 12).Select(y => months.GetRange(12 * y, 12)).Select(year => year.Contains(null) ? null : year.Average())];
        var told = years.Count(y => y is not null);
        return told < FewestYears ? TooShort(told, correction) : ByRegression(years, correction);
    }

    private static AgeingEstimate TooShort(int years, string? correction) => new("the published rate", correction ?? "none", Math.Min(years, FewestYears - 1),
        PublishedRate, new ConfidenceInterval(PublishedRate - 1, PublishedRate + 1, 0.95), UsualWeatherScatter);

    private static (List<double?> Months, string? Correction) Told(Site site, Readings readings, string device, Weather? weather, double? exportLimitKw)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(device);
        var records = SiteRecords.Lay(site, readings);
        var record = records.GenerationOf(device);
        var days = OutputDays.Of(record, records);
        var marked = ExpectedAgainstMeasured.MarkedDays(records, record, days, exportLimitKw);
        var modelled = weather is null ? null : ModelledReference.Of(days, records, weather, [], Ageing.None).Days(site.Zone);
        return (Months(days, marked, modelled), weather is null ? null : $"each day beside a model of new modules through {weather.Origin}");
    }

    /// <summary>Pairs of years that share a month that both know.</summary>
    private static int YearsTold(IReadOnlyList<double?> months) =>
        Enumerable.Range(0, (months.Count / 12) - 1).Count(y => Enumerable.Range(12 * y, 12).Any(m => months[m] is not null && months[m + 12] is not null));

    private static List<double?> Months(OutputDays days, bool[] marked, Dictionary<LocalDate, double>? modelled)
    {
        var (first, last) = (days.Dates[0].ToYearMonth(), days.Dates[^1].ToYearMonth());
        var sums = new Dictionary<YearMonth, (double Made, double Beside, int Days)>();
        for (var d = 0; d < days.Dates.Length; d++)
        {
            var beside = 1.0;
            if (marked[d] || days.IsBetweenDevices[d] || days.Yield(d) is not { } yield || (modelled is not null && !modelled.TryGetValue(days.Dates[d], out beside))) continue;
            var (made, all, count) = sums.GetValueOrDefault(days.Dates[d].ToYearMonth());
            sums[days.Dates[d].ToYearMonth()] = (made + yield, all + beside, count + 1);
        }
        var months = new List<double?>();
        for (var month = first; month <= last; month = month.PlusMonths(1))
            months.Add(sums.TryGetValue(month, out var sum) && sum.Days >= FewestDaysOfAMonth && sum.Beside > 0 ? sum.Made / sum.Beside : null);
        while (months.Count > 0 && months[0] is null) months.RemoveAt(0);
        return months;
    }

    private Finding SayTooShort(CultureInfo culture) => new(
        string.Create(culture, $"{Rate * 100:+0.00;-0.00} % a year"),
        string.Create(culture, $"is the published median: the record is too short to tell, as a slope with an error needs three whole years of months that were not held back. At the usual scatter of weather, {UsualWeatherScatter * 100:0} % a year, {YearsToTell} years would tell to half a per cent."))
    {
        Notes =
        [
            "Method: " + Method + ". Weather correction: " + WeatherCorrection + ".",
            string.Create(culture, $"Median of nearly 2,000 published rates; the spread of plants around it, {PublishedSpread * 100:0.0} %, is an assumption."),
        ],
    };
}
