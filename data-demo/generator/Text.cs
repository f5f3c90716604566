using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace AlderWeir;

/// <summary>How the files are written: UTF-8 without a mark, lines ended by a line feed, numbers and dates the same in every culture.</summary>
internal static class Text
{
    internal const string Invented =
        "Invented data. Alder Weir does not exist: the generator in data-demo/generator makes its house, weather, receipts and prices.";

    private static readonly LocalDateTimePattern StampPattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm");

    internal static byte[] Bytes(string text) => new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text.ReplaceLineEndings("\n"));

    /// <summary>The text of a CSV file as far as its first line, which says that its data are invented.</summary>
    internal static StringBuilder Sheet() => new StringBuilder("# ").Append(Invented).Append('\n');

    internal static string Stamp(LocalDateTime local) => StampPattern.Format(local);

    internal static string Day(LocalDate day) => LocalDatePattern.Iso.Format(day);

    /// <summary>Whole watt-hours as kWh with three decimals.</summary>
    internal static string Kwh(long wh) => string.Create(CultureInfo.InvariantCulture, $"{wh / 1000}.{wh % 1000:D3}");

    internal static string Whole(long value) => value.ToString(CultureInfo.InvariantCulture);

    internal static string Amount(decimal value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>A row of a CSV file; a field with a comma or a quote is quoted.</summary>
    internal static string Row(params string[] fields) => string.Join(',', fields.Select(Field));

    private static string Field(string text) =>
        text.Contains(',', StringComparison.Ordinal) || text.Contains('"', StringComparison.Ordinal)
            ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : text;
}
