using System.Globalization;

namespace SolarEconomics;

/// <summary>Takes the rows of a table in long form: each goes to the rows of the channel that it names.</summary>
internal sealed class LongRows(CsvLayout layout, LongForm form, ReadOptions options, ProblemList problems) : IRowTaker
{
    /// <summary>A file that names more channels than this holds something else in that field.</summary>
    private const int MostChannels = 1000;

    private readonly Dictionary<(string Name, string Unit), CsvRows> _channels = [];
    private int _left;

    /// <summary>The channels' rows, in the order in which the file first names them.</summary>
    internal IReadOnlyList<CsvRows> Channels => [.. _channels.Values.Where(c => c.Table.Rows > 0)];

    public void Take(ReadOnlySpan<string> fields, int line)
    {
        var name = form.NameIndex < fields.Length ? fields[form.NameIndex].Trim() : "";
        var unit = form.UnitIndex >= 0 && form.UnitIndex < fields.Length ? fields[form.UnitIndex].Trim() : "";
        if (!_channels.TryGetValue((name, unit), out var rows))
        {
            if (_channels.Count >= MostChannels)
            {
                if (_left++ == 0)
                    problems.Lost(line, form.NameIndex + 1, name, string.Create(CultureInfo.InvariantCulture, $"more than {MostChannels} names of channels"), "few names, each in many rows; rows of further names were not counted");
                return;
            }
            _channels.Add((name, unit), rows = new CsvRows(layout with { Columns = ColumnsOf(name, unit), Long = null }, options, problems, expectedRows: 0));
        }
        rows.Take(fields, line);
    }

    /// <summary>The columns as they read for one channel: its name stands before the header of each number.</summary>
    private ColumnMeaning[] ColumnsOf(string name, string unit)
    {
        var columns = layout.Columns.ToArray();
        for (var i = 0; i < columns.Length; i++)
        {
            if (i == form.NameIndex || i == form.UnitIndex || columns[i].Kind is ColumnKind.Stamp or ColumnKind.StampEnd or ColumnKind.Ignored or ColumnKind.CensoredFlag) continue;
            var header = name.Length == 0 ? columns[i].Header : $"{name} {columns[i].Header}".Trim();
            var correction = options.Columns.FirstOrDefault(c => c.Corrects(header) || c.Corrects(name));
            columns[i] = correction is not null
                ? correction with { Header = header, Number = i + 1, Reason = $"rows of \"{name}\" are read as {HeaderWords.Name(correction.Flow)} in {correction.Unit} because {correction.Reason}" }
                : HeaderWords.Understand(header, i + 1, unit.Length > 0 ? unit : columns[i].Unit, options.UnitWhereNone);
        }
        return columns;
    }
}
