using NodaTime;

namespace SolarEconomics;

/// <summary>All records of a site laid on one grid: what is known, and the ceiling of what is not.</summary>
internal sealed class SiteRecords
{
    private SiteRecords(Site site, IntervalGrid grid, LocalDate[] days)
    {
        Site = site;
        Grid = grid;
        Days = days;
        StandbyKwh = new double[grid.Count];
        CensoredHours = new double[grid.Count];
    }

    private SiteRecords(SiteRecords other)
    {
        (Site, Grid, Days, StandbyKwh, CensoredHours) = (other.Site, other.Grid, other.Days, other.StandbyKwh, other.CensoredHours);
        (Generation, Import, Export, Charge, Discharge) = (other.Generation, other.Import, other.Export, other.Charge, other.Discharge);
    }

    /// <summary>The same records with one device's replaced, to see what a further record would tell.</summary>
    internal SiteRecords With(GenerationRecord replaced) => new(this)
    {
        Generation = [.. Generation.Select(g => string.Equals(g.Device.Name, replaced.Device.Name, StringComparison.Ordinal) ? replaced : g)],
    };

    /// <summary>The same records with meter channels added or completed.</summary>
    internal SiteRecords WithMeter(GridSeries import, GridSeries export) => new(this) { Import = import, Export = export };

    /// <summary>The same records with the battery's channels added or completed.</summary>
    internal SiteRecords WithBattery(GridSeries charge, GridSeries discharge) => new(this) { Charge = charge, Discharge = discharge };

    internal Site Site { get; }

    internal IntervalGrid Grid { get; }

    /// <summary>The local day on which each interval starts.</summary>
    internal LocalDate[] Days { get; }

    internal IReadOnlyList<GenerationRecord> Generation { get; private init; } = [];

    /// <summary>The generation of the device at work there last.</summary>
    /// <exception cref="UnknownNameException">No generation of that name is on record.</exception>
    internal GenerationRecord GenerationOf(string device) =>
        Generation.FirstOrDefault(g => string.Equals(g.Device.Name, device, StringComparison.Ordinal)) ?? throw Throw.UnknownDevice(device, Generation.Select(g => g.Device.Name));

    internal GridSeries? Import { get; private init; }

    internal GridSeries? Export { get; private init; }

    internal GridSeries? Charge { get; private init; }

    internal GridSeries? Discharge { get; private init; }

    /// <summary>What the plant itself takes, from the ratings of its devices.</summary>
    internal double[] StandbyKwh { get; }

    /// <summary>Hours of each interval in which the plant could have made more than was counted.</summary>
    internal double[] CensoredHours { get; }

    internal double BatteryKwh => Site.Plant.Devices.Sum(d => d.UsableKwh);

    /// <summary>Whether anything says how much was generated: a channel, a counter, or rated modules.</summary>
    internal bool GenerationIsBounded => Generation.Count > 0;

    /// <summary>Hours in a row of intervals for which any metered flow lacks a reading.</summary>
    internal double MissingHours(int from, int to)
    {
        var missing = 0;
        for (var i = from; i < to; i++)
        {
            if (IsMissing(Import, i) || IsMissing(Export, i) || IsMissing(Charge, i) || IsMissing(Discharge, i)
                || Generation.Any(g => !g.Series.Known[i])) missing++;
        }
        return missing * Grid.StepHours;
    }

    private static bool IsMissing(GridSeries? series, int i) => series is not null && !series.Known[i];

    internal static SiteRecords Lay(Site site, Readings readings)
    {
        var grid = GridOf(site, readings);
        var sky = SkyCeiling.Of(grid, site);
        var days = grid.LocalDays(site.Zone);
        var records = new SiteRecords(site, grid, days)
        {
            Generation = LayGeneration(site, readings, grid, days, sky),
            Import = Lay(readings, FlowKind.Import, grid),
            Export = Lay(readings, FlowKind.Export, grid),
            Charge = Lay(readings, FlowKind.BatteryCharge, grid),
            Discharge = Lay(readings, FlowKind.BatteryDischarge, grid),
        };
        records.AddStandby();
        records.AddCensored(readings);
        return records;
    }

