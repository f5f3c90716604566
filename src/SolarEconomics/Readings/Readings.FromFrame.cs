using Deedle;
using NodaTime;

namespace SolarEconomics;

public sealed partial class Readings
{
    /// <summary>Interval channels from a Deedle frame: row keys are interval starts, columns are understood by their names as in a table.</summary>
    /// <param name="frame">The frame; a missing value is a missing interval.</param>
    /// <param name="options">Choices that names leave open. Default: none; a column whose name holds no unit is in kWh.</param>
    /// <exception cref="ArgumentException">The frame has fewer than two rows, so no length of an interval can be told.</exception>
    /// <remarks>Each interval has the most common distance of two keys, and ends earlier where the next row begins.</remarks>
    public static Readings FromFrame(Frame<Instant, string> frame, ReadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        options ??= new ReadOptions();
        var starts = frame.RowKeys.Order().ToArray();
        var startMs = Array.ConvertAll(starts, s => s.ToUnixTimeMilliseconds());
        if (IntervalEnds.CommonStepMs(startMs) is not { } stepMs)
            throw new ArgumentException("Expected a frame of two rows at least, to tell how long an interval is.", nameof(frame));
        var times = TimeAxis.OfMilliseconds(startMs, IntervalEnds.OfStarts(startMs, stepMs));
        var problems = new ProblemList("frame");
        var channels = new List<Channel>();
        var columns = new List<ColumnMeaning>();
        foreach (var key in frame.ColumnKeys)
        {
            var meaning = options.Columns.FirstOrDefault(c => string.Equals(c.Header, key, StringComparison.OrdinalIgnoreCase))
                ?? HeaderWords.Understand(key, columns.Count + 1, null, options.UnitWhereNone ?? "kWh");
            columns.Add(meaning);
            var column = new ValueColumn(columns.Count - 1, meaning with { Header = key });
            if (meaning.Kind is not (ColumnKind.Energy or ColumnKind.Net)) continue;
            var series = frame.GetColumn<double>(key);
            var (kwh, quality) = (new double[starts.Length], new Quality[starts.Length]);
            for (var i = 0; i < starts.Length; i++)
            {
                var value = series.TryGet(starts[i]);
                if (value.HasValue && double.IsFinite(value.Value)) kwh[i] = column.Scale(value.Value);
                else quality[i] = SolarEconomics.Quality.Missing;
            }
            channels.AddRange(Directions.Split(new ColumnEnergy(times, kwh, quality), column, options.Plant, 0, "frame", problems));
        }
        return new Readings(channels, [], problems.ToList()) { Zone = options.Zone ?? DateTimeZone.Utc, Columns = columns };
    }
}
