using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace SolarEconomics;

internal sealed partial class PlainRows
{
    private const long MsPerDay = 86_400_000;
    private const int TimeLength = DateLength + 6;
    private const int TimeLengthWithSeconds = DateLength + 9;

    /// <summary>Bytes that must follow the place of a field, so that eight of it, its mark and the end of the line can be looked at.</summary>
    private const int Ahead = Utf8Number.WordBytes + 4;

    /// <summary>Stands for an empty cell until the run is over; no text is read as such a number.</summary>
    private const double Empty = double.NaN;

    // The day of the last row, as its ten bytes and as its midnight, where every time of it is sure.
    private ulong _dayBytes;
    private ushort _dayTail;
    private long _dayUnixMs;

    /// <summary>Rows of one run at most: what is written of them is still in the processor's cache when they are taken into the table.</summary>
    private const int MostRows = 4096;

    private readonly long[] _startMs = new long[MostRows];
    private double[][] _columns = [];
    private bool _anyEmpty;
    private readonly List<int> _censored = [];

    /// <summary>Reads plain rows that follow each other, straight into the columns, and stops before the first that needs a closer look.</summary>
    /// <remarks>The same rows as <see cref="TryTake"/>, which takes the one stopped at: eight bytes at a time instead of one, and the end of the
    /// line found by the way. Tests compare both. Nothing is changed by the row stopped at: what it wrote stands behind the last row.</remarks>
    /// <param name="lines">Whole lines.</param>
    /// <param name="firstLine">Number of the first.</param>
    /// <returns>Bytes and rows that were read.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (int Bytes, int Rows) TakeRun(ReadOnlySpan<byte> lines, int firstLine)
    {
        (_columns, var room) = _rows.Table.Room();
        // What was sure of a day may not be so any more: the rows taken in between moved the clock.
        _dayBytes = 0;
        var startMs = _startMs.AsSpan(0, Math.Min(room, MostRows));
        var first = _rows.Table.Rows;
        ref var text = ref MemoryMarshal.GetReference(lines);
        var last = lines.Length - TimeLengthWithSeconds - Ahead;
        var (begin, count) = (0, 0);
        while (begin < last && count < startMs.Length)
        {
            var at = TimeOfDay(ref Unsafe.Add(ref text, begin), out var ms);
            if (at == 0) break;
            at = Fields(ref text, begin + at, lines.Length - Ahead, first + count);
            if (at < 0) break;
            startMs[count] = _dayUnixMs + ms;
            begin = at;
            count++;
        }
        Keep(_rows.Table, startMs[..count], firstLine);
        return (begin, count);
    }

    /// <summary>Reads a time of the day known, with or without seconds.</summary>
    /// <returns>Its bytes; 0 where it is none, or of a day of which not every time is sure.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int TimeOfDay(ref byte line, out long ms)
    {
        ms = 0;
        var head = Unsafe.ReadUnaligned<ulong>(ref line);
        var tail = Unsafe.ReadUnaligned<ushort>(ref Unsafe.Add(ref line, 8));
        if ((head != _dayBytes || tail != _dayTail) && !TryDay(ref line, head, tail)) return 0;
        var time = Unsafe.ReadUnaligned<ulong>(ref Unsafe.Add(ref line, DateLength));
        if ((byte)time is not ((byte)' ' or (byte)'T')) return 0;
        // HH:mm: against these bytes digits become 0 to 9 and the colon 0; the sum sets a high bit for anything else.
        var digits = ((time >> 8) ^ 0x30303A3030) & 0xFFFFFFFFFF;
        if ((((digits + 0x76767F7676) | digits) & 0x8080808080) != 0) return 0;
        var hour = ((uint)(byte)digits * 10) + (byte)(digits >> 8);
        var minute = ((uint)(byte)(digits >> 24) * 10) + (byte)(digits >> 32);
        if (hour > 23 || minute > 59) return 0;
        ms = ((hour * 60) + minute) * MsPerMinute;
        return (byte)(time >> 48) == (byte)':' ? Seconds(ref line, ref ms) : TimeLength;
    }

