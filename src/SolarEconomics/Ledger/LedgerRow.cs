using System.Globalization;
using CsvHelper;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>One row of a ledger file: each field is read or becomes a problem with line, column and raw text.</summary>
internal sealed class LedgerRow(CsvReader csv, string file, string[] header)
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    // A thousand times what any home costs in any currency; sums of thousands of entries stay far inside a decimal.
    internal const decimal MostMoney = 1e12m;

    private const string AtMost = "at most 1,000,000,000,000: check the digits, sums of such amounts are no money";

    internal string File => file;

    internal int Line { get; } = (int)csv.LineNumber;

    internal void CheckFieldCount(List<Problem> lost)
    {
        if (csv.FieldCount <= header.Length) return;
        lost.Add(new Problem(file, Line, 0, "", string.Create(CultureInfo.InvariantCulture, $"{csv.FieldCount} fields"),
            string.Create(CultureInfo.InvariantCulture, $"{header.Length} as in the heading: a number is written without thousands marks, and text with a comma stands in quotes"),
            Severity.Lost));
    }

    internal LocalDate Date(List<Problem> lost)
    {
        var raw = Raw("date");
        var parsed = LocalDatePattern.Iso.Parse(raw);
        if (parsed.Success) return parsed.Value;
        lost.Add(Problem("date", Quoted(raw), "a day written as 2024-03-31", Severity.Lost));
        return default;
    }

    internal LedgerKind Kind(List<Problem> lost)
    {
        var raw = Raw("kind");
        if (LedgerKinds.TryParse(raw, out var kind)) return kind;
        lost.Add(Problem("kind", Quoted(raw), raw.Length == 0
            ? $"a kind such as {Nearest.List("purchase", LedgerKinds.Words)}"
            : $"a kind; nearest are {Nearest.List(raw, LedgerKinds.Words)}", Severity.Lost));
        return default;
    }

    internal decimal Amount(List<Problem> lost)
    {
        var raw = Raw("amount");
        if (!TryMoney(raw, out var amount))
        {
            lost.Add(Problem("amount", Quoted(raw), "a number with a point and no other marks, such as 1234.50", Severity.Lost));
        }
        else if (amount < 0)
        {
            lost.Add(Problem("amount", Quoted(raw),
                "0 or more: the kind says which way money went, and money back is kind refund or sale", Severity.Lost));
        }
        else if (amount > MostMoney)
        {
            lost.Add(Problem("amount", Quoted(raw), AtMost, Severity.Lost));
        }
        return amount;
    }

    internal Currency Currency(List<Problem> lost)
    {
        var raw = Raw("currency");
        try
        {
            return SolarEconomics.Currency.Of(raw);
        }
        catch (UnknownNameException)
        {
            lost.Add(Problem("currency", Quoted(raw),
                $"a currency code of ISO 4217; nearest are {Nearest.List(raw, CurrencyTable.MinorDigits.Keys)}", Severity.Lost));
            return default;
        }
    }

    internal double OwnHours(List<Problem> lost)
    {
        var raw = Raw("own hours");
        if (raw.Length == 0) return 0;
        if (double.TryParse(raw, Plain, CultureInfo.InvariantCulture, out var hours) && hours is >= 0 and <= 1e5) return hours;
        lost.Add(Problem("own hours", Quoted(raw), "hours from 0 to 100000, such as 6.5", Severity.Lost));
        return 0;
    }

    /// <summary>The market price, where the row has one.</summary>
    internal decimal? MarketPrice(List<Problem> lost)
    {
        var raw = Raw("market price");
        if (raw.Length == 0) return null;
        var isNumber = TryMoney(raw, out var price);
        if (isNumber && price is >= 0 and <= MostMoney) return price;
        lost.Add(Problem("market price", Quoted(raw), isNumber && price > 0 ? AtMost : "a number of 0 or more with a point and no other marks, such as 350.00, or nothing", Severity.Lost));
        return null;
    }

    /// <summary>The days of an entry that repeats: from its date in steps of <c>every</c>, before <c>until</c>; else its date alone.</summary>
    internal IReadOnlyList<LocalDate> Days(LocalDate first, List<Problem> lost)
    {
        var (every, until) = (Raw("every"), Raw("until"));
        if (every.Length == 0 && until.Length == 0) return [first];
        var months = every.ToLowerInvariant() switch { "month" => 1, "quarter" => 3, "year" => 12, _ => 0 };
        if (months == 0)
        {
            lost.Add(Problem("every", Quoted(every), "month, quarter or year beside a day in \"until\"", Severity.Lost));
            return [];
        }
        var end = LocalDatePattern.Iso.Parse(until);
        if (!end.Success || end.Value <= first || end.Value > first.PlusYears(100))
        {
            lost.Add(Problem("until", Quoted(until), "the first day that no longer counts, after the date and within 100 years, such as 2034-03-31", Severity.Lost));
            return [];
        }
        var days = new List<LocalDate>();
        // Counted from the first day each time: the 31st stays the 31st after a short month.
        for (var step = 0; first.PlusMonths(step * months) is var day && day < end.Value; step++) days.Add(day);
        return days;
    }

    /// <summary>A number, also one that no decimal holds: it stands as the largest, so that its size is what is said of it and not its form.</summary>
    private static bool TryMoney(string raw, out decimal amount)
    {
        if (decimal.TryParse(raw, Plain, CultureInfo.InvariantCulture, out amount)) return true;
        if (!double.TryParse(raw, Plain, CultureInfo.InvariantCulture, out var size)) return false;
        amount = size < 0 ? decimal.MinValue : decimal.MaxValue;
        return true;
    }

    internal string? Text(string column) => Raw(column) is { Length: > 0 } text ? text : null;

    internal Problem Problem(string column, string found, string expected, Severity severity) =>
        new(file, Line, IndexOf(column) + 1, Shortened(Raw(column)), $"{column} {found}", expected, severity);

    private string Raw(string column)
    {
        var index = IndexOf(column);
        return index < 0 || index >= csv.FieldCount ? "" : csv.GetString(index).Trim();
    }

    private int IndexOf(string column) => Array.FindIndex(header, h => h.Equals(column, StringComparison.OrdinalIgnoreCase));

    private static string Quoted(string raw) => raw.Length == 0 ? "nothing" : $"\"{Shortened(raw)}\"";

    private static string Shortened(string raw) => raw.Length <= 200 ? raw : raw[..200] + "…";
}
