using NodaTime;

namespace SolarEconomics;

/// <summary>A span of whole calendar days, half-open: <c>[Start, End)</c>.</summary>
/// <param name="Start">First day that belongs to the span.</param>
/// <param name="End">First day that no longer belongs to it; not before <paramref name="Start"/>.</param>
/// <remarks>The <c>default</c> is empty. The type carries no time zone: pass one where days become instants.</remarks>
public readonly record struct DateSpan(LocalDate Start, LocalDate End)
{
    /// <summary>Number of calendar days, 0 or more.</summary>
    public int Days => Period.DaysBetween(Start, End);

    /// <summary>Whether a day belongs to the span.</summary>
    /// <param name="day">Any calendar day.</param>
    public bool Contains(LocalDate day) => day >= Start && day < End;

    /// <summary>The days that two spans share; empty where they share none.</summary>
    /// <param name="other">The other span.</param>
    public DateSpan Overlap(DateSpan other)
    {
        var start = LocalDate.Max(Start, other.Start);
        var end = LocalDate.Min(End, other.End);
        return new DateSpan(start, LocalDate.Max(start, end));
    }

    /// <summary>Prints <c>2024-03-01 to 2024-04-01 (end excluded)</c>.</summary>
    public override string ToString() => $"{Iso(Start)} to {Iso(End)} (end excluded)";

    private static string Iso(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
