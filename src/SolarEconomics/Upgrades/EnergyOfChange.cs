using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What changes of the modules give in energy: the same weather on the plant before and after, both as old as on the day of the change.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed class EnergyOfChange : IFinding
{
    private EnergyOfChange(PlantOutput before, PlantOutput after, double displacedKwh, IReadOnlyList<PlantChange> changes) =>
        (Before, After, DisplacedKwh, Changes) = (before, after, displacedKwh, changes);

    /// <summary>The plant as it would stand without the changes.</summary>
    public PlantOutput Before { get; }

    /// <summary>The plant with the changes.</summary>
    public PlantOutput After { get; }

    /// <summary>The changes.</summary>
    public IReadOnlyList<PlantChange> Changes { get; }

    /// <summary>Energy gained over the weather record. Unit: kWh. Below 0 where the change loses.</summary>
    public double GainKwh => After.AcKwh - Before.AcKwh;

    /// <summary>Part of it that displaced modules add in their new place: the plant with them less the plant without. Unit: kWh.</summary>
    public double DisplacedKwh { get; }

    /// <summary>Energy gained by calendar month (row, January first) and hour of the site's clock (column). Unit: kWh.</summary>
    public double[,] GainByMonthAndHour()
    {
        var (before, after) = (Before.ByMonthAndHour(), After.ByMonthAndHour());
        for (var month = 0; month < 12; month++)
            for (var hour = 0; hour < 24; hour++) after[month, hour] -= before[month, hour];
        return after;
    }

    /// <summary>Energy gained in each calendar month of the weather. Unit: kWh.</summary>
    public IReadOnlyList<(YearMonth Month, double Kwh)> GainByMonth() =>
        [.. After.ByMonth().Zip(Before.ByMonth(), (after, before) => (after.Month, after.Kwh - before.Kwh))];

    /// <summary>Works out changes on a site's plant.</summary>
    /// <param name="site">The site with the plant as it stands.</param>
    /// <param name="changes">The changes, earliest first.</param>
    /// <param name="weather">A whole year where the figures are to be yearly.</param>
    /// <param name="options">Choices, the same for both.</param>
    /// <exception cref="ArgumentException">A change cannot be made, or no change is given.</exception>
    public static EnergyOfChange Of(Site site, IReadOnlyList<PlantChange> changes, Weather weather, PlantOutputOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(changes);
        if (changes.Count == 0) throw Throw.NoChange();
        var on = changes.Max(c => c.On);
        var plant = site.Plant.After(changes);
        var after = PlantOutput.Of(site with { Plant = plant }, on, weather, options);
        var first = changes.Min(c => c.On);
        bool IsDisplaced(Placement p) => p.CameFrom is not null && p.From >= first && p.StandsOn(on);
        var displaced = 0.0;
        if (plant.Placements.Any(IsDisplaced))
        {
            var without = plant.WithPlacements([.. plant.Placements.Where(p => !IsDisplaced(p))]);
            var rest = without.StandingOn(on).Count == 0 ? 0 : PlantOutput.Of(site with { Plant = without }, on, weather, options).AcKwh;
            displaced = after.AcKwh - rest;
        }
        return new EnergyOfChange(PlantOutput.Of(site, on, weather, options), after, displaced, changes);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => EnergyOfChangeWords.Say(this, culture);
}