    private static GridSeries? Lay(Readings readings, FlowKind flow, IntervalGrid grid)
    {
        var channels = readings.Of(flow);
        return channels.Count == 0 ? null : GridSeries.Lay(channels, grid);
    }

    private static List<GenerationRecord> LayGeneration(Site site, Readings readings, IntervalGrid grid, LocalDate[] days, double[] sky)
    {
        var channels = readings.Of(FlowKind.Generation);
        // A counter in the battery's path or at the meter counts no generation of its own.
        var counters = readings.Counters.Where(c => c.Point is not (MeasurementPoint.BatteryIn or MeasurementPoint.BatteryOut or MeasurementPoint.Meter)).ToList();
        var replaced = site.Plant.Devices.Select(d => d.Replaces).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var names = channels.Select(NameOf).Concat(counters.Select(c => c.Device))
            .Concat(site.Plant.Devices.Where(d => d.RatedKwp > 0).Select(d => d.Name))
            .Distinct(StringComparer.Ordinal)
            .Where(name => !replaced.Contains(name));
        return [.. names.Select(name =>
        {
            var line = site.Plant.LineOf(name);
            if (line.Count == 0) line = [new Device(name, MeasurementPoint.Unknown)];
            var own = channels.Where(c => line.Any(d => string.Equals(NameOf(c), d.Name, StringComparison.Ordinal))).ToList();
            return GenerationRecord.Lay(line, own, counters, grid, days, site, sky);
        })];
    }

    private static string NameOf(Channel channel) => channel.Device ?? channel.Name;

    /// <summary>The longest interval on record: shorter readings are summed into it exactly, longer ones cannot be split.</summary>
    private static IntervalGrid GridOf(Site site, Readings readings)
    {
        var channels = readings.Channels.Where(c => c.Count > 0 && c.Flow is not FlowKind.Unknown).ToList();
        if (channels.Count > 0)
        {
            var step = channels.Max(LongestStep);
            var start = channels.Min(c => c.Start!.Value);
            var end = channels.Max(c => c.End!.Value);
            return new IntervalGrid(start, step, (int)Math.Ceiling((end - start) / step));
        }
        var dates = readings.Counters.SelectMany(c => c.Readings.Select(r => r.Date))
            .Concat(readings.Counters.Select(c => site.Plant.Find(c.Device)?.InService).OfType<LocalDate>())
            .ToList();
        if (dates.Count == 0) throw Throw.NothingToValue(site.Name);
        var first = site.Zone.AtStartOfDay(dates.Min()).ToInstant();
        var last = site.Zone.AtStartOfDay(dates.Max().PlusDays(1)).ToInstant();
        return new IntervalGrid(first, Duration.FromMinutes(30), (int)((last - first) / Duration.FromMinutes(30)));
    }

    private static Duration LongestStep(Channel channel)
    {
        var longest = Duration.Zero;
        for (var i = 0; i < channel.Count; i++) longest = Duration.Max(longest, channel.Ends[i] - channel.Starts[i]);
        return longest;
    }

    private void AddStandby()
    {
        var kwh = 0.0;
        for (var i = 0; i < Grid.Count; i++)
        {
            if (i == 0 || Days[i] != Days[i - 1]) kwh = Site.Plant.StandbyWOn(Days[i]) / 1000 * Grid.StepHours;
            StandbyKwh[i] = kwh;
        }
    }

    private void AddCensored(Readings readings)
    {
        foreach (var channel in readings.Of(FlowKind.Generation))
        {
            for (var i = 0; i < channel.Count; i++)
            {
                if (!channel.Quality[i].HasFlag(Quality.Censored)) continue;
                var cell = (int)((channel.Starts[i] - Grid.Start) / Grid.Step);
                var hours = (channel.Ends[i] - channel.Starts[i]).TotalHours;
                if (cell >= 0 && cell < Grid.Count) CensoredHours[cell] = Math.Max(CensoredHours[cell], hours);
            }
        }
    }
}
