using System.Buffers.Binary;
using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>The fast path: rows of an ISO time and plain numbers, read from bytes into the columns with no object per row.</summary>
/// <remarks>A line that is not plain in any way is handed to the general reader, alone, so both paths give the same on every file.
/// Measured against the general path in the benchmark project; tests compare the two on broken variants of every sample.</remarks>
internal sealed partial class PlainRows
{
    private const long MsPerMinute = 60_000;
    private const int DateLength = 10;

    private readonly CsvLayout _layout;
    private readonly CsvRows _rows;
    private readonly ProblemList _problems;
    private readonly byte _delimiter;

    // One entry per field after the time: the value column it fills, or one of the two below.
    private readonly int[] _targets;
    private const int Skip = -1;
    private const int Flag = -2;
    private readonly double[] _numbers;
    private readonly bool[] _present;

    // Whether a value column is in another unit than kWh.
    private readonly bool[] _scaled;

    private ulong _dateBytes;
    private ushort _dateTail;
    private long _dateMs;

    private PlainRows(CsvLayout layout, CsvRows rows, ProblemList problems)
    {
        _layout = layout;
        _rows = rows;
        _problems = problems;
        _delimiter = (byte)layout.Delimiter;
        _targets = new int[layout.Fields - 1];
        Array.Fill(_targets, Skip);
        for (var v = 0; v < rows.Values.Count; v++) _targets[rows.Values[v].Index - 1] = v;
        if (rows.FlagIndex > 0) _targets[rows.FlagIndex - 1] = Flag;
        _numbers = new double[rows.Values.Count];
        _present = new bool[rows.Values.Count];
        _scaled = [.. rows.Values.Select(v => v.Scale(1) != 1)];
    }

    /// <summary>Whether a table may have plain rows at all.</summary>
    internal static bool Suit(CsvLayout layout, ReadOptions options) =>
        options is { Zone: not null, PlainRowsToo: false }
        && layout.Encoding.WebName is "utf-8" or "windows-1252"
        && !layout.Columns.Any(c => c.Kind == ColumnKind.QualityWords)
        && layout.Numbers == NumberText.Plain
        && layout.Stamp is { Index: 0, Form: StampForm.Text, TimeIndex: < 0, EndIndex: < 0, Parts: null, Fineness: StampFineness.Time };

    /// <summary>Reads all rows of a stream.</summary>
    internal static void Read(Stream stream, CsvLayout layout, CsvRows rows, ProblemList problems, Action tick)
    {
        var plain = new PlainRows(layout, rows, problems);
        var lines = new Utf8Lines(stream);
        var known = 0L;
        // The general reader counts a lone carriage return as the end of a line; so does this count.
        var loneReturns = 0;
        while (true)
        {
            if (lines.Line + loneReturns + 1 >= layout.FirstDataLine)
            {
                var (bytes, taken) = plain.TakeRun(lines.WholeLines(), lines.Line + loneReturns + 1);
                lines.Skip(bytes, taken);
            }
            if (!lines.TryNext(out var line)) return;
            if (lines.BytesRead != known)
            {
                known = lines.BytesRead;
                tick();
            }
            var number = lines.Line + loneReturns;
            if (number >= layout.FirstDataLine && plain.TryTake(line, number)) continue;
            var returns = line.Count((byte)'\r');
            if (number + returns >= layout.FirstDataLine && !plain.TryTakeByGeneralReader(line, number))
            {
                stream.Position = lines.LineStart;
                plain.TakeRest(stream, number, tick);
                return;
            }
            loneReturns += returns;
        }
    }

    /// <summary>Reads one line; false where a quoted field may go on below it.</summary>
    private bool TryTakeByGeneralReader(ReadOnlySpan<byte> line, int number)
    {
        var text = _layout.Encoding.GetString(line);
        if (line.IndexOfAny((byte)'"', (byte)'\r') < 0)
        {
            if (number >= _layout.FirstDataLine && text.Length > 0) _rows.Take(text.Split(_layout.Delimiter), number);
            return true;
        }
        if (Array.Exists(text.Split('\r'), part => WholeRows.IsOpen(part, [_layout.Delimiter], out _))) return false;
        using var reader = new StringReader(text);
        GeneralRows.Read(reader, number - 1, _layout, _rows, _problems, static () => { });
        return true;
    }

    /// <summary>Leaves a line and all below it to the general reader: where a field goes on over line ends, lines are no rows any more.</summary>
    private void TakeRest(Stream stream, int number, Action tick)
    {
        using var reader = new StreamReader(stream, _layout.Encoding, detectEncodingFromByteOrderMarks: false, bufferSize: 1 << 16, leaveOpen: true);
        GeneralRows.Read(reader, number - 1, _layout, _rows, _problems, tick);
    }

