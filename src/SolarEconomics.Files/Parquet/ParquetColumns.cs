using System.Globalization;
using Parquet;
using Parquet.Schema;

namespace SolarEconomics.Files;

/// <summary>Turns the flat columns of a Parquet file into a table in text form, one group of rows after the other.</summary>
internal static class ParquetColumns
{
    private const long MostCellsInGroup = 20_000_000;
    private const int CancelEvery = 4096;

    internal static async Task WriteAsync(RecordFile file, TableText text, ParquetFindings findings, ReadOptions options)
    {
        await using var stream = file.Open();
        var settings = new ParquetOptions { UseDateOnlyTypeForDates = true };
        await using var reader = await Parquet.ParquetReader.CreateAsync(stream, settings, cancellationToken: options.Cancel);
        var fields = reader.Schema.Fields.OfType<DataField>().Where(f => !f.IsArray && IsReadable(f)).ToArray();
        if (fields.Length == 0) throw Throw.NoFlatColumns(file.Name, reader.Schema.Fields);
        findings.LeftOut(reader.Schema.Fields.Except(fields));
        findings.WithoutClock(fields);
        text.Write(fields.Select(f => f.Name));
        for (var g = 0; g < reader.RowGroupCount; g++)
        {
            using var group = reader.OpenRowGroupReader(g);
            if (group.RowCount < 0 || group.RowCount * fields.Length > MostCellsInGroup) throw Throw.TooManyRows(file.Name, group.RowCount);
            var columns = new Func<int, string>[fields.Length];
            for (var c = 0; c < fields.Length; c++) columns[c] = await ReadAsync(group, fields[c], findings, options.Cancel);
            for (var row = 0; row < group.RowCount; row++)
            {
                if (row % CancelEvery == 0) options.Cancel.ThrowIfCancellationRequested();
                text.Write(columns.Select(column => column(row)));
            }
            options.Progress?.Report((g + 1.0) / reader.RowGroupCount);
        }
    }

    private static bool IsReadable(DataField field) =>
        IsText(field) || field.ClrType == typeof(DateTime) || field.ClrType == typeof(bool) || field.ClrType == typeof(double) || field.ClrType == typeof(float)
        || field.ClrType == typeof(long) || field.ClrType == typeof(int) || field.ClrType == typeof(short) || field.ClrType == typeof(decimal)
        || field.ClrType == typeof(ulong) || field.ClrType == typeof(uint) || field.ClrType == typeof(ushort) || field.ClrType == typeof(byte) || field.ClrType == typeof(sbyte) || field.ClrType == typeof(DateOnly)
        || field.ClrType == typeof(TimeSpan) || field.ClrType == typeof(TimeOnly);

    private static bool IsText(DataField field) => field.ClrType == typeof(ReadOnlyMemory<char>) || field.ClrType == typeof(string);

    private static Task<Func<int, string>> ReadAsync(ParquetRowGroupReader group, DataField field, ParquetFindings findings, CancellationToken cancel)
    {
        if (IsText(field)) return TextsAsync(group, field, cancel);
        if (field.ClrType == typeof(DateTime))
        {
            var mark = field is DateTimeDataField { IsAdjustedToUTC: true, DateTimeFormat: not DateTimeFormat.Impala } ? "Z" : "";
            return ValuesAsync<DateTime>(group, field, time => findings.ToMilliseconds(field, time).ToString("yyyy-MM-dd HH:mm:ss.FFF", CultureInfo.InvariantCulture) + mark, cancel);
        }
        if (field.ClrType == typeof(bool)) return ValuesAsync<bool>(group, field, flag => flag ? "1" : "0", cancel);
        // A number that is none stands for a missing value in tables of floating point.
        if (field.ClrType == typeof(double)) return ValuesAsync<double>(group, field, d => double.IsNaN(d) ? "" : d.ToString("R", CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(float)) return ValuesAsync<float>(group, field, f => float.IsNaN(f) ? "" : f.ToString("R", CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(long)) return ValuesAsync<long>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(int)) return ValuesAsync<int>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(short)) return ValuesAsync<short>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(ulong)) return ValuesAsync<ulong>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(uint)) return ValuesAsync<uint>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(ushort)) return ValuesAsync<ushort>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(byte)) return ValuesAsync<byte>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(sbyte)) return ValuesAsync<sbyte>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(DateOnly)) return ValuesAsync<DateOnly>(group, field, d => d.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(TimeSpan)) return ValuesAsync<TimeSpan>(group, field, t => t.ToString("hh\\:mm\\:ss", CultureInfo.InvariantCulture), cancel);
        if (field.ClrType == typeof(TimeOnly)) return ValuesAsync<TimeOnly>(group, field, t => t.ToString("HH:mm:ss", CultureInfo.InvariantCulture), cancel);
        return ValuesAsync<decimal>(group, field, n => n.ToString(CultureInfo.InvariantCulture), cancel);
    }

    private static async Task<Func<int, string>> ValuesAsync<T>(ParquetRowGroupReader group, DataField field, Func<T, string> text, CancellationToken cancel) where T : struct
    {
        if (!field.IsNullable)
        {
            var all = new T[group.RowCount];
            await group.ReadAsync<T>(field, all.AsMemory(), null, cancel);
            return row => text(all[row]);
        }
        var values = new T?[group.RowCount];
        await group.ReadAsync<T>(field, values.AsMemory(), null, cancel);
        return row => values[row] is { } value ? text(value) : "";
    }

    private static async Task<Func<int, string>> TextsAsync(ParquetRowGroupReader group, DataField field, CancellationToken cancel)
    {
        var texts = new string?[group.RowCount];
        await group.ReadAsync(field, texts.AsMemory(), null, cancel);
        return row => texts[row] ?? "";
    }
}
