using CsvHelper;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>Reads ledger files and collects what it cannot read, instead of stopping at the first.</summary>
internal sealed class LedgerReader
{
    private static readonly string[] Needed = ["date", "kind", "amount", "currency"];
    private static readonly string[] Optional = ["device", "description", "own hours", "market price", "every", "until"];

    private readonly List<LedgerEntry> _entries = [];
    private readonly List<Problem> _lost = [];
    private readonly List<Problem> _notes = [];

    private LocalDate _lastDate = LocalDate.MinIsoValue;

    internal IReadOnlyList<LedgerEntry> Entries => _entries;

    internal IReadOnlyList<Problem> Lost => _lost;

    internal IReadOnlyList<Problem> Notes => _notes;

    internal void ReadFile(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!File.Exists(path)) throw Throw.LedgerMissing(path);
        StreamReader text;
        try
        {
            text = new StreamReader(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw Throw.LedgerClosed(path, error);
        }
        using (text) Read(text, path);
    }

    internal void Read(TextReader text, string name)
    {
        // The separator is found from the first lines: comma, semicolon, tab or bar.
        var options = new CsvReaderOptions
        {
            CommentPrefix = '#',
            TrimWhitespace = true,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Throw,
        };
        using var csv = CsvReader.Create(text, options, leaveOpen: true);
        var before = _entries.Count;
        _lastDate = LocalDate.MinIsoValue;
        try
        {
            if (!csv.Read()) throw Throw.LedgerEmpty(name);
            var header = csv.Headers.Select(h => h.Trim()).ToArray();
            CheckHeader(name, header);
            do ReadRow(new LedgerRow(csv, name, header));
            while (csv.Read());
        }
        catch (CsvFormatException error)
        {
            throw Throw.LedgerQuotes(name, error.LineNumber, error);
        }
        if (_entries.Count == before && _lost.Count == 0) throw Throw.LedgerEmpty(name);
    }

    private void CheckHeader(string name, string[] header)
    {
        var missing = Needed.Where(n => !header.Contains(n, StringComparer.OrdinalIgnoreCase)).ToArray();
        if (missing.Length > 0) throw Throw.LedgerColumns(name, missing, header);
        foreach (var extra in header.Where(h => !Needed.Concat(Optional).Contains(h, StringComparer.OrdinalIgnoreCase)))
        {
            _notes.Add(new Problem(name, 0, Array.IndexOf(header, extra) + 1, extra,
                $"a column \"{extra}\"", $"one of {string.Join(", ", Needed.Concat(Optional))}; the column is not used", Severity.Note));
        }
    }

    private void ReadRow(LedgerRow row)
    {
        var lostBefore = _lost.Count;
        row.CheckFieldCount(_lost);
        var date = row.Date(_lost);
        var kind = row.Kind(_lost);
        var amount = row.Amount(_lost);
        var currency = row.Currency(_lost);
        var hours = row.OwnHours(_lost);
        var marketPrice = row.MarketPrice(_lost);
        var days = _lost.Count > lostBefore ? [] : row.Days(date, _lost);
        if (_lost.Count > lostBefore) return;

        if (date < _lastDate)
        {
            _notes.Add(row.Problem("date", $"{LocalDatePattern.Iso.Format(date)} below a later day",
                "entries in date order; it was put in its place", Severity.Note));
        }
        _lastDate = LocalDate.Max(_lastDate, date);
        foreach (var day in days)
        {
            _entries.Add(new LedgerEntry(day, kind, Money.Nominal(amount, currency))
            {
                Device = row.Text("device"),
                Description = row.Text("description"),
                OwnHours = hours,
                MarketPrice = marketPrice is { } price ? Money.Nominal(price, currency) : null,
                File = row.File,
                Line = row.Line,
            });
        }
    }
}
