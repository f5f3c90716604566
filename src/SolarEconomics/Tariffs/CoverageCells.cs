namespace SolarEconomics;

/// <summary>Collects the minutes that no rate or several rates claim, and says them as a calendar.</summary>
internal sealed class CoverageCells(EnergyPart part, DayCalendar calendar)
{
    private readonly Dictionary<string, bool[]> _wrong = [];

    internal void None(int dayClass, int minute) => Mark(dayClass, minute, "no rate");

    internal void Twice(int dayClass, int minute, int first, int second) =>
        Mark(dayClass, minute, $"two rates: \"{part.Rates[first].Name}\" and \"{part.Rates[second].Name}\"");

    private void Mark(int dayClass, int minute, string what)
    {
        if (!calendar.Occurs(dayClass)) return;
        if (!_wrong.TryGetValue(what, out var cells))
            _wrong.Add(what, cells = new bool[calendar.ClassCount * BandTable.MinutesPerDay]);
        cells[(dayClass * BandTable.MinutesPerDay) + minute] = true;
    }

    /// <summary>One sentence per fault, season and set of days that share the same hours.</summary>
    internal IReadOnlyList<string> Sentences()
    {
        var sentences = new List<string>();
        foreach (var (what, cells) in _wrong)
        {
            var days = Enumerable.Range(0, calendar.ClassCount)
                .Select(c => (Class: c, Hours: Spans(cells.AsSpan(c * BandTable.MinutesPerDay, BandTable.MinutesPerDay))))
                .Where(d => d.Hours.Count > 0);
            // The same hours wrong in every season are one fault, not one per season.
            var bySeason = days.GroupBy(d => (Season: calendar.SeasonsOf(d.Class), Hours: string.Join(" and ", d.Hours)))
                .Select(g => (g.Key.Season, g.Key.Hours, Days: g.Aggregate(TariffDays.None, (all, d) => all | DayCalendar.KindOf(d.Class))));
            var seasonCount = calendar.ClassCount / DayCalendar.Kinds;
            foreach (var same in bySeason.GroupBy(s => (s.Hours, s.Days)))
            {
                var allYear = same.Count() == seasonCount;
                foreach (var season in allYear ? [same.First()] : same.ToArray())
                {
                    var words = DayWords.Days(WithoutImpossibleHoliday(season.Days));
                    var name = allYear ? null : calendar.SeasonWords(season.Season);
                    sentences.Add(words + (name is null ? "" : " in " + name) + ", " + season.Hours + ", " + what);
                }
            }
        }
        return sentences;
    }

    // A tariff that names no holiday has none left over: "every day" then means the seven weekdays.
    private TariffDays WithoutImpossibleHoliday(TariffDays days) =>
        calendar.Occurs(DayCalendar.Kinds - 1) ? days
        : (days & TariffDays.EveryDay) == (TariffDays.Weekdays | TariffDays.Weekends) ? TariffDays.EveryDay : days;

    private static List<string> Spans(ReadOnlySpan<bool> day)
    {
        var spans = new List<string>();
        for (var minute = 0; minute < day.Length; minute++)
        {
            if (!day[minute]) continue;
            var from = minute;
            while (minute < day.Length && day[minute]) minute++;
            spans.Add(HourSpan.Clock(from) + "–" + HourSpan.Clock(minute));
        }
        return spans;
    }
}
