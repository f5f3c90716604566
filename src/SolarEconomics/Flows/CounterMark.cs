using NodaTime;

namespace SolarEconomics;

/// <summary>A counter reading on the grid: the earliest and the latest interval before which it can have been taken.</summary>
internal readonly record struct CounterMark(int Earliest, int Latest, int Nominal, double Kwh)
{
    /// <summary>A reading taken at some time of its day, give or take its days of doubt.</summary>
    internal static CounterMark Of(CounterReading reading, IntervalGrid grid, DateTimeZone zone)
    {
        var latest = CountedService.IndexOf(reading.Date.PlusDays(reading.DaysUncertain + 1), grid, zone);
        return new CounterMark(CountedService.IndexOf(reading.Date.PlusDays(-reading.DaysUncertain), grid, zone), latest,
            CountedService.IndexOf(reading.Date.PlusDays(1), grid, zone), reading.Kwh);
    }

    /// <summary>The opening value, at the start of the first day of service.</summary>
    internal static CounterMark AtStartOf(LocalDate day, double kwh, IntervalGrid grid, DateTimeZone zone)
    {
        var index = CountedService.IndexOf(day, grid, zone);
        return new CounterMark(index, index, index, kwh);
    }

    /// <summary>Whether a reading may have been taken outside the grid: what lies outside is in no interval, so it bounds nothing here.</summary>
    internal static bool IsOutside(LocalDate day, int uncertain, IntervalGrid grid, DateTimeZone zone) =>
        zone.AtStartOfDay(day.PlusDays(-uncertain)).ToInstant() < grid.Start || zone.AtStartOfDay(day.PlusDays(uncertain)).ToInstant() >= grid.End;
}
