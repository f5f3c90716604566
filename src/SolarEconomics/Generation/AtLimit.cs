using NodaTime;

namespace SolarEconomics;

/// <summary>Intervals in which an inverter stood at its AC limit, and about what it clipped there.</summary>
/// <remarks>What an array would have made is told by a reference in the same interval, times what the place usually makes of the reference at that hour of that month. An interval's mean hides
/// short peaks, so both hours and energy are a lower bound.</remarks>
internal sealed class AtLimit
{
    /// <summary>From this share of the rated power on an interval's mean counts as at the limit: meters and short clouds take the rest (common practice, no source).</summary>
    private const double Near = 0.98;
    private const double BrightShare = 0.4;
    private const int FewestPairs = 8;
    private readonly SiteRecords _records;
    private readonly GenerationRecord _place;
    private readonly IReadOnlyList<Device> _line;

    internal AtLimit(SiteRecords records, GenerationRecord place, IReadOnlyList<Device> line)
    {
        (_records, _place, _line) = (records, place, line);
        IsAt = new bool[records.Grid.Count];
        Kwh = new double?[records.Grid.Count];
        Kwp = new double[records.Grid.Count];
        for (var i = 0; i < IsAt.Length; i++)
        {
            var isSameDay = i > 0 && records.Days[i] == records.Days[i - 1];
            Kwp[i] = isSameDay ? Kwp[i - 1] : line.Sum(d => d.RatedKwpOn(records.Days[i]));
            if (place.Series.Known[i] && LimitKw(records.Days[i]) is { } limit) IsAt[i] = place.Series.Kwh[i] >= Near * limit * records.Grid.StepHours;
        }
    }

    /// <summary>Whether the inverter stood at its limit.</summary>
    internal bool[] IsAt { get; }

    /// <summary>Rated power of the modules. Unit: kWp.</summary>
    internal double[] Kwp { get; }

    /// <summary>About what was clipped; <see langword="null"/> where no reference tells. Unit: kWh.</summary>
    internal double?[] Kwh { get; }

    /// <summary>Rated power on the side of the counter. Unit: kW.</summary>
    internal double? LimitKw(LocalDate day)
    {
        if (_line.FirstOrDefault(d => d.InServiceOn(day) && d.RatedAcKw > 0) is not { } device) return null;
        return device.RatedAcKw / ((device.ToAcLow + device.ToAcHigh) / 2);
    }

    /// <summary>What an interval gave per kWp; <see langword="null"/> where unknown or held at the limit.</summary>
    internal double? Free(int i) => _place.Series.Known[i] && !IsAt[i] && Kwp[i] > 0 ? _place.Series.Kwh[i] / Kwp[i] : null;

    /// <summary>Works out what was clipped beside references, the first that knows an interval telling it.</summary>
    internal void Estimate(IEnumerable<Func<int, double?>> references)
    {
        if (!IsAt.Contains(true)) return;
        foreach (var reference in references)
        {
            var usual = Usual(reference);
            for (var i = 0; i < IsAt.Length; i++)
            {
                if (!IsAt[i] || Kwh[i] is not null || reference(i) is not { } other || usual(i) is not { } ratio) continue;
                Kwh[i] = Math.Max(0, (other * ratio * Kwp[i]) - _place.Series.Kwh[i]);
            }
        }
    }

    /// <summary>Place over reference: the median of bright free intervals at that hour of that month, of that hour, or of all.</summary>
    private Func<int, double?> Usual(Func<int, double?> reference)
    {
        var pairs = Enumerable.Range(0, IsAt.Length).Select(i => (At: i, Own: Free(i), Other: reference(i))).Where(p => p.Own is not null && p.Other > 0).ToList();
        if (pairs.Count == 0) return _ => null;
        var bright = BrightShare * pairs.Max(p => p.Other!.Value);
        var kept = pairs.Where(p => p.Other >= bright).Select(p => (Slot: Slot(p.At), Other: p.Other!.Value, Ratio: p.Own!.Value / p.Other!.Value)).ToList();
        var bySlot = Medians(kept.GroupBy(p => p.Slot, p => (p.Other, p.Ratio)));
        var byMinute = Medians(kept.GroupBy(p => p.Slot.Minute, p => (p.Other, p.Ratio)));
        double? all = kept.Count >= FewestPairs ? BrighterHalf(kept.Select(p => (p.Other, p.Ratio))) : null;
        return i => bySlot.TryGetValue(Slot(i), out var ratio) || byMinute.TryGetValue(Slot(i).Minute, out ratio) ? ratio : all;
    }

    private static Dictionary<T, double> Medians<T>(IEnumerable<IGrouping<T, (double Other, double Ratio)>> groups)
        where T : notnull =>
        groups.Where(g => g.Count() >= FewestPairs).ToDictionary(g => g.Key, BrighterHalf);

    /// <summary>A dull sky lies alike on all planes; what an array makes of the sun shows in the brighter half.</summary>
    private static double BrighterHalf(IEnumerable<(double Other, double Ratio)> pairs)
    {
        var inOrder = pairs.OrderByDescending(p => p.Other).ToList();
        return Statistics.Median([.. inOrder.Take((inOrder.Count + 1) / 2).Select(p => p.Ratio)]);
    }

    private (int Month, int Minute) Slot(int i)
    {
        var local = _records.Grid.StartOf(i).InZone(_records.Site.Zone);
        return (local.Month, (local.Hour * 60) + local.Minute);
    }
}
