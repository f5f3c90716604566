using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What a plant's own record says that a kWp makes here, month by month, with its spread across years.</summary>
/// <remarks>Whole days only; days with a censored interval are left out and counted. Immutable, so safe to share between threads.</remarks>
public sealed partial class SpecificYield : IFinding
{
    private SpecificYield(string origin, IReadOnlyList<MonthYield> months, int daysUsed, int daysCensored, int daysIncomplete, double? spread)
    {
        Origin = origin;
        Months = months;
        (DaysUsed, DaysCensored, DaysIncomplete) = (daysUsed, daysCensored, daysIncomplete);
        YearlySpread = spread;
    }

    /// <summary>Where the figures come from, in words.</summary>
    public string Origin { get; }

    /// <summary>The calendar months that could be told, in order.</summary>
    public IReadOnlyList<MonthYield> Months { get; }

    /// <summary>Whole days used.</summary>
    public int DaysUsed { get; }

    /// <summary>Days left out because the plant could have made more than was counted.</summary>
    public int DaysCensored { get; }

    /// <summary>Days left out because readings are missing.</summary>
    public int DaysIncomplete { get; }

    /// <summary>Standard deviation of whole years, relative to their mean; <see langword="null"/> below two whole years.</summary>
    public double? YearlySpread { get; }

    /// <summary>Whether all twelve months could be told.</summary>
    public bool IsWholeYear => Months.Count == 12;

    /// <summary>Yield of a year; <see langword="null"/> where a month could not be told. Unit: kWh/kWp a year.</summary>
    public double? YearKwhPerKwp => IsWholeYear ? Months.Sum(m => m.MeanKwhPerKwp) : null;

    /// <summary>Whether so many days were held back that what is left is skewed to dull ones: then this is a lower bound, not an estimate.</summary>
    public bool IsLowerBound => DaysCensored > 0.05 * (DaysUsed + DaysCensored);

    /// <summary>The yield of other modules on another plane, by the light that the sky model gives both.</summary>
    /// <param name="site">The site.</param>
    /// <param name="weather">A whole year of weather of the place: a record, an EPW file or a made-up year.</param>
    /// <param name="from">Plane of the record.</param>
    /// <param name="to">Plane wanted.</param>
    /// <remarks>Equation: month × Σ light on the new plane / Σ light on the old one, Hay–Davies sky. Heat and faint light are taken as alike on both.</remarks>
    public SpecificYield OnPlane(Site site, Weather weather, Plane from, Plane to)
    {
        var (old, wanted) = (LightByMonth(site, weather, from), LightByMonth(site, weather, to));
        return new SpecificYield(
            Origin + string.Create(CultureInfo.InvariantCulture, $", brought from {from.TiltDeg:0.#}° towards {from.AzimuthDeg:0.#}° to {to.TiltDeg:0.#}° towards {to.AzimuthDeg:0.#}°"),
            [.. Months.Select(m => m.Times(old[m.Month - 1] > 0 ? wanted[m.Month - 1] / old[m.Month - 1] : 1))],
            DaysUsed, DaysCensored, DaysIncomplete, YearlySpread) { FilledShare = FilledShare };
    }

    /// <summary>Energy of a plant of so many kWp at this yield, month by month. Unit: kWh.</summary>
    /// <param name="ratedKwp">Rated power, in kWp. Range: above 0 to 10,000.</param>
    public IReadOnlyList<(int Month, double LowKwh, double MeanKwh, double HighKwh)> For(double ratedKwp)
    {
        Require.Within(ratedKwp, 1e-6, 10_000, "kWp");
        return [.. Months.Select(m => (m.Month, m.LowKwhPerKwp * ratedKwp, m.MeanKwhPerKwp * ratedKwp, m.HighKwhPerKwp * ratedKwp))];
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var spread = YearlySpread is { } s ? string.Create(culture, $" Years scatter by {s * 100:0.0} %.") : " Too few whole years to tell how years scatter.";
        var figure = YearKwhPerKwp is { } year ? string.Create(culture, $"{(IsLowerBound ? "at least " : "")}{year:#,0} kWh per kWp") : "not a whole year";
        return new Finding(figure, string.Create(culture, $"a year, from {DaysUsed:#,0} whole days.") + spread)
        {
            Notes =
            [
                Origin + ".",
                string.Create(culture, $"Left out: {DaysCensored} days held back by a full battery, a limit or a trip; {DaysIncomplete} days with readings missing."),
                .. FilledShare > 0 ? new[] { string.Create(culture, $"{FilledShare * 100:0.0} % of the energy was not counted but filled in: what the plant was held back from making, by how clear the sky was just before and after on the same day. An estimate.") } : [],
                .. IsLowerBound ? new[] { "Held-back days are sunny ones: what is left is skewed to dull days, so this is a lower bound." } : [],
            ],
            Tables =
            [
                new FindingTable("Specific yield, kWh per kWp", ["Month", "Poorest", "Mean", "Best", "Years"],
                    [.. Months.Select(m => (IReadOnlyList<string>)[
                        culture.DateTimeFormat.GetAbbreviatedMonthName(m.Month), Say(m.LowKwhPerKwp), Say(m.MeanKwhPerKwp), Say(m.HighKwhPerKwp), m.Years.ToString(culture)])]),
            ],
        };

        string Say(double value) => value.ToString("0.0", culture);
    }

    private static double[] LightByMonth(Site site, Weather weather, Plane plane)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(weather);
        var module = new ModuleType("light", 1000);
        var light = new GenerationModel(new InverterType("light", 1e6), new ModuleArray("light", module, 1, 1, plane)).Run(site, weather).PlaneWm2;
        var months = new double[12];
        for (var i = 0; i < light.Length; i++) months[weather.Grid.StartOf(i).InZone(site.Zone).Month - 1] += light[i];
        return months;
    }
}
