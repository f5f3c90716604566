namespace SolarEconomics;

/// <summary>Kinds of day and hours in words, for bills and messages.</summary>
internal static class DayWords
{
    private static readonly (TariffDays Day, string Word)[] Single =
    [
        (TariffDays.Monday, "Mondays"), (TariffDays.Tuesday, "Tuesdays"), (TariffDays.Wednesday, "Wednesdays"),
        (TariffDays.Thursday, "Thursdays"), (TariffDays.Friday, "Fridays"), (TariffDays.Saturday, "Saturdays"),
        (TariffDays.Sunday, "Sundays"), (TariffDays.Holidays, "holidays"),
    ];

    internal static string Days(TariffDays days)
    {
        const TariffDays allWeek = TariffDays.Weekdays | TariffDays.Weekends;
        var words = new List<string>();
        var rest = days;
        if ((rest & allWeek) == allWeek)
        {
            if (rest.HasFlag(TariffDays.Holidays)) return "every day";
            return "every day but holidays";
        }
        Take(TariffDays.Weekdays, "weekdays");
        Take(TariffDays.Weekends, "weekends");
        words.AddRange(Single.Where(s => rest.HasFlag(s.Day)).Select(s => s.Word));
        return words.Count == 0 ? "no day" : And(words);

        void Take(TariffDays group, string word)
        {
            if ((rest & group) != group) return;
            words.Add(word);
            rest &= ~group;
        }
    }

    internal static string When(string? season, TariffDays days, IEnumerable<HourSpan> hours)
    {
        var words = Days(days);
        if (season is not null) words += " in " + season;
        var spans = hours.ToList();
        return spans.Count == 1 && spans[0] == HourSpan.WholeDay ? words : words + ", " + And([.. spans.Select(h => h.ToString())]);
    }

    internal static string And(IReadOnlyList<string> words) =>
        words.Count <= 1 ? string.Concat(words) : string.Join(", ", words.Take(words.Count - 1)) + " and " + words[^1];
}
