using NodaTime;

namespace SolarEconomics;

/// <summary>Lays the channels of readings side by side, row by row in order of time, without holding the rows: what is written to a table.</summary>
internal sealed class ChannelTable
{
    private readonly Channel[] _channels;
    private readonly int[] _next;
    private readonly double?[] _kwh;
    private readonly Quality[] _quality;

    internal ChannelTable(Readings readings)
    {
        _channels = readings.Channels.Count > 0 ? [.. readings.Channels] : throw Throw.NothingToWrite(readings.Counters.Count);
        _next = new int[_channels.Length];
        _kwh = new double?[_channels.Length];
        _quality = new Quality[_channels.Length];
        Headers = HeadersOf(_channels);
        HasQuality = [.. _channels.Select(c => c.Quality.IndexOfAnyExcept(SolarEconomics.Quality.Good, SolarEconomics.Quality.Missing) >= 0)];
    }

    /// <summary>Header of each channel, each another.</summary>
    internal IReadOnlyList<string> Headers { get; }

    /// <summary>Whether a channel has anything to say of its values beside missing ones.</summary>
    internal IReadOnlyList<bool> HasQuality { get; }

    /// <summary>Number of rows at most.</summary>
    internal int MostRows => _channels.Length == 0 ? 0 : _channels.Sum(c => c.Count);

    internal Instant Start { get; private set; }

    internal Instant End { get; private set; }

    /// <summary>Energy of each channel in the row, in kWh, or its number where it is no energy; <see langword="null"/> where missing.</summary>
    internal ReadOnlySpan<double?> Kwh => _kwh;

    internal ReadOnlySpan<Quality> Quality => _quality;

    /// <summary>Header of the column with the quality of another.</summary>
    internal static string QualityHeader(string header) => QualityWords.HeaderBegin + header;

    /// <summary>Goes on to the next row.</summary>
    /// <exception cref="InvalidOperationException">Channels overlap with different intervals.</exception>
    internal bool Next()
    {
        var first = -1;
        for (var c = 0; c < _channels.Length; c++)
            if (_next[c] < _channels[c].Count && (first < 0 || _channels[c].Starts[_next[c]] < _channels[first].Starts[_next[first]])) first = c;
        if (first < 0) return false;
        var (start, end) = (_channels[first].Starts[_next[first]], _channels[first].Ends[_next[first]]);
        if (End > start && Start != default) throw Throw.DifferentIntervals(_channels[first].Name, start);
        (Start, End) = (start, end);
        for (var c = 0; c < _channels.Length; c++)
        {
            (_kwh[c], _quality[c]) = (null, SolarEconomics.Quality.Good);
            var (channel, i) = (_channels[c], _next[c]);
            if (i >= channel.Count || channel.Starts[i] != start) continue;
            if (channel.Ends[i] != end) throw Throw.DifferentIntervals(channel.Name, start);
            _next[c]++;
            if (channel.Quality[i].HasFlag(SolarEconomics.Quality.Missing)) continue;
            (_kwh[c], _quality[c]) = (channel.Kwh[i], channel.Quality[i]);
        }
        return true;
    }

    private static string[] HeadersOf(Channel[] channels)
    {
        var headers = Array.ConvertAll(channels, HeaderOf);
        for (var c = 0; c < headers.Length; c++)
        {
            var twins = headers.Count(h => string.Equals(h, headers[c], StringComparison.OrdinalIgnoreCase));
            if (twins > 1) headers[c] = FormattableString.Invariant($"{channels[c].Meter ?? channels[c].File ?? "channel"} {c + 1} {headers[c]}");
        }
        return headers;
    }

    /// <summary>The flow's own word stands first, so that the column is understood without a guess at a meter's name.</summary>
    private static string HeaderOf(Channel channel)
    {
        // What is no energy keeps its numbers under its own unit, and is counted nowhere when it is read again.
        if (!channel.IsEnergy) return EnergyUnit.Find(channel.Unit) is null ? channel.Name : $"{channel.Name} ({channel.Unit})";
        var flow = HeaderWords.Name(channel.Flow);
        return channel.Flow == FlowKind.Unknown || channel.Name.Contains(flow, StringComparison.OrdinalIgnoreCase) ? $"{channel.Name} (kWh)" : $"{flow} {channel.Name} (kWh)";
    }
}
