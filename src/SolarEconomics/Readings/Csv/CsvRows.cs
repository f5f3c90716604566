using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Takes the rows of a table one by one, turns times into instants and fields into kWh, and reports what it cannot count.</summary>
internal sealed partial class CsvRows : IRowTaker
{
    /// <summary>A single reading above this is no home's and would drown every other: about the yearly use of the world. Unit: kWh.</summary>
    internal const double TooLargeKwh = 1e14;

    private readonly CsvLayout _layout;
    private readonly DateTimeZone? _zone;
    private readonly ProblemList _problems;
    private readonly ValueColumn[] _values;
    private readonly int _flag = -1;
    private readonly TotalRow _totals;
    private readonly (int Index, int Column)[] _qualities;
    private int? _offsetMinutes;
    private bool _offsetsDiffer;

    internal CsvRows(CsvLayout layout, ReadOptions options, ProblemList problems, int expectedRows)
    {
        _layout = layout;
        _zone = options.Zone;
        _problems = problems;
        _values = [.. layout.Columns.Select((c, i) => new ValueColumn(i, c)).Where(v => v.IsSeries)];
        for (var i = 0; i < layout.Columns.Count; i++)
            if (layout.Columns[i].Kind == ColumnKind.CensoredFlag) _flag = i;
        _totals = new TotalRow(_values);
        _qualities = QualityColumns(layout.Columns);
        EndColumn = layout.Stamp.EndIndex >= 0 ? _values.Length : -1;
        Table = new IntervalTable(EndColumn >= 0 ? _values.Length + 1 : _values.Length, expectedRows);
        Clock = new StampClock(_zone ?? DateTimeZone.Utc, options.StampPolicy);
    }

    internal IntervalTable Table { get; }

    internal StampClock Clock { get; }

    internal IReadOnlyList<ValueColumn> Values => _values;

    internal int FlagIndex => _flag;

    /// <summary>The clock of local days: the one given; else the one offset that all stamps carry, or UTC where they carry several.</summary>
    internal DateTimeZone DayClock => _zone
        ?? (_offsetMinutes is { } minutes && !_offsetsDiffer ? DateTimeZone.ForOffset(Offset.FromSeconds(minutes * 60)) : DateTimeZone.Utc);

    /// <summary>Takes one row of fields as the general reader splits it.</summary>
    public void Take(ReadOnlySpan<string> fields, int line)
    {
        if (IsBlank(fields)) return;
        var stampIndex = _layout.Stamp.Index;
        if (stampIndex >= fields.Length || !TryStamp(fields, out var stamp))
        {
            TakeRowWithoutTime(fields, line);
            return;
        }
        if (HasTooMany(fields))
        {
            _problems.Lost(line, _layout.Fields + 1, Raw(fields), $"{Count(fields.Length)} fields", $"{Count(_layout.Fields)}, as in the header; a decimal comma or a mark in a text may part a field in two. Nothing of the row was counted");
            return;
        }
        long startMs;
        if (_layout.Stamp.Parts is { Passed: true } parts)
        {
            if (!TryPassed(stamp, fields, parts, line, out startMs)) return;
        }
        else if (!Accept(Instant(stamp, line, fields[stampIndex], out startMs), line, fields))
        {
            return;
        }
        var row = Table.Add(startMs, line);
        if (EndColumn >= 0) TakeEnd(fields, startMs, row, line);
        for (var v = 0; v < _values.Length; v++) TakeCell(fields, v, row, line);
        foreach (var (index, column) in _qualities) TakeQuality(fields, index, column, row, line);
        if (_flag >= 0 && _flag < fields.Length && IsSet(fields[_flag])) MarkCensored(row);
    }

