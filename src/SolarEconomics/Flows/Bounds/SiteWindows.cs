using System.Globalization;

namespace SolarEconomics;

/// <summary>A site's records as windows: one for each interval, and one for the whole span in which counters speak too.</summary>
internal sealed class SiteWindows
{
    private const double KwhOfNote = 0.0005;

    private readonly SiteRecords _records;
    private readonly GridSeries? _use;
    private readonly List<string> _doubtful = [];
    private int _disagreeing;
    private double _worstKwh;

    internal SiteWindows(SiteRecords records, Readings readings)
    {
        _records = records;
        var use = readings.Of(FlowKind.Use);
        _use = use.Count == 0 ? null : GridSeries.Lay(use, records.Grid);
    }

    internal IntervalGrid Grid => _records.Grid;

    internal IReadOnlyList<string> Notes
    {
        get
        {
            var minutes = Grid.Step.TotalMinutes.ToString("0.##", CultureInfo.InvariantCulture);
            var notes = new List<string>
            {
                $"Weighed in intervals of {minutes} minutes, all phases as one: what went out and came in inside an interval is netted only where the meter nets it.",
                "Curtailed energy is in no counter and so in none of these flows; standby of the plant counts as use.",
            };
            if (_disagreeing > 0)
                notes.Add(FormattableString.Invariant($"In {_disagreeing} intervals the records disagree, by {_worstKwh:0.###} kWh at most; each was widened by as much as it needed."));
            return [.. notes, .. _doubtful.Distinct(StringComparer.Ordinal)];
        }
    }

    internal FlowBounds Total()
    {
        EnergyRange[]? sum = null;
        for (var i = 0; i < Grid.Count; i++)
        {
            var ways = FlowNetwork.WaysOf(Agreeing(FlowNetwork.RecordsOf(Window(i))));
            for (var k = 0; sum is not null && k < sum.Length; k++) sum[k] += ways[k];
            sum ??= ways;
        }
        if (sum is null) throw Throw.NothingToValue(_records.Site.Name);
        // Over the whole span counters speak too, and the sums of the intervals bound each other.
        if (_records.GenerationIsBounded) sum[0] = FlowNetwork.Narrower(sum[0], Generation());
        FlowNetwork.Close(sum);
        return FlowBounds.Of(sum);
    }

    private FlowWindow Window(int i)
    {
        var generation = EnergyRange.Exactly(0);
        foreach (var g in _records.Generation)
        {
            generation += g.Series.Known[i]
                ? new EnergyRange(g.Series.Kwh[i] * g.Device.ToAcLow, g.Series.Kwh[i] * g.Device.ToAcHigh)
                : new EnergyRange(0, g.CeilingKwh[i] * g.Device.ToAcHigh);
        }
        return new FlowWindow
        {
            Generation = _records.GenerationIsBounded ? generation : EnergyRange.AtLeast(0),
            Import = Read(_records.Import, i, double.PositiveInfinity),
            Export = Read(_records.Export, i, double.PositiveInfinity),
            Charge = Read(_records.Charge, i, BatteryRoomKwh),
            Discharge = Read(_records.Discharge, i, BatteryRoomKwh),
            Use = Read(_use, i, double.PositiveInfinity),
        };
    }

    /// <summary>The most that a battery can take or give in one interval: its usable energy in an hour. Common practice, no source.</summary>
    private double BatteryRoomKwh => _records.BatteryKwh * Grid.StepHours;

    private static EnergyRange Read(GridSeries? series, int i, double mostKwh) =>
        series?.Known[i] == true ? EnergyRange.Exactly(Math.Max(0, series.Kwh[i])) : new EnergyRange(0, mostKwh);

    /// <summary>Generation of the whole span, with what counters say of the intervals that were not read.</summary>
    private EnergyRange Generation()
    {
        var sum = EnergyRange.Exactly(0);
        foreach (var g in _records.Generation)
        {
            var gaps = GapGroups.Of(g, g.Series.Known, onePair: false, Grid, _records.Site.Zone, _doubtful);
            var known = g.Series.KnownTotalKwh;
            sum += new EnergyRange((known + gaps.Sum(x => x.LowKwh)) * g.Device.ToAcLow, (known + gaps.Sum(x => x.HighKwh)) * g.Device.ToAcHigh);
        }
        return sum;
    }

    /// <summary>Records widened by the smallest amount with which some flows agree with all of them.</summary>
    private EnergyRange[] Agreeing(EnergyRange[] records)
    {
        var byKwh = FlowNetwork.Contradiction(records).ByKwh;
        if (byKwh <= FlowNetwork.DustKwh) return records;
        if (byKwh > KwhOfNote)
        {
            _disagreeing++;
            _worstKwh = Math.Max(_worstKwh, byKwh);
        }
        // Every part of the network that cannot close has a record that is not 0, so that as much on each is enough.
        return [.. records.Select(r => r == default ? r : new EnergyRange(r.LowKwh >= 0 ? Math.Max(0, r.LowKwh - byKwh) : r.LowKwh - byKwh, r.HighKwh + byKwh))];
    }
}