    /// <summary>Brings numbers of other units to kWh; one that no reading can be is reported and counts as missing.</summary>
    private void Scale(int line)
    {
        for (var v = 0; v < _numbers.Length; v++)
            if (_present[v]) _present[v] = _rows.TryScale(v, ref _numbers[v], line);
    }

    /// <summary>Reads a line if it is plain. Nothing is changed by a line that is not.</summary>
    /// <remarks>Optimised from its first call: in a fresh process the tiers would leave it slow for most of a file.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool TryTake(ReadOnlySpan<byte> line, int number)
    {
        if (!TryStamp(line, out var localMs, out var at)) return false;
        var censored = false;
        var delimiter = _delimiter;
        var numbers = _numbers.AsSpan();
        var present = _present.AsSpan();
        foreach (var target in _targets.AsSpan())
        {
            if (at >= line.Length || line[at] != delimiter) return false;
            at++;
            if (target >= 0)
            {
                var any = at < line.Length && line[at] != delimiter;
                if (any)
                {
                    if (!Utf8Number.TryRead(line, ref at, delimiter, out var value)) return false;
                    numbers[target] = value;
                }
                present[target] = any;
            }
            else if (target == Flag)
            {
                if (at >= line.Length || line[at] is not ((byte)'0' or (byte)'1')) return false;
                censored = line[at++] == (byte)'1';
            }
            else
            {
                while (at < line.Length && line[at] != delimiter)
                    if (line[at++] is (byte)'"' or (byte)'\r') return false;
            }
        }
        if (at != line.Length) return false;
        var fate = _rows.Clock.Resolve(localMs, number, out var unixMs);
        if (fate > StampFate.Resolved && !_rows.Accept(fate, number, FieldsOf(line))) return true;
        if (_scaled.Contains(true)) Scale(number);
        var row = _rows.Table.Add(unixMs, number, _numbers, _present);
        if (censored) _rows.MarkCensored(row);
        return true;
    }

    private string[] FieldsOf(ReadOnlySpan<byte> line) => _layout.Encoding.GetString(line).Split(_layout.Delimiter);

    /// <summary>Reads yyyy-MM-dd HH:mm with or without seconds; the date is kept while its bytes repeat.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool TryStamp(ReadOnlySpan<byte> line, out long localMs, out int at)
    {
        localMs = 0;
        at = DateLength + 6;
        if (line.Length <= DateLength + 6) return false;
        var head = BinaryPrimitives.ReadUInt64LittleEndian(line);
        var tail = BinaryPrimitives.ReadUInt16LittleEndian(line[8..]);
        if ((head != _dateBytes || tail != _dateTail) && !TryDate(line, head, tail)) return false;
        if (line[10] is not ((byte)' ' or (byte)'T') || line[13] != (byte)':') return false;
        if (!TryTwo(line, 11, out var hour) || hour > 23 || !TryTwo(line, 14, out var minute) || minute > 59) return false;
        localMs = _dateMs + (((hour * 60) + minute) * MsPerMinute);
        if (line[16] != (byte)':') return line[16] == _delimiter;
        at = DateLength + 9;
        if (line.Length <= DateLength + 9 || !TryTwo(line, 17, out var second) || second > 59) return false;
        localMs += second * 1000L;
        return line[19] == _delimiter;
    }

    private bool TryDate(ReadOnlySpan<byte> line, ulong head, ushort tail)
    {
        if (line[4] != (byte)'-' || line[7] != (byte)'-') return false;
        Span<char> date = stackalloc char[DateLength];
        for (var i = 0; i < DateLength; i++)
        {
            // Ten places are digits and marks only: "2024-03-3 " would be a date to the general reader, with the time one place later.
            if (i is not (4 or 7) && !char.IsAsciiDigit((char)line[i])) return false;
            date[i] = (char)line[i];
        }
        if (!StampText.TryRead(date, DateOrder.YearMonthDay, out var stamp) || stamp.Fineness != StampFineness.Day) return false;
        (_dateBytes, _dateTail, _dateMs) = (head, tail, stamp.LocalMs);
        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool TryTwo(ReadOnlySpan<byte> line, int at, out int value)
    {
        var (tens, ones) = ((uint)(line[at] - '0'), (uint)(line[at + 1] - '0'));
        value = (int)((tens * 10) + ones);
        return tens <= 9 && ones <= 9;
    }
}
