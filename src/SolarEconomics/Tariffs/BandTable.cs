namespace SolarEconomics;

/// <summary>Which rate of an energy part applies at each minute of each class of day, with the hours that no rate or several claim.</summary>
internal sealed class BandTable
{
    internal const int MinutesPerDay = 1440;
    internal const byte NoRate = 255;
    private readonly byte[] _band;
    private readonly short[] _runEnd;

    internal BandTable(EnergyPart part, DayCalendar calendar)
    {
        Part = part;
        _band = new byte[calendar.ClassCount * MinutesPerDay];
        _runEnd = new short[_band.Length];
        Array.Fill(_band, NoRate);
        var cells = new CoverageCells(part, calendar);
        for (var dayClass = 0; dayClass < calendar.ClassCount; dayClass++)
        {
            var day = _band.AsSpan(dayClass * MinutesPerDay, MinutesPerDay);
            Claim(part, calendar, dayClass, day, cells);
            RunEnds(day, _runEnd.AsSpan(dayClass * MinutesPerDay, MinutesPerDay));
        }
        Mistakes = cells.Sentences();
    }

    internal EnergyPart Part { get; }

    /// <summary>Such as <c>weekends in winter, 17:00–19:00, no rate</c>; empty where every hour is covered once.</summary>
    internal IReadOnlyList<string> Mistakes { get; }

    internal byte BandAt(int dayClass, int minute) => _band[(dayClass * MinutesPerDay) + minute];

    /// <summary>First minute after <paramref name="minute"/> at which another rate may apply; 1440 at the end of the day.</summary>
    internal int RunEnd(int dayClass, int minute) => _runEnd[(dayClass * MinutesPerDay) + minute];

    private static void Claim(EnergyPart part, DayCalendar calendar, int dayClass, Span<byte> day, CoverageCells cells)
    {
        var rest = NoRate;
        for (var rate = 0; rate < part.Rates.Count; rate++)
        {
            if (part.Rates[rate].IsOtherwise)
            {
                if (rest == NoRate) rest = (byte)rate;
                continue;
            }
            foreach (var window in part.Rates[rate].Windows)
            {
                if (!calendar.Applies(window, dayClass)) continue;
                foreach (var hours in window.Hours)
                    for (var minute = 0; minute < MinutesPerDay; minute++)
                    {
                        if (!hours.Contains(minute)) continue;
                        // Hours named twice for one rate cost the same either way.
                        if (day[minute] != NoRate && day[minute] != rate) cells.Twice(dayClass, minute, day[minute], rate);
                        else day[minute] = (byte)rate;
                    }
            }
        }
        for (var minute = 0; minute < MinutesPerDay; minute++)
        {
            if (day[minute] != NoRate) continue;
            day[minute] = rest;
            if (rest == NoRate) cells.None(dayClass, minute);
        }
    }

    private static void RunEnds(ReadOnlySpan<byte> day, Span<short> runEnd)
    {
        var end = (short)MinutesPerDay;
        for (var minute = MinutesPerDay - 1; minute >= 0; minute--)
        {
            if (minute < MinutesPerDay - 1 && day[minute] != day[minute + 1]) end = (short)(minute + 1);
            runEnd[minute] = end;
        }
    }
}
