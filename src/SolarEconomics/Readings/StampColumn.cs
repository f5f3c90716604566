namespace SolarEconomics;

/// <summary>The times of rows while they are read: a few stretches as long as the rows keep to one step, else one number for each.</summary>
/// <remarks>A record of a million rows at five minutes has a dozen holes: its times need no eight million bytes. Unit: milliseconds since 1970.</remarks>
internal sealed class StampColumn(int expectedRows)
{
    /// <summary>Below this number of stretches it is not asked whether they are long enough to be worth it.</summary>
    private const int FewStretches = 64;

    /// <summary>Stretches must be so long on average, in rows.</summary>
    private const int UsefulStretch = 16;

    private readonly List<(int Row, long Ms)> _stretches = [];
    private long _stepMs;
    private long _latestMs = long.MinValue;
    private long[]? _each;

    internal int Count { get; private set; }

    /// <summary>Whether every row is later than the one before.</summary>
    internal bool InOrder { get; private set; } = true;

    /// <summary>The stretches and their one step, where the rows keep to one: the row that each begins with, and its time.</summary>
    internal (IReadOnlyList<(int Row, long Ms)> Begins, long StepMs)? Stretches => _each is null && Count > 1 ? (_stretches, _stepMs) : null;

    /// <summary>All times one by one; worked out when first asked for.</summary>
    internal ReadOnlySpan<long> Each => (_each ?? OneByOne()).AsSpan(0, Count);

    internal static StampColumn Of(long[] ascending) => new(0) { _each = ascending, Count = ascending.Length, _latestMs = ascending.Length > 0 ? ascending[^1] : long.MinValue };

    internal void Add(long ms) => Add([ms]);

    internal void Add(ReadOnlySpan<long> times)
    {
        var (i, latest, step) = (0, _latestMs, _stepMs);
        if (_each is null)
        {
            // The usual row stands one step after the one before.
            for (; i < times.Length; i++)
            {
                var ms = times[i];
                if (ms != latest + step || step == 0)
                {
                    if (!TryBreak(Count + i, latest, ms)) break;
                    step = _stepMs;
                }
                latest = ms;
            }
            _latestMs = latest;
            Count += i;
        }
        if (i < times.Length) AddEach(times[i..]);
    }

    internal long this[int row]
    {
        get
        {
            if (_each is not null) return _each[row];
            var (low, high) = (0, _stretches.Count - 1);
            while (low < high)
            {
                var middle = (low + high + 1) / 2;
                if (_stretches[middle].Row <= row) low = middle;
                else high = middle - 1;
            }
            return _stretches[low].Ms + ((row - _stretches[low].Row) * _stepMs);
        }
    }

    /// <summary>Takes a row that does not stand one step after the one before. False where stretches are of no use any more.</summary>
    private bool TryBreak(int row, long latest, long ms)
    {
        if (row == 0)
        {
            _stretches.Add((0, ms));
            return true;
        }
        if (ms <= latest) return false;
        if (row == 1)
        {
            _stepMs = ms - latest;
            return true;
        }
        if (_stretches.Count >= FewStretches + (row / UsefulStretch)) return false;
        _stretches.Add((row, ms));
        return true;
    }

    private void AddEach(ReadOnlySpan<long> times)
    {
        var each = _each ?? OneByOne();
        if (Count + times.Length > each.Length) Array.Resize(ref each, Math.Max(checked(each.Length * 2), Count + times.Length));
        _each = each;
        foreach (var ms in times)
        {
            if (ms <= _latestMs) InOrder = false;
            else _latestMs = ms;
            each[Count++] = ms;
        }
    }

    private long[] OneByOne()
    {
        var each = GC.AllocateUninitializedArray<long>(Math.Max(Count, expectedRows));
        for (var s = 0; s < _stretches.Count; s++)
        {
            var end = s + 1 < _stretches.Count ? _stretches[s + 1].Row : Count;
            for (var row = _stretches[s].Row; row < end; row++) each[row] = _stretches[s].Ms + ((row - _stretches[s].Row) * _stepMs);
        }
        return _each = each;
    }
}
