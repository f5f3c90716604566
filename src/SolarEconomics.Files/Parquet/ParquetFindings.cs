using System.Globalization;
using Parquet.Schema;

namespace SolarEconomics.Files;

/// <summary>What is worth knowing of the columns of a Parquet file: those that are left out, times without a clock, times finer than a millisecond.</summary>
internal sealed class ParquetFindings(string file)
{
    private readonly List<Problem> _problems = [];
    private readonly Dictionary<string, int> _finer = new(StringComparer.Ordinal);

    internal IReadOnlyList<Problem> All =>
    [
        .. _problems,
        .. _finer.Select(f => new Problem(file, 0, 0, f.Key, string.Create(CultureInfo.InvariantCulture, $"{f.Value} times under \"{f.Key}\" with digits below a millisecond"),
            "times to the millisecond; those digits were cut off", Severity.Note)),
    ];

    internal void LeftOut(IEnumerable<Field> fields)
    {
        foreach (var field in fields)
            _problems.Add(new Problem(file, 0, 0, field.Name, $"the column \"{field.Name}\" of {KindOf(field)}", "plain columns of times, numbers or texts; it was left out. If it holds readings, write them as columns of their own", Severity.Note));
    }

    internal void WithoutClock(IEnumerable<DataField> fields)
    {
        foreach (var field in fields.OfType<DateTimeDataField>().Where(f => f.DateTimeFormat == DateTimeFormat.Impala))
            _problems.Add(new Problem(file, 0, 0, field.Name, $"times of 96 bits under \"{field.Name}\", which do not say their clock", "times marked as UTC; they are read as local times of the zone given. Where the program that wrote them meant UTC, give that as zone", Severity.Note));
    }

    /// <summary>A time without its digits below a millisecond, which are counted.</summary>
    internal DateTime ToMilliseconds(DataField field, DateTime time)
    {
        var rest = time.Ticks % TimeSpan.TicksPerMillisecond;
        if (rest != 0) _finer[field.Name] = _finer.GetValueOrDefault(field.Name) + 1;
        return time.AddTicks(-rest);
    }

    internal static string KindOf(Field field) => field.SchemaType switch
    {
        SchemaType.List => "lists",
        SchemaType.Map => "maps",
        SchemaType.Struct => "nested columns",
        _ => field is DataField { IsArray: true } ? "repeated values" : $"type {(field as DataField)?.ClrType.Name ?? "unknown"}",
    };
}
