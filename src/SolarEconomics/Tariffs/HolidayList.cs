using NodaTime;

namespace SolarEconomics;

/// <summary>The public holidays that a tariff recognises.</summary>
/// <param name="Days">The dated days.</param>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record HolidayList(IReadOnlySet<LocalDate> Days)
{
    /// <summary>No holidays: every day is judged by its weekday.</summary>
    public static HolidayList None { get; } = new(new HashSet<LocalDate>());

    /// <summary>Holidays from own dates.</summary>
    /// <param name="days">The dated days, in any order.</param>
    public static HolidayList Of(params IEnumerable<LocalDate> days) => new(new HashSet<LocalDate>(days));

    /// <summary>Whether there is any holiday at all.</summary>
    public bool Any => Days.Count > 0;

    /// <summary>Whether a day is a holiday.</summary>
    /// <param name="day">Any calendar day.</param>
    public bool Contains(LocalDate day) => Days.Contains(day);
}
