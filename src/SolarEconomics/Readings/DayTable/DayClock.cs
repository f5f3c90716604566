using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Gives the intervals of one day their times. Only the days of clock changes need thought.</summary>
internal sealed class DayClock
{
    private readonly LocalDate _day;
    private readonly DateTimeZone _zone;
    private readonly SlotGroup _group;
    private readonly long _startMs;
    private readonly long _endMs;
    private readonly bool _passed;

    private DayClock(LocalDate day, SlotGroup group, DateTimeZone zone, bool passed)
    {
        (_day, _group, _zone, _passed) = (day, group, zone, passed);
        (_startMs, _endMs) = (LocalDays.StartOf(day, zone).ToUnixTimeMilliseconds(), LocalDays.StartOf(day.PlusDays(1), zone).ToUnixTimeMilliseconds());
    }

    /// <summary>What is doubtful about the day as a whole; <see langword="null"/> where nothing is.</summary>
    internal (string Found, string Expected)? Doubt { get; private init; }

    /// <param name="day">The day.</param>
    /// <param name="length">How long it was.</param>
    /// <param name="group">The columns.</param>
    /// <param name="last">Place of the last column with a number, counted from 1.</param>
    /// <param name="lastAboveZero">Place of the last column with a number other than zero: some programs fill columns that a day does not have with zeros.</param>
    /// <param name="zone">Clock of the days.</param>
    internal static DayClock Of(LocalDate day, Duration length, SlotGroup group, int last, int lastAboveZero, DateTimeZone zone)
    {
        if (length == Duration.FromHours(24)) return new DayClock(day, group, zone, passed: true);
        var slots = (int)Math.Round(length.TotalMinutes / group.StepMinutes);
        // Numbers count the time that passed where they end with the day: 46 of 48 in spring, 50 in autumn.
        var passed = group.Numbered && (slots < group.PerDay ? lastAboveZero <= slots : last > group.PerDay);
        var hasBoth = passed || group.Slots.Any(s => s.SecondPass);
        return new DayClock(day, group, zone, passed)
        {
            Doubt = slots > group.PerDay && !hasBoth
                ? (string.Create(CultureInfo.InvariantCulture, $"{group.PerDay} columns for a day of {length.TotalHours:0.#} hours in {zone.Id}"), "columns for both passes of the hour that the clock showed twice; its values are read as the first pass, and the second is a gap")
                : null,
        };
    }

    /// <summary>Start of an interval in milliseconds since 1970; <see langword="null"/> where the day had no such time.</summary>
    internal long? StartOf(Slot slot)
    {
        if (_passed)
        {
            var ms = _startMs + (slot.Minutes * 60_000L);
            return slot.SecondPass || ms >= _endMs ? null : ms;
        }
        if (slot.Minutes >= 1440) return null;
        var map = _zone.MapLocal(_day.AtMidnight().PlusMinutes(slot.Minutes));
        if (map.Count == 0 || (slot.SecondPass && map.Count < 2)) return null;
        return (slot.SecondPass ? map.Last() : map.First()).ToInstant().ToUnixTimeMilliseconds();
    }
}
