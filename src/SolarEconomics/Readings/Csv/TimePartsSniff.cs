namespace SolarEconomics;

/// <summary>Finds times that stand in several columns: by headers that name year, month, day and hour, or by numbers of intervals beside a date.</summary>
internal static class TimePartsSniff
{
    private const int LinesLookedAt = 60;
    private const int RowsLookedAt = 400;

    private static readonly string[] YearWords = ["year", "yyyy", "jahr", "annee", "année", "ano", "año", "anno", "jaar", "år"];
    private static readonly string[] MonthWords = ["month", "mm", "monat", "mois", "mes", "mese", "maand", "månad", "måned"];
    private static readonly string[] DayWords = ["day", "dd", "tag", "jour", "dia", "día", "giorno", "dag"];
    private static readonly string[] HourWords = ["hour", "hr", "hh", "stunde", "heure", "hora", "ora", "uur", "he", "timme"];
    private static readonly string[] MinuteWords = ["minute", "min", "minuto", "minuut"];
    private static readonly string[] PeriodWords = ["period", "interval", "slot", "sp", "periode", "intervall"];

    /// <summary>A table whose rows state year and more in columns of their own; <see langword="null"/> where there is none.</summary>
    internal static CsvTable? Find(IReadOnlyList<string> lines)
    {
        for (var line = 0; line < Math.Min(lines.Count - 1, LinesLookedAt); line++)
            foreach (var delimiter in CsvSniff.Delimiters)
            {
                var headers = CsvText.Fields(lines[line], delimiter);
                var year = IndexOf(headers, YearWords);
                if (headers.Length < 2 || year < 0) continue;
                var parts = new TimeParts { Year = year, Month = IndexOf(headers, MonthWords), Day = IndexOf(headers, DayWords), Number = IndexOf(headers, HourWords), Minute = IndexOf(headers, MinuteWords) };
                if (parts.Month < 0) parts = parts with { Day = -1 };
                if (parts.Day < 0) parts = parts with { Number = -1 };
                if (parts.Number < 0) parts = parts with { Minute = -1 };
                var rows = lines.Skip(line + 1).Take(RowsLookedAt).Select(l => CsvText.Fields(l, delimiter)).Where(r => r.Length > 1 && parts.TryDay(r, out _)).ToList();
                if (rows.Count == 0) continue;
                if (parts.Number >= 0 && rows.TrueForAll(r => !TimeParts.TryWhole(r, parts.Number, out var hour) || hour >= 1)) parts = parts with { First = 1 };
                return new CsvTable(delimiter, year, line + 2, rows) { Parts = parts };
            }
        return null;
    }

    /// <summary>A column of hours or numbers of intervals beside a date that stands in many rows; <see langword="null"/> where there is none.</summary>
    internal static TimeParts? BesideDate(CsvTable table, string[] headers)
    {
        if (table.Rows.Select(r => r[table.StampIndex]).Distinct(StringComparer.Ordinal).Count() * 2 > table.Rows.Count) return null;
        for (var i = 0; i < headers.Length; i++)
        {
            var (hours, periods) = (Has(headers[i], HourWords), Has(headers[i], PeriodWords));
            if (i == table.StampIndex || !(hours || periods)) continue;
            var index = i;
            if (!table.Rows.All(r => TimeParts.TryWhole(r, index, out _))) continue;
            var numbers = table.Rows.Select(r => TimeParts.TryWhole(r, index, out var number) ? number : 0).ToList();
            var first = Math.Min(1, numbers.Min());
            var count = numbers.Max() - first + 1;
            // The highest number tells how many a day has; a day of 25 hours has one hour more, one of 23 hours one less.
            var perDay = hours && !periods && count <= 25 ? 24 : Array.Find([24, 48, 96, 144, 288], n => count >= n - (n / 24) && count <= n + (n / 24));
            if (perDay > 0) return new TimeParts { Number = i, First = first, StepMinutes = 1440 / perDay, Passed = first == 1 || !hours };
        }
        return null;
    }

    private static int IndexOf(string[] headers, string[] words) =>
        Array.FindIndex(headers, h => words.Contains(h.Trim().Trim('"', '#').Trim(), StringComparer.OrdinalIgnoreCase));

    private static bool Has(string header, string[] words) =>
        Array.Exists(header.Split([' ', '_', '-', '(', ')', '.'], StringSplitOptions.RemoveEmptyEntries), w => words.Contains(w, StringComparer.OrdinalIgnoreCase));
}
