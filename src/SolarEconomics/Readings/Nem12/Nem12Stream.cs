using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>One stream of a NEM12 file: a meter's suffix with its days, in any order until it becomes a channel.</summary>
/// <param name="nmi">Identifier of the meter.</param>
/// <param name="suffix">Suffix of the stream, for example E1.</param>
/// <param name="unit">Unit as the record states it.</param>
/// <param name="minutes">Interval length.</param>
/// <param name="likelyDays">Days that the stream will probably have: room for them is made at once. Any other number is only slower.</param>
internal sealed class Nem12Stream(string nmi, string suffix, string unit, int minutes, int likelyDays = 0)
{
    private const int FewestDays = 32;

    private readonly List<Day> _days = [];
    private double[] _kwh = [];
    private Quality[] _quality = [];

    internal string Nmi => nmi;

    internal string Suffix => suffix;

    internal string UnitText => unit;

    internal int Minutes => minutes;

    internal int PerDay => 1440 / minutes;

    internal EnergyUnit? Unit { get; } = EnergyUnit.Find(unit);

    internal bool HasDays => _days.Count > 0;

    internal int DayCount => _days.Count;

    /// <summary>Makes room for one more day; its values are set by the caller.</summary>
    internal void Room(out Span<double> kwhOfDay, out Span<Quality> qualityOfDay)
    {
        var at = _days.Count * PerDay;
        if (at + PerDay > _kwh.Length)
        {
            var length = Math.Max(PerDay * Math.Max(FewestDays, likelyDays), _kwh.Length * 2);
            (_kwh, _quality) = (Grown(_kwh, length), Grown(_quality, length));
        }
        kwhOfDay = _kwh.AsSpan(at, PerDay);
        qualityOfDay = _quality.AsSpan(at, PerDay);
    }

    /// <summary>A longer copy whose end is not set to zero first: each day sets all of its values.</summary>
    private static T[] Grown<T>(T[] values, int length)
    {
        var grown = GC.AllocateUninitializedArray<T>(length);
        values.CopyTo(grown, 0);
        return grown;
    }

    /// <summary>Keeps the day for which <see cref="Room"/> was filled.</summary>
    internal void Keep(long dayNumber, int line, string updated) => _days.Add(new Day(dayNumber, line, updated, _days.Count));

    internal Span<Quality> QualityOfLastDay => _quality.AsSpan((_days.Count - 1) * PerDay, PerDay);

    internal Span<double> KwhOfLastDay => _kwh.AsSpan((_days.Count - 1) * PerDay, PerDay);

    internal Channel ToChannel(string name, string file, ProblemList problems)
    {
        var extra = 0;
        var days = new List<Day>(_days.Count);
        foreach (var day in _days.OrderBy(d => d.Number).ThenBy(d => d.Place))
        {
            if (days.Count == 0 || days[^1].Number != day.Number)
            {
                days.Add(day);
                continue;
            }
            // A later update of the same day stands for the earlier one; without update times, the first stands.
            var (kept, other) = string.CompareOrdinal(day.Updated, days[^1].Updated) > 0 ? (day, days[^1]) : (days[^1], day);
            days[^1] = kept;
            extra += ReportSecond(kept, other, name, problems);
        }
        var count = days.Count * PerDay;
        var (kwh, quality) = InOrder(days) ? (_kwh, _quality) : Sorted(days, count);
        var (flow, times) = (FlowOf(suffix, Unit), TimesOf(days));
        var energy = new ColumnEnergy(times, kwh, quality);
        if (Unit is { IsActiveEnergy: true }) Doubts.FlagMetered(energy, flow, name, problems);
        else Negatives.Flag(energy, FlowKind.Unknown, name, 0, problems);
        return new Channel(name, flow, times, kwh, quality)
        {
            Unit = Unit?.Name ?? unit, Meter = nmi, Clock = Nem12Reader.MarketTime, Point = MeasurementPoint.Meter, File = file, ExtraReadings = extra,
        };
    }

    /// <summary>Whether the days stand as they were read, so that their values need no copy.</summary>
    private static bool InOrder(List<Day> days)
    {
        for (var d = 0; d < days.Count; d++)
            if (days[d].Place != d) return false;
        return true;
    }

    private (double[] Kwh, Quality[] Quality) Sorted(List<Day> days, int count)
    {
        var (kwh, quality) = (new double[count], new Quality[count]);
        for (var d = 0; d < days.Count; d++)
        {
            _kwh.AsSpan(days[d].Place * PerDay, PerDay).CopyTo(kwh.AsSpan(d * PerDay));
            _quality.AsSpan(days[d].Place * PerDay, PerDay).CopyTo(quality.AsSpan(d * PerDay));
        }
        return (kwh, quality);
    }

    private TimeAxis TimesOf(List<Day> days)
    {
        var step = minutes * NodaConstants.TicksPerMinute;
        var first = StartOf(days[0]);
        if (days[^1].Number - days[0].Number == days.Count - 1) return TimeAxis.Regular(first, step, days.Count * PerDay);
        var (starts, ends) = (new long[days.Count * PerDay], new long[days.Count * PerDay]);
        for (var i = 0; i < starts.Length; i++)
        {
            starts[i] = StartOf(days[i / PerDay]) + (i % PerDay * step);
            ends[i] = starts[i] + step;
        }
        return TimeAxis.OfTicks(starts, ends);
    }

    /// <summary>Start of a day on market time. Unit: ticks since 1970.</summary>
    private static long StartOf(Day day) => (day.Number * NodaConstants.TicksPerDay) - (10 * NodaConstants.TicksPerHour);

    private int ReportSecond(Day kept, Day other, string name, ProblemList problems)
    {
        var first = _kwh.AsSpan(kept.Place * PerDay, PerDay);
        var second = _kwh.AsSpan(other.Place * PerDay, PerDay);
        var same = first.SequenceEqual(second);
        var (sum, readings) = (default(CompensatedSum), 0);
        for (var i = 0; i < PerDay; i++)
        {
            if (_quality[(other.Place * PerDay) + i].HasFlag(Quality.Missing)) continue;
            sum.Add(second[i]);
            readings++;
            _quality[(kept.Place * PerDay) + i] |= same ? Quality.Repeated : Quality.Repeated | Quality.Doubtful;
        }
        var uncounted = Unit is { IsActiveEnergy: true } ? sum.Total : 0;
        var date = StampClock.LocalOf(other.Number * 86_400_000).ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
        problems.Add(other.Line, 0, date, $"{date} of {name} more than once, with {(same ? "the same values" : "other values")} in line {kept.Line.ToString(CultureInfo.InvariantCulture)}",
            same ? "each day once; it was counted once" : "each day once; the one updated last is counted, else the first", same ? Severity.Note : Severity.Doubtful, uncounted);
        return readings;
    }

    /// <summary>Which way a stream goes by the first letter of its suffix, seen from the home.</summary>
    /// <remarks>E is energy taken from the grid and B energy given to it; averages, check meters and net streams are kept but belong to no flow,
    /// since they repeat what E and B count. Source: readings-nmi.</remarks>
    internal static FlowKind FlowOf(string suffix, EnergyUnit? unit)
    {
        if (unit is not { IsActiveEnergy: true } || suffix.Length == 0) return FlowKind.Unknown;
        return char.ToUpperInvariant(suffix[0]) switch
        {
            'E' => FlowKind.Import,
            'B' => FlowKind.Export,
            _ => FlowKind.Unknown,
        };
    }

    private readonly record struct Day(long Number, int Line, string Updated, int Place);
}
