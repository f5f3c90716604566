using NodaTime;

namespace SolarEconomics;

/// <summary>The days of one billing period under one version, with what its parts need to lay themselves on the grid.</summary>
internal sealed class SegmentContext
{
    private readonly Dictionary<EnergyPart, BandTable> _tables;

    internal SegmentContext(Tariff tariff, DateSpan days, DateSpan wholePeriod, bool startsPeriod, bool endsPeriod, DateTimeZone zone, DateTimeZone billingZone, PlanTicks ticks,
        DayCalendar calendar, Dictionary<EnergyPart, BandTable> tables)
    {
        Tariff = tariff;
        Days = days;
        WholePeriod = wholePeriod;
        BillingZone = billingZone;
        EndsPeriod = endsPeriod;
        StartsPeriod = startsPeriod;
        RateZone = tariff.Zone ?? zone;
        Ticks = ticks;
        Calendar = calendar;
        _tables = tables;
        Clock = new IntervalClock(RateZone, calendar);
        From = Second(days.Start);
        Until = Second(days.End);
    }

    internal Tariff Tariff { get; }

    internal DateSpan Days { get; }

    internal DateSpan WholePeriod { get; }

    /// <summary>The days whose energy the segment shares in: its own, or those of the whole bill where it is split by days.</summary>
    internal required DateSpan EnergyDays { get; init; }

    /// <summary>The segment's share of that energy.</summary>
    internal double EnergyShare => EnergyDays == Days ? 1 : (double)Days.Days / EnergyDays.Days;

    internal DateTimeZone BillingZone { get; }

    /// <summary>The clock that hours follow.</summary>
    internal DateTimeZone RateZone { get; }

    /// <summary>Whether no earlier version stands before it in the same period.</summary>
    internal bool StartsPeriod { get; }

    /// <summary>Whether no later version follows in the same period.</summary>
    internal bool EndsPeriod { get; }

    internal PlanTicks Ticks { get; }

    internal DayCalendar Calendar { get; }

    internal IntervalClock Clock { get; }

    /// <summary>Start of the days, in seconds of real time.</summary>
    internal long From { get; }

    /// <summary>End of the days, excluded, in seconds of real time.</summary>
    internal long Until { get; }

    internal BandTable TableOf(EnergyPart part)
    {
        if (!_tables.TryGetValue(part, out var table)) _tables.Add(part, table = new BandTable(part, Calendar));
        return table;
    }

    /// <summary>Start of a billing day, in seconds of real time.</summary>
    internal long Second(LocalDate day) => BillingZone.AtStartOfDay(day).ToInstant().ToUnixTimeSeconds();
}
