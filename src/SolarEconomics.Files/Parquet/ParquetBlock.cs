using NodaTime;

namespace SolarEconomics.Files;

/// <summary>Some rows of a table of channels, column by column.</summary>
internal sealed class ParquetBlock(ChannelTable table)
{
    private readonly List<DateTime> _starts = [];
    private readonly List<DateTime> _ends = [];
    private readonly List<double?>[] _kwh = [.. table.Headers.Select(_ => new List<double?>())];
    private readonly List<string>[] _words = [.. table.Headers.Select(_ => new List<string>())];

    internal ReadOnlyMemory<DateTime> Starts => _starts.ToArray();

    internal ReadOnlyMemory<DateTime> Ends => _ends.ToArray();

    internal ReadOnlyMemory<double?> Kwh(int column) => _kwh[column].ToArray();

    internal IReadOnlyCollection<string> Words(int column) => _words[column];

    /// <summary>Takes the next rows of the table; false where there are none.</summary>
    internal bool Fill(int most, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        _starts.Clear();
        _ends.Clear();
        foreach (var column in _kwh) column.Clear();
        foreach (var column in _words) column.Clear();
        while (_starts.Count < most && table.Next())
        {
            _starts.Add(table.Start.ToDateTimeUtc());
            _ends.Add(table.End.ToDateTimeUtc());
            for (var c = 0; c < _kwh.Length; c++)
            {
                _kwh[c].Add(table.Kwh[c]);
                if (table.HasQuality[c]) _words[c].Add(QualityWords.Of(table.Quality[c]));
            }
        }
        return _starts.Count > 0;
    }
}
