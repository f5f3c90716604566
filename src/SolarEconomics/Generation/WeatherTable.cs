using NodaTime;

namespace SolarEconomics;

/// <summary>Reads the lines of a weather table.</summary>
internal sealed class WeatherTable(string file, Site site)
{
    private const int MostListed = 20;
    private const double AssumedWindMs = 2;
    private const double NightOffsetWm2 = 20;
    private readonly List<Problem> _problems = [];
    private readonly List<Problem> _lost = [];

    internal WeatherFile Read(string[] lines, StampEdge edge)
    {
        var rows = lines.Select((text, i) => (Text: text, Line: i + 1)).Where(r => r.Text.Trim().Length > 0 && !r.Text.StartsWith('#')).ToList();
        if (rows.Count < 3) throw Throw.EmptyWeatherTable(file, Math.Max(0, rows.Count - 1));
        var columns = WeatherColumns.Of(rows[0].Text, rows[0].Line, file);
        var stamps = new WeatherStamps(file, site.Zone, _lost);
        var instants = new Instant[rows.Count - 1];
        var values = new double[5][];
        for (var c = 0; c < values.Length; c++) values[c] = new double[instants.Length];
        for (var i = 0; i < instants.Length; i++) ReadRow(columns, rows[i + 1].Text, rows[i + 1].Line, i, stamps, instants, values);
        ThrowIfLost();
        var step = stamps.StepOf(instants, rows.Skip(1).Select(r => r.Line).ToList());
        ThrowIfLost();
        var isEnd = edge == StampEdge.End || (edge == StampEdge.FromRecord && columns.TimeIsEnd);
        var grid = new IntervalGrid(isEnd ? instants[0] - step : instants[0], step, instants.Length);
        return new WeatherFile(Judged(Made(columns, grid, values)), _problems);
    }

    private Weather Made(WeatherColumns columns, IntervalGrid grid, double[][] values)
    {
        if (columns.Wind < 0)
        {
            Array.Fill(values[4], AssumedWindMs);
            Note("no column of wind", FormattableString.Invariant($"wind (m/s); {AssumedWindMs} m/s are taken all along"));
        }
        var origin = FormattableString.Invariant($"{file}, {grid.Count} steps of {grid.Step.TotalMinutes:0.#} minutes");
        return columns.IsSplit
            ? Weather.OfParts(grid, values[0], values[1], values[2], values[3], values[4], origin)
            : Weather.OfGlobal(grid, values[0], values[3], values[4], origin);
    }

    /// <summary>The sun of the place tells whether stamps mean what they seem to.</summary>
    private Weather Judged(Weather weather)
    {
        _problems.AddRange(WeatherJudge.Judge(weather, site, file));
        return weather;
    }

    private void ReadRow(WeatherColumns columns, string text, int line, int i, WeatherStamps stamps, Instant[] instants, double[][] values)
    {
        var fields = text.Split(columns.Separator);
        if (fields.Length < columns.Count)
        {
            Lose(line, 0, text, FormattableString.Invariant($"{fields.Length} fields"), FormattableString.Invariant($"{columns.Count}, as in the heading"));
            return;
        }
        instants[i] = stamps.Resolve(fields[columns.Time].Trim(), line, columns.Time + 1);
        values[0][i] = Light(columns, fields, columns.Global, line, "global", 2000);
        if (columns.IsSplit)
        {
            values[1][i] = Light(columns, fields, columns.Beam, line, "beam", 1500);
            values[2][i] = Light(columns, fields, columns.Diffuse, line, "diffuse", 2000);
            if (values[2][i] > values[0][i] + 1)
                Lose(line, columns.Diffuse + 1, fields[columns.Diffuse], FormattableString.Invariant($"diffuse {values[2][i]} W/m² above global {values[0][i]}"),
                    "it at or below global. Are the two columns swapped, or is one of them beam?");
        }
        values[3][i] = Held(columns, fields, columns.Air, line, values[3], i, -90, 70, 1, "air °C");
        if (columns.Wind >= 0) values[4][i] = Held(columns, fields, columns.Wind, line, values[4], i, 0, 60, columns.WindFactor, "wind m/s");
    }

    private double Light(WeatherColumns columns, string[] fields, int field, int line, string name, double most)
    {
        var value = columns.Number(fields[field]);
        if (value is >= -NightOffsetWm2 and < 0) return 0; // a sensor's night offset
        if (value >= 0 && value <= most) return value.Value;
        Lose(line, field + 1, fields[field], value is null ? $"no value of {name}" : FormattableString.Invariant($"{name} {value} W/m²"),
            FormattableString.Invariant($"0 to {most} W/m²; radiation is not made up: fill or cut the gap first"));
        return 0;
    }

    private double Held(WeatherColumns columns, string[] fields, int field, int line, double[] column, int i, double low, double high, double factor, string name)
    {
        var value = columns.Number(fields[field]) * factor;
        if (value >= low && value <= high) return value.Value;
        _problems.Add(new Problem(file, line, field + 1, fields[field], $"no value of {name} (\"{fields[field].Trim()}\")",
            FormattableString.Invariant($"{low} to {high}; held from the step before"), Severity.Doubtful));
        return i > 0 ? column[i - 1] : 10;
    }

    private void Note(string found, string expected, Severity severity = Severity.Note) => _problems.Add(new Problem(file, 0, 0, "", found, expected, severity));

    private void Lose(int line, int column, string raw, string found, string expected) =>
        _lost.Add(new Problem(file, line, column, raw.Length > 200 ? raw[..200] : raw, found, expected, Severity.Lost));

    private void ThrowIfLost()
    {
        if (_lost.Count > 0) throw Throw.WeatherTableMistakes(file, [.. _lost.Take(MostListed)], _lost.Count);
    }
}
