namespace SolarEconomics;

/// <summary>Messages of the weather table.</summary>
internal static partial class Throw
{
    internal static RecordException NoWeatherTable(string path) =>
        new($"{path}: found no such file, expected a table of weather. Paths start at the folder of the notebook or program.");

    internal static RecordException EmptyWeatherTable(string file, int rows) =>
        new(FormattableString.Invariant($"{file}: found {rows} rows below the heading, expected a heading and at least two steps."));

    internal static RecordException NoWeatherColumn(string file, int line, string wanted, IReadOnlyList<string> names) =>
        new(FormattableString.Invariant($"{file}, line {line}: found no column \"{wanted}\" among {string.Join(", ", names.Select(n => $"\"{n}\""))}, ") +
            "expected time, global (W/m²) and air (°C), and where known beam (W/m²) and diffuse (W/m²) together, and wind (m/s).");

    internal static RecordException WeatherTableMistakes(string file, IReadOnlyList<Problem> problems, int all) =>
        new(problems.Count == 1
            ? problems[0].Sentence
            : FormattableString.Invariant($"{file}: found {all} mistakes{(all > problems.Count ? $", the first {problems.Count} of them" : "")}:") + Environment.NewLine +
              string.Join(Environment.NewLine, problems.Select(p => $"  {p.Sentence}")), problems);
}
