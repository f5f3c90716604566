namespace SolarEconomics;

/// <summary>Dates as bare numbers: days since a workbook's first, the time of day behind the point. Never guessed: another number could stand there, and there are two first days.</summary>
/// <remarks>Source: readings-serial (ECMA-376: 1900 system, in which 1900 is taken for a leap year, so that day 0 of later dates is 1899-12-30; 1904 system).</remarks>
internal static class SerialDates
{
    /// <summary>Numbers that may be dates of readings: years 2000 to 2050 counted from 1900.</summary>
    private const double Least = 36_526;
    private const double Most = 55_000;
    private const double MsPerDay = 86_400_000;

    /// <summary>Fractions of days have about this precision in a workbook. Unit: milliseconds.</summary>
    private const double RoundsToMs = 1;
    private const double RoundsToSecondWithinMs = 50;

    private static readonly string[] HeaderWordsOfTime =
        ["date", "time", "datetime", "timestamp", "day", "start", "from", "begin", "datum", "zeit", "tag", "zeitpunkt", "von", "fecha", "heure", "jour", "data", "dato", "tijd", "interval", "period", "horodate", "hora", "ora", "mese", "mois", "mes", "monat", "month", "maand", "godzina", "日時", "日付"];

    internal static bool IsSerial(string field) => TryNumber(field, out var number) && number is >= Least and <= Most;

    /// <summary>The table of such dates, where the user said from which day they count; refused with both readings where not; <see langword="null"/> where there is none.</summary>
    internal static CsvTable? Table(RecordFile file, IReadOnlyList<string> lines, ReadOptions options)
    {
        if (Find(lines) is not { } table || options.SerialDates != SerialDays.NotToldYet) return Find(lines);
        var first = table.Rows[0][table.StampIndex].Trim();
        TryRead(first, Marks(first), ZeroOf(SerialDays.From1900), out var since1900);
        TryRead(first, Marks(first), ZeroOf(SerialDays.From1904), out var since1904);
        throw Throw.SerialDates(file.Name, table.LineOf(0), table.StampIndex + 1, first, since1900, since1904);
    }

    /// <summary>A table whose first fields are such numbers under a header that speaks of time.</summary>
    internal static CsvTable? Find(IReadOnlyList<string> lines)
    {
        if (CsvSniff.Find(lines, IsSerial) is not { FirstLine: > 1 } table) return null;
        var above = table.FirstLine - 2;
        while (above > 0 && ReferenceEquals(lines[above], WholeRows.Joined)) above--;
        var header = CsvText.Fields(lines[above], table.Delimiter);
        if (table.StampIndex >= header.Length) return null;
        return SaysTime(header[table.StampIndex]) ? table : null;
    }

    /// <summary>Whether a header speaks of time.</summary>
    internal static bool SaysTime(string header) =>
        Array.Exists(header.Split([' ', '_', '-', '(', ')', '/', '.'], StringSplitOptions.RemoveEmptyEntries), w => HeaderWordsOfTime.Contains(w, StringComparer.OrdinalIgnoreCase));

    internal static StampColumns Columns(CsvTable table, SerialDays from)
    {
        var whole = table.Rows.Count(r => TryNumber(r[table.StampIndex], out var n) && n == Math.Floor(n));
        return new StampColumns(table.StampIndex, StampForm.DaysOfWorkbook)
        {
            DayZero = ZeroOf(from),
            Fineness = whole == table.Rows.Count ? StampFineness.Day : StampFineness.Time,
        };
    }

    internal static bool TryRead(string text, NumberText numbers, int dayZero, out Stamp stamp)
    {
        stamp = default;
        if (!numbers.TryRead(text, out var days) || days is < Least or > Most) return false;
        var ms = Math.Round(days * MsPerDay / RoundsToMs) * RoundsToMs;
        var second = Math.Round(ms / 1000) * 1000;
        if (Math.Abs(ms - second) <= RoundsToSecondWithinMs) ms = second;
        stamp = new Stamp((long)ms + (dayZero * (long)MsPerDay), null, days == Math.Floor(days) ? StampFineness.Day : StampFineness.Time);
        return true;
    }

    private static int ZeroOf(SerialDays from) =>
        (int)(from == SerialDays.From1904 ? StampText.DaysSince1970(1904, 1, 1) : StampText.DaysSince1970(1899, 12, 30));

    private static bool TryNumber(string field, out double number) => Marks(field).TryRead(field, out number);

    private static NumberText Marks(string field) => field.Contains(',', StringComparison.Ordinal) ? new NumberText(',', null) : NumberText.Plain;
}
