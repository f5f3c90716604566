using System.Globalization;
using NodaTime;

namespace SolarEconomics;

internal sealed partial class CsvRows
{
    /// <summary>A time whose parts stand in several columns.</summary>
    private bool TryParts(ReadOnlySpan<string> fields, TimeParts parts, out Stamp stamp)
    {
        if (parts.Year >= 0 ? !parts.TryDay(fields, out stamp) : !TryStampText(fields[_layout.Stamp.Index], out stamp)) return false;
        if (parts.Number < 0) return true;
        if (stamp.Fineness != StampFineness.Day && stamp.LocalMs % 86_400_000 != 0) return false;
        if (!parts.TryTime(fields, out var ms)) return false;
        stamp = stamp with { LocalMs = stamp.LocalMs + ms, Fineness = StampFineness.Time };
        return true;
    }

    /// <summary>The instant of an interval that is numbered by the time that passed since its day began; false, and reported, where the day was over by then.</summary>
    private bool TryPassed(Stamp stamp, ReadOnlySpan<string> fields, TimeParts parts, int line, out long unixMs)
    {
        var zone = _zone ?? throw Throw.NeedsZone(_problems.File, line, _layout.Stamp.Index + 1, fields[_layout.Stamp.Index]);
        parts.TryTime(fields, out var ms);
        var day = StampClock.LocalOf(stamp.LocalMs - ms).Date;
        unixMs = LocalDays.StartOf(day, zone).ToUnixTimeMilliseconds() + ms;
        if (unixMs < LocalDays.StartOf(day.PlusDays(1), zone).ToUnixTimeMilliseconds()) return true;
        _problems.Lost(line, parts.Number + 1, fields[parts.Number], string.Create(CultureInfo.InvariantCulture, $"number {fields[parts.Number]} on a day of {LocalDays.LengthOf(day, zone).TotalHours:0.#} hours in {zone.Id}"),
            "numbers up to the end of the day. If the device keeps standard time all year, give that fixed zone; the row was not counted", EnergyOf(fields));
        return false;
    }
}