    /// <summary>Turns a stamp into an instant by its own offset or by the zone.</summary>
    private StampFate Instant(Stamp stamp, int line, string raw, out long unixMs)
    {
        if (stamp.OffsetMinutes is { } offset)
        {
            _offsetsDiffer |= _offsetMinutes is { } other && other != offset;
            _offsetMinutes = offset;
            unixMs = stamp.LocalMs - (offset * 60_000L);
            return StampFate.Sure;
        }
        if (_zone is null) throw Throw.NeedsZone(_problems.File, line, _layout.Stamp.Index + 1, raw);
        if (_layout.Stamp.Fineness != StampFineness.Time)
        {
            var day = StampClock.LocalOf(stamp.LocalMs).Date;
            unixMs = LocalDays.StartOf(day, _zone).ToUnixTimeMilliseconds();
            return LocalDays.LengthOf(day, _zone) > Duration.Zero ? StampFate.Sure : StampFate.Skipped;
        }
        return Clock.Resolve(stamp.LocalMs, line, out unixMs);
    }

    /// <summary>Reports what is doubtful about a row's time, and says whether the row is counted.</summary>
    internal bool Accept(StampFate fate, int line, ReadOnlySpan<string> fields)
    {
        if (fate is StampFate.Sure or StampFate.Resolved) return true;
        var column = _layout.Stamp.Index + 1;
        var raw = fields[_layout.Stamp.Index];
        switch (fate)
        {
            case StampFate.Moved:
                _problems.Doubtful(line, column, raw, $"a time that {_zone!.Id} skipped that day", "none; the row was moved on by the length of the jump, as the policy says");
                return true;
            case StampFate.Ambiguous:
                _problems.Doubtful(line, column, raw, $"a time that {_zone!.Id} showed twice that day", "rows in order on both sides of it, to tell which; it was read by the rows there are");
                return true;
            default:
                var expected = _layout.Stamp.Fineness == StampFineness.Time
                    ? "no time in the hour that the clock jumped over. If the device keeps standard time all year, give that fixed zone, for example UTC"
                    : "a day that happened there";
                _problems.Lost(line, column, raw, $"a time that {_zone!.Id} skipped that day", expected + "; the row was not counted", EnergyOf(fields));
                return false;
        }
    }

    /// <summary>Sets one cell from a number in the column's own unit; what no reading can be is reported and counts as missing.</summary>
    private void SetNumber(int row, int column, double number, int line)
    {
        if (TryScale(column, ref number, line)) Table.Set(row, column, number, Quality.Good);
    }

    /// <summary>Brings a number to kWh (or kW); false, and reported, where no reading can be so large.</summary>
    internal bool TryScale(int column, ref double number, int line)
    {
        var value = _values[column].Scale(number);
        if (Math.Abs(value) <= TooLargeKwh)
        {
            number = value;
            return true;
        }
        _problems.Lost(line, _values[column].Index + 1, number.ToString("R", CultureInfo.InvariantCulture), "a number too large for a reading", $"at most {TooLargeKwh.ToString("R", CultureInfo.InvariantCulture)} kWh; the cell counts as missing");
        return false;
    }

    internal void MarkCensored(int row)
    {
        for (var v = 0; v < _values.Length; v++)
            if (_values[v].Meaning.Flow == FlowKind.Generation) Table.Flag(row, v, Quality.Censored);
    }

    private void TakeCell(ReadOnlySpan<string> fields, int column, int row, int line)
    {
        var index = _values[column].Index;
        if (index >= fields.Length)
        {
            _problems.Lost(line, index + 1, Raw(fields), $"{Count(fields.Length)} fields", $"{Count(_layout.Fields)}, as in the header; \"{_values[column].Name}\" counts as missing");
            return;
        }
        var field = fields[index];
        if (IsEmptyWord(field)) return;
        if (TryNumber(field, _values[column], out var number)) SetNumber(row, column, number, line);
        else _problems.Lost(line, index + 1, field, $"\"{ProblemList.Shorten(field)}\" under \"{_values[column].Name}\"", "a number or nothing; the cell counts as missing");
    }

    /// <summary>Reads a number in the column's own unit; a cell may name another one of the same kind.</summary>
    private bool TryNumber(string field, ValueColumn column, out double number)
    {
        if (_layout.Numbers.TryRead(field, out number)) return true;
        if (!CellUnit.TrySplit(field, out var text, out var unit) || !column.TakesUnit(unit) || !_layout.Numbers.TryRead(text, out number)) return false;
        number = column.FromUnit(number, unit);
        return true;
    }

