using NodaTime;

namespace SolarEconomics;

/// <summary>The versions of a tariff over the years of a run, each laid on the days of the first year.</summary>
internal sealed class TariffYears
{
    private readonly TariffHistory _tariffs;
    private readonly Timeline _time;
    private readonly IntervalGrid _grid;
    private readonly LocalDate _start;
    private readonly int _settledYear;

    internal TariffYears(TariffHistory tariffs, Timeline time)
    {
        for (var i = 1; i < time.Count; i++)
            if (time.Hours[i] != time.Hours[0]) throw Throw.TariffNeedsOneLength(time.LocalStartOf(i), time.Hours[i], time.Hours[0]);
        (_tariffs, _time, _start, _settledYear) = (tariffs, time, time.LocalStartOf(0).Date, 1);
        _grid = new IntervalGrid(time.StartOf(0), (time.End - time.StartOf(0)) / time.Count, time.Count);
        while (StartOf(_settledYear) < tariffs.Latest.From) _settledYear++;
    }

    /// <summary>Whether a version began inside the year before or begins inside this one.</summary>
    internal bool ChangesAround(int year) => _tariffs.Versions.Any(v => v.From > StartOf(year - 1) && v.From < StartOf(year + 1));

    /// <summary>Whole years since the last version was in force from the first day on.</summary>
    internal int YearsOfGrowth(int year) => Math.Max(0, year - _settledYear);

    internal Conditions Price(Conditions conditions, int year)
    {
        // 29 February lands on the 28th where the first year has none; the later version then holds.
        var versions = _tariffs.Versions.Select(v => v with { From = v.From.PlusYears(1 - year) }).GroupBy(v => v.From).Select(same => same.Last());
        return conditions.PricedBy(TariffHistory.Of([.. versions]).On(_grid, _time.Zone));
    }

    private LocalDate StartOf(int year) => _start.PlusYears(year - 1);
}