    private static int Seconds(ref byte line, ref long ms)
    {
        var (tens, ones) = ((uint)(Unsafe.Add(ref line, 17) - '0'), (uint)(Unsafe.Add(ref line, 18) - '0'));
        ms += ((tens * 10) + ones) * 1000;
        return tens <= 5 && ones <= 9 ? TimeLengthWithSeconds : 0;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private bool TryDay(ref byte line, ulong head, ushort tail)
    {
        if ((head != _dateBytes || tail != _dateTail) && !TryDate(MemoryMarshal.CreateReadOnlySpan(ref line, DateLength), head, tail)) return false;
        if (!_rows.Clock.IsSure(_dateMs, out var midnight) || !_rows.Clock.IsSure(_dateMs + MsPerDay - 1, out _)) return false;
        (_dayBytes, _dayTail, _dayUnixMs) = (head, tail, midnight);
        return true;
    }

    /// <summary>Reads the fields behind the time and the end of the line.</summary>
    /// <param name="text">The lines.</param>
    /// <param name="at">Place of the mark before the first field.</param>
    /// <param name="last">Last place of a mark that is looked at.</param>
    /// <param name="row">The row that is filled.</param>
    /// <returns>Place of the next line; below 0 where a field is not plain.</returns>
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private int Fields(ref byte text, int at, int last, int row)
    {
        var columns = _columns;
        foreach (var target in _targets)
        {
            if (at >= last || Unsafe.Add(ref text, at) != _delimiter) return -1;
            at++;
            if (target < 0)
            {
                at = OtherField(ref text, at, last, target, row);
                if (at < 0) return -1;
                continue;
            }
            var word = Unsafe.ReadUnaligned<ulong>(ref Unsafe.Add(ref text, at));
            var length = Utf8Number.ReadWord(word, out columns[target][row]);
            if (length == 0) length = SignedOrEmpty(word, out columns[target][row]);
            if (length < 0) return -1;
            at += length;
        }
        if (Unsafe.Add(ref text, at) == (byte)'\r') at++;
        // A number that goes on behind the bytes looked at ends neither here nor at a mark.
        return Unsafe.Add(ref text, at) == (byte)'\n' ? at + 1 : -1;
    }

    /// <summary>A number below zero, or an empty field; anything else is left to the closer look.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int SignedOrEmpty(ulong word, out double value)
    {
        value = Empty;
        if ((byte)word == _delimiter || (byte)word is (byte)'\n' or (byte)'\r')
        {
            _anyEmpty = true;
            return 0;
        }
        if ((byte)word != (byte)'-') return -1;
        var length = Utf8Number.ReadWord(word >> 8, out value);
        value = -value;
        return length == 0 ? -1 : length + 1;
    }

    /// <summary>A field that is no number: the mark of a full battery, or a text that is left out.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int OtherField(ref byte text, int at, int last, int target, int row)
    {
        if (target == Flag)
        {
            if (Unsafe.Add(ref text, at) == (byte)'1') _censored.Add(row);
            else if (Unsafe.Add(ref text, at) != (byte)'0') return -1;
            return at + 1;
        }
        for (; at < last; at++)
        {
            var letter = Unsafe.Add(ref text, at);
            if (letter == _delimiter || letter is (byte)'\n' or (byte)'\r') return at;
            if (letter == (byte)'"') return -1;
        }
        return -1;
    }

    /// <summary>Takes the rows of a run into the table: empty cells become missing, other units kWh.</summary>
    private void Keep(IntervalTable table, ReadOnlySpan<long> startMs, int firstLine)
    {
        var first = table.Rows;
        table.Take(startMs, firstLine);
        for (var v = 0; v < _columns.Length; v++)
        {
            if (_anyEmpty) table.MakeMissing(v, first, double.IsNaN);
            if (_scaled[v]) foreach (ref var value in _columns[v].AsSpan(first, startMs.Length)) value = _rows.Values[v].Scale(value);
        }
        foreach (var row in _censored)
            if (row < table.Rows) _rows.MarkCensored(row);
        _censored.Clear();
        _anyEmpty = false;
    }
}
