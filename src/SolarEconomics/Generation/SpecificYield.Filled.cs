using NodaTime;

namespace SolarEconomics;

/// <summary>Specific yield of a record with what was held back filled in.</summary>
public sealed partial class SpecificYield
{
    /// <summary>Share of the energy in these figures that was not counted but filled in from the sky beside it. 0 where nothing was filled.</summary>
    public double FilledShare { get; private init; }

    /// <summary>Specific yield of one place, its held-back intervals filled from the same day's clearness beside them: an estimate of what the modules could have made, where leaving those days out leaves only dull ones.</summary>
    /// <param name="site">The site; its plant has the arrays, so that a clear sky on their plane is known.</param>
    /// <param name="readings">Interval generation, with marks of what was held back, and export where it is on record.</param>
    /// <param name="device">Name of the device at work there last.</param>
    /// <param name="exportLimitKw">Most that may go to the grid, in kW: until export comes near it a full battery holds nothing back. Default: <see langword="null"/>, every marked interval was held back.</param>
    /// <remarks>Equation: max(counted, share · clear sky), the share a straight line between those of the unmarked intervals before and after on that day. Days on which nothing tells the sky are
    /// left out and counted. Source: gen-13.</remarks>
    /// <exception cref="UnknownNameException">No generation of that name is on record.</exception>
    /// <exception cref="ArgumentException">No array stands behind the device, or it has no kWp on any day of the record.</exception>
    public static SpecificYield Filled(Site site, Readings readings, string device, double? exportLimitKw = null)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(device);
        if (exportLimitKw is { } limit) Require.Within(limit, 0.001, 1e6, "kW", nameof(exportLimitKw));
        var records = SiteRecords.Lay(site, readings);
        var place = records.GenerationOf(device);
        var line = site.Plant.LineOf(device);
        var own = site.Plant.Placements.Where(p => line.Any(d => string.Equals(d.Name, p.Device, StringComparison.Ordinal))).ToList();
        if (own.Count == 0) throw Throw.NoArrays(device);
        double KwpOn(LocalDate day) => line.Sum(d => d.RatedKwpOn(day));
        var filled = HeldBack.Fill(records, place, ClearShape.KwPerKwp(site, records.Grid, place.Device, own[^1]), KwpOn, exportLimitKw);
        var (grid, count) = (records.Grid, records.Grid.Count);
        var (starts, ends, quality) = (new Instant[count], new Instant[count], new Quality[count]);
        var (added, all) = (0.0, 0.0);
        for (var i = 0; i < count; i++)
        {
            (starts[i], ends[i]) = (grid.StartOf(i), grid.StartOf(i + 1));
            quality[i] = !place.Series.Known[i] ? Quality.Missing : filled.IsOpen[i] ? Quality.Censored : filled.IsFilled[i] ? Quality.Filled : Quality.Good;
            if (!place.Series.Known[i]) filled.Kwh[i] = 0;
            added += place.Series.Known[i] ? filled.Kwh[i] - place.Series.Kwh[i] : 0;
            all += filled.Kwh[i];
        }
        var channel = new Channel($"generation {device}", FlowKind.Generation, starts, ends, filled.Kwh, quality) { Device = device };
        var yield = From(channel, device, KwpOn, site, (_, _) => true);
        return new SpecificYield(yield.Origin + ", what was held back filled from the clearness beside it", yield.Months, yield.DaysUsed, yield.DaysCensored, yield.DaysIncomplete, yield.YearlySpread)
        {
            FilledShare = all > 0 ? added / all : 0,
        };
    }
}
