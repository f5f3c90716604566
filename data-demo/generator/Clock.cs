using NodaTime;

namespace AlderWeir;

/// <summary>The half hours of the record, and the five-minute steps inside them in which the plant is worked out.</summary>
internal sealed class Clock
{
    internal const int StepsPerHalfHour = 6;

    private readonly LocalDateTime[] _local;

    internal Clock()
    {
        Zone = DateTimeZoneProviders.Tzdb["Europe/Dublin"];
        Start = Timeline.Start.AtStartOfDayInZone(Zone).ToInstant();
        var end = Timeline.End.AtStartOfDayInZone(Zone).ToInstant();
        Count = (int)((end - Start).TotalMinutes / 30);
        _local = new LocalDateTime[Count];
        for (var i = 0; i < Count; i++) _local[i] = StartOf(i).InZone(Zone).LocalDateTime;
    }

    internal DateTimeZone Zone { get; }

    internal Instant Start { get; }

    /// <summary>Number of half hours.</summary>
    internal int Count { get; }

    internal int Steps => Count * StepsPerHalfHour;

    internal Instant StartOf(int halfHour) => Start + Duration.FromMinutes(30L * halfHour);

    internal LocalDateTime LocalStartOf(int halfHour) => _local[halfHour];

    /// <summary>The half hour in which a local day starts; <see cref="Count"/> for the day after the record.</summary>
    internal int FirstOf(LocalDate day) => (int)((day.AtStartOfDayInZone(Zone).ToInstant() - Start).TotalMinutes / 30);

    /// <summary>The half hour that starts at a local time which the clock shows once.</summary>
    internal int IndexOf(LocalDateTime local) => (int)((local.InZoneStrictly(Zone).ToInstant() - Start).TotalMinutes / 30);
}
