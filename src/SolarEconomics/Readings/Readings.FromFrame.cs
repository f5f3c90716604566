using Deedle;
using NodaTime;

namespace SolarEconomics;

public sealed partial class Readings
{
    /// <summary>Interval channels from a Deedle frame: row keys are interval starts, columns are understood by their names as in a table.</summary>
    /// <param name="frame">The frame; a missing value is a missing interval.</param>
    /// <param name="options">Choices that names leave open. Default: none; a column whose name holds no unit is in kWh.</param>
    /// <exception cref="ArgumentException">The frame has fewer than two rows, so no length of an interval can be told.</exception>
    /// <remarks>Columns of power and of counters become energy as those of a table do; a column that is none of these is left out and listed. Each interval ends where a column <c>NAME [end]</c> says; without one it has the most common distance of two keys, and ends earlier where the next row begins.</remarks>
    public static Readings FromFrame(Frame<Instant, string> frame, ReadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        options ??= new ReadOptions();
        var starts = frame.RowKeys.Order().ToArray();
        var startMs = Array.ConvertAll(starts, s => s.ToUnixTimeMilliseconds());
        if (IntervalEnds.CommonStepMs(startMs) is not { } stepMs)
            throw new ArgumentException("Expected a frame of two rows at least, to tell how long an interval is.", nameof(frame));
        var told = TimeAxis.OfMilliseconds(startMs, IntervalEnds.OfStarts(startMs, stepMs));
        var keys = frame.ColumnKeys.ToHashSet(StringComparer.Ordinal);
        var problems = new ProblemList("frame");
        var channels = new List<Channel>();
        var columns = new List<ColumnMeaning>();
        foreach (var key in frame.ColumnKeys.Where(k => !FrameNames.IsEnd(k, keys.Contains)))
        {
            var corrected = options.Columns.FirstOrDefault(c => string.Equals(c.Header, key, StringComparison.OrdinalIgnoreCase));
            var meaning = corrected is null ? FrameNames.MeaningOf(key, columns.Count + 1, options) : corrected with { Header = key };
            columns.Add(meaning);
            var column = new ValueColumn(columns.Count - 1, meaning);
            if (!column.IsSeries)
            {
                problems.Note(0, columns.Count, key, $"the column \"{key}\", which is no energy, power or counter", "such columns only; it was left out");
                continue;
            }
            var (own, times) = (starts, told);
            if (keys.Contains(FrameNames.EndOf(key)))
            {
                (own, var endMs) = FrameEnds.Of(frame, FrameNames.EndOf(key), starts);
                times = TimeAxis.OfMilliseconds(Array.ConvertAll(own, s => s.ToUnixTimeMilliseconds()), endMs);
            }
            var table = TableOf(frame, key, own, column);
            var energy = meaning.Kind switch
            {
                _ when column.IsPower => PowerColumn.ToEnergy(table, 0, times, options.LongestBridge, column, problems),
                ColumnKind.Counter => CounterColumn.ToEnergy(table, 0, column, problems),
                ColumnKind.DailyCounter => CounterColumn.OfDaily(table, 0, column, problems),
                _ => table.Take(0, times),
            };
            channels.AddRange(Directions.Split(energy, column, options.Plant, 0, "frame", problems));
        }
        return new Readings(channels, [], problems.ToList()) { Zone = options.Zone ?? DateTimeZone.Utc, Columns = columns };
    }

    private static IntervalTable TableOf(Frame<Instant, string> frame, string key, Instant[] starts, ValueColumn column)
    {
        var table = new IntervalTable(1, starts.Length);
        var series = frame.GetColumn<double>(key);
        for (var i = 0; i < starts.Length; i++)
        {
            var row = table.Add(starts[i].ToUnixTimeMilliseconds(), i + 1);
            var value = series.TryGet(starts[i]);
            if (value.HasValue && double.IsFinite(value.Value)) table.Set(row, 0, column.IsEnergy ? column.Scale(value.Value) : value.Value, SolarEconomics.Quality.Good);
        }
        return table;
    }
}
