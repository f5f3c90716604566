using System.Globalization;
using CsvHelper;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <content>Reading prices from a file.</content>
public sealed partial class PriceSeries
{
    private static readonly IPattern<OffsetDateTime>[] WithOffset =
        [OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:sso<Z+HH:mm>"), OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mmo<Z+HH:mm>")];

    /// <summary>Reads a table of two columns: start and price. Lines that begin with <c>#</c> and a heading are passed over.</summary>
    /// <param name="path">Path of the .csv file; parted by comma, semicolon, tab or bar, fields in quotes or not.</param>
    /// <param name="zone">Clock of starts without an offset; the repeated autumn hour is told by the order of the rows.</param>
    /// <exception cref="RecordException">The file is missing, or a line in it is no start and price; all such lines are listed.</exception>
    public static PriceSeries Load(string path, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(zone);
        if (!File.Exists(path)) throw Throw.NoPriceFile(path);
        var prices = new List<(Instant Start, double Price)>();
        var problems = new List<Problem>();
        using var text = new StreamReader(path);
        using var csv = CsvReader.Create(text, Options, leaveOpen: true);
        try
        {
            while (csv.Read()) ReadRow(csv, path, zone, prices, problems);
        }
        catch (CsvFormatException error)
        {
            problems.Add(new Problem(path, (int)error.LineNumber, 0, "", "quotes that are not closed", "each field in two quotes or none", Severity.Lost));
        }
        if (problems.Count > 0) throw Throw.BadPriceLines(path, problems);
        return prices.Count < 2 ? throw Throw.FewPriceLines(path, prices.Count) : Of(Path.GetFileName(path), prices);
    }

    private static CsvReaderOptions Options => new()
    {
        CommentPrefix = '#', TrimWhitespace = true, TrackLineNumbers = true, HasHeader = false, MalformedData = CsvMalformedDataHandling.Throw,
    };

    private static void ReadRow(CsvReader csv, string path, DateTimeZone zone, List<(Instant Start, double Price)> prices, List<Problem> problems)
    {
        var start = csv.GetString(0);
        var isHeading = prices.Count == 0 && problems.Count == 0 && start.Length > 0 && !char.IsAsciiDigit(start[0]);
        if (isHeading) return;
        var before = prices.Count > 0 ? prices[^1].Start : Instant.MinValue;
        if (csv.FieldCount >= 2 && StartOf(start, zone, before) is { } at && at > before
            && double.TryParse(csv.GetString(1), NumberStyles.Float, CultureInfo.InvariantCulture, out var price) && double.IsFinite(price))
        {
            prices.Add((at, price));
            return;
        }
        var raw = string.Join(',', Enumerable.Range(0, csv.FieldCount).Select(csv.GetString));
        problems.Add(new Problem(path, (int)csv.LineNumber, 1, raw.Length > 80 ? raw[..80] : raw, "no start after the one before with a price", "such as 2024-03-01 17:00,0.2134", Severity.Lost));
    }

    private static Instant? StartOf(string text, DateTimeZone zone, Instant before)
    {
        foreach (var pattern in WithOffset)
            if (pattern.Parse(text) is { Success: true } parsed) return parsed.Value.ToInstant();
        return LocalStamp.Parsed(text) is { } local ? LocalStamp.InRowOrder(local, zone, before) : null;
    }
}
