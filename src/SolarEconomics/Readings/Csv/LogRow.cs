using System.Globalization;
using CsvHelper;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>One row of a log kept by hand; what cannot be read is added to the problems and stands in as nothing.</summary>
internal sealed class LogRow(CsvReader csv, string file, string[] header, ICollection<Problem> lost)
{
    internal string File => file;

    internal int Line { get; } = (int)csv.LineNumber;

    internal LocalDate Date(string column)
    {
        var found = LocalDatePattern.Iso.Parse(Text(column) ?? "");
        if (found.Success) return found.Value;
        Lose(column, "a date such as 2024-03-31");
        return default;
    }

    /// <summary>A number in a range; <see langword="null"/> where the field is empty.</summary>
    internal double? Number(string column, double low, double high, string unit)
    {
        if (Text(column) is not { } text) return null;
        if (double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high)
            return number;
        Lose(column, string.Create(CultureInfo.InvariantCulture, $"a number from {low:0.###} to {high:0.###} with a decimal point ({unit})"));
        return null;
    }

    /// <summary>A number that must stand there.</summary>
    internal double NeededNumber(string column, double low, double high, string unit)
    {
        if (Text(column) is null) Lose(column, $"a number ({unit})");
        return Number(column, low, high, unit) ?? 0;
    }

    /// <summary>One of some words.</summary>
    internal int Word(string column, IReadOnlyList<string> words)
    {
        var text = Text(column) ?? "";
        for (var k = 0; k < words.Count; k++)
            if (string.Equals(words[k], text, StringComparison.OrdinalIgnoreCase)) return k;
        Lose(column, $"one of {Nearest.List(text, words, words.Count)}");
        return 0;
    }

    /// <summary>The field without blanks around it; <see langword="null"/> where it is empty or there is no such column.</summary>
    internal string? Text(string column)
    {
        var at = Array.FindIndex(header, h => string.Equals(h, column, StringComparison.OrdinalIgnoreCase));
        if (at < 0 || at >= csv.FieldCount) return null;
        var text = csv.GetString(at).Trim();
        return text.Length == 0 ? null : text;
    }

    internal void Lose(string column, string expected)
    {
        var at = Array.FindIndex(header, h => string.Equals(h, column, StringComparison.OrdinalIgnoreCase));
        var text = Text(column);
        lost.Add(new Problem(file, Line, at + 1, ProblemList.Shorten(text ?? ""), text is null ? $"nothing as {column}" : $"\"{ProblemList.Shorten(text)}\" as {column}", expected, Severity.Lost));
    }
}
