using NodaTime;

namespace SolarEconomics;

/// <summary>Sorts the days of a tariff into classes that price alike: seasons × kind of day.</summary>
internal sealed class DayCalendar
{
    internal const int Kinds = 8;
    private const int HolidayKind = 7;
    private readonly Tariff _tariff;
    private readonly int[] _maskOfDay = new int[13 * 32];
    private readonly List<int> _masks = [];

    internal DayCalendar(Tariff tariff)
    {
        _tariff = tariff;
        // A leap year holds every day of the year that there can be.
        for (var day = new LocalDate(2024, 1, 1); day.Year == 2024; day = day.PlusDays(1))
        {
            var mask = 0;
            for (var s = 0; s < tariff.Seasons.Count; s++)
                if (tariff.Seasons[s].Contains(day)) mask |= 1 << s;
            var index = _masks.IndexOf(mask);
            if (index < 0)
            {
                index = _masks.Count;
                _masks.Add(mask);
            }
            _maskOfDay[(day.Month * 32) + day.Day] = index;
        }
    }

    internal int ClassCount => _masks.Count * Kinds;

    internal int ClassOf(LocalDate day)
    {
        var kind = _tariff.Holidays.Contains(day) ? HolidayKind : (int)day.DayOfWeek - 1;
        return (_maskOfDay[(day.Month * 32) + day.Day] * Kinds) + kind;
    }

    /// <summary>Whether a class can occur: a holiday needs a tariff that names holidays.</summary>
    internal bool Occurs(int dayClass) => dayClass % Kinds != HolidayKind || _tariff.Holidays.Any;

    internal static TariffDays KindOf(int dayClass) => (TariffDays)(1 << (dayClass % Kinds));

    internal int SeasonsOf(int dayClass) => dayClass / Kinds;

    internal bool Applies(RateWindow window, int dayClass)
    {
        if (!window.Days.HasFlag(KindOf(dayClass))) return false;
        if (window.Season is null) return true;
        for (var s = 0; s < _tariff.Seasons.Count; s++)
            if (string.Equals(_tariff.Seasons[s].Name, window.Season, StringComparison.Ordinal))
                return (_masks[dayClass / Kinds] & (1 << s)) != 0;
        return false;
    }

    /// <summary>The season of a class in words; <see langword="null"/> where the tariff knows no seasons.</summary>
    internal string? SeasonWords(int seasons)
    {
        if (_tariff.Seasons.Count == 0) return null;
        var mask = _masks[seasons];
        var inside = _tariff.Seasons.Where((_, s) => (mask & (1 << s)) != 0).Select(s => s.Name).ToList();
        return inside.Count > 0 ? DayWords.And(inside) : "the rest of the year";
    }
}
