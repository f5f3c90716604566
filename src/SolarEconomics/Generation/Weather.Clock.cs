using NodaTime;

namespace SolarEconomics;

/// <summary>Whether a record's clock runs with the sun of its place.</summary>
public sealed partial class Weather
{
    private const int FewestDays = 10;

    /// <summary>How far the record's light lies behind the sun of the place: the median over bright days of its middle less solar noon. Unit: minutes.</summary>
    /// <param name="site">The site.</param>
    /// <returns>About 0 when the clock is right; a step late when stamps name the ends of steps, half a step when values are of a moment; ±60 when summer time was mixed up;
    /// <see langword="null"/> where fewer than ten bright days stand in the record.</returns>
    /// <remarks>Equation: Σ t G / Σ G of a day less solar noon. Clouds pull single days either way, so only the median says something; hills do too.</remarks>
    public double? ClockOffsetMinutes(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        var days = new Dictionary<LocalDate, (double Energy, double Moment)>();
        var noons = new Dictionary<LocalDate, Instant>();
        for (var i = 0; i < Grid.Count; i++)
        {
            // The day of mean solar time, so that no day is cut at the sun's height.
            var middle = Grid.StartOf(i) + (Grid.Step / 2);
            var date = (middle + Duration.FromMinutes(4 * site.LongitudeDeg)).InUtc().Date;
            if (!noons.TryGetValue(date, out var noon)) noons[date] = noon = Sun.On(date, site).Noon;
            var (energy, moment) = days.GetValueOrDefault(date);
            days[date] = (energy + _globalWm2[i], moment + (_globalWm2[i] * (middle - noon).TotalMinutes));
        }
        double[] energies = [.. days.Values.Select(d => d.Energy).Where(e => e > 0)];
        if (energies.Length < FewestDays) return null;
        var bright = Statistics.Median(energies);
        double[] offsets = [.. days.Values.Where(d => d.Energy >= bright && d.Energy > 0).Select(d => d.Moment / d.Energy)];
        return offsets.Length < FewestDays ? null : Statistics.Median(offsets);
    }
}
