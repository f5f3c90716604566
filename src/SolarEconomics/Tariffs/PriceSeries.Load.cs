using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <content>Reading prices from a file.</content>
public sealed partial class PriceSeries
{
    private static readonly IPattern<OffsetDateTime>[] WithOffset =
        [OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:sso<Z+HH:mm>"), OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mmo<Z+HH:mm>")];

    /// <summary>Reads a table of two columns: start and price. Lines that begin with <c>#</c> and a heading are passed over.</summary>
    /// <param name="path">Path of the .csv file.</param>
    /// <param name="zone">Clock of starts without an offset; the repeated autumn hour is told by the order of the rows.</param>
    /// <exception cref="RecordException">The file is missing, or a line in it is no start and price; all such lines are listed.</exception>
    public static PriceSeries Load(string path, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(zone);
        if (!File.Exists(path)) throw Throw.NoFile(path);
        var prices = new List<(Instant Start, double Price)>();
        var problems = new List<Problem>();
        var number = 0;
        foreach (var line in File.ReadLines(path))
        {
            number++;
            var fields = line.Split([',', ';', '\t'], StringSplitOptions.TrimEntries);
            if (line.Length == 0 || line[0] == '#' || (prices.Count == 0 && problems.Count == 0 && fields[0].Length > 0 && !char.IsAsciiDigit(fields[0][0]))) continue;
            var before = prices.Count > 0 ? prices[^1].Start : Instant.MinValue;
            if (fields.Length >= 2 && StartOf(fields[0], zone, before) is { } start && start > before
                && double.TryParse(fields[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var price) && double.IsFinite(price)) prices.Add((start, price));
            else problems.Add(new Problem(path, number, 1, line.Length > 80 ? line[..80] : line, "no start after the one before with a price", "such as 2024-03-01 17:00,0.2134", Severity.Lost));
        }
        if (problems.Count > 0) throw Throw.BadPriceLines(path, problems);
        return prices.Count < 2 ? throw Throw.FewPriceLines(path, prices.Count) : Of(Path.GetFileName(path), prices);
    }

    private static Instant? StartOf(string text, DateTimeZone zone, Instant before)
    {
        foreach (var pattern in WithOffset)
            if (pattern.Parse(text) is { Success: true } parsed) return parsed.Value.ToInstant();
        return LocalStamp.Parsed(text) is { } local ? LocalStamp.InRowOrder(local, zone, before) : null;
    }
}