    private void TakeRowWithoutTime(ReadOnlySpan<string> fields, int line)
    {
        var first = fields.Length > _layout.Stamp.Index ? fields[_layout.Stamp.Index] : fields[0];
        if (TotalRow.BeginsWithWord(fields))
        {
            _problems.Note(line, 0, Raw(fields), "a row of totals", "readings; it repeats what stands above and was not counted again");
            return;
        }
        if (string.IsNullOrWhiteSpace(first) && _totals.HoldsSums(fields, Table, _layout.Numbers))
        {
            _problems.Note(line, 0, Raw(fields), "a row without a time whose numbers are the sums of the columns above", "readings; it is read as a row of totals and was not counted again", EnergyOf(fields));
            return;
        }
        _problems.Lost(line, _layout.Stamp.Index + 1, Raw(fields), $"\"{ProblemList.Shorten(first)}\" where the time stands", "a time as in the rows before; the row was not counted", EnergyOf(fields));
    }

    /// <summary>The energy that stands in a row which is not counted, for the list of problems.</summary>
    private double EnergyOf(ReadOnlySpan<string> fields)
    {
        var sum = 0.0;
        foreach (var value in _values)
            if (value.Meaning.Kind is ColumnKind.Energy or ColumnKind.Net && value.Index < fields.Length && TryNumber(fields[value.Index], value, out var number))
            {
                var kwh = value.Scale(number);
                if (Math.Abs(kwh) <= TooLargeKwh) sum += kwh;
            }
        return sum;
    }

    private bool TryStamp(ReadOnlySpan<string> fields, out Stamp stamp)
    {
        if (_layout.Stamp.Parts is { } parts) return TryParts(fields, parts, out stamp);
        if (!TryStampText(fields[_layout.Stamp.Index], out stamp)) return false;
        if (_layout.Stamp.TimeIndex < 0) return true;
        if (stamp.Fineness != StampFineness.Day || _layout.Stamp.TimeIndex >= fields.Length) return false;
        if (!StampText.TryTime(fields[_layout.Stamp.TimeIndex], out var ms)) return false;
        stamp = stamp with { LocalMs = stamp.LocalMs + ms, Fineness = StampFineness.Time };
        return true;
    }

    private bool TryStampText(string text, out Stamp stamp)
    {
        if (_layout.Stamp.Form == StampForm.Text) return StampText.TryRead(text, _layout.Stamp.Order, out stamp);
        if (_layout.Stamp.Form == StampForm.DaysOfWorkbook) return SerialDates.TryRead(text, _layout.Numbers, _layout.Stamp.DayZero, out stamp);
        stamp = default;
        if (!UnixText.TryRead(text, out var number, out var thousandths)) return false;
        var ms = _layout.Stamp.Form == StampForm.UnixSeconds && number < 1L << 40 ? (number * 1000) + thousandths : number;
        if (ms is < 0 or >= 7_258_118_400_000) return false;
        stamp = new Stamp(ms, 0, StampFineness.Time);
        return true;
    }

    private bool HasTooMany(ReadOnlySpan<string> fields)
    {
        for (var i = _layout.Fields; i < fields.Length; i++)
            if (!string.IsNullOrWhiteSpace(fields[i])) return true;
        return false;
    }

    private static bool IsBlank(ReadOnlySpan<string> fields)
    {
        foreach (var field in fields)
            if (!string.IsNullOrWhiteSpace(field)) return false;
        return true;
    }

    private static bool IsSet(string field) =>
        field.AsSpan().Trim() is "1" or "true" or "TRUE" or "True" or "yes";

    internal static bool IsEmptyWord(string field) =>
        string.IsNullOrWhiteSpace(field) || field.AsSpan().Trim() is "-" or "NULL" or "null" or "NaN" or "nan" or "N/A" or "n/a" or "NA" or "na" or "n.a." or "N.A." or "--" or "---" or "\u2013" or "\u2014";

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    private string Raw(ReadOnlySpan<string> fields) => string.Join(_layout.Delimiter, fields.ToArray());
}
