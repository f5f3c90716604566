namespace SolarEconomics;

/// <summary>Finds where a function of one input is 0: looks along its range, and more closely wherever the bend of what it has seen leaves room for a crossing between two looks.</summary>
/// <remarks>
/// <para>With |f″| at most M on a stretch of width h, f lies within M·h²/8 of its chord and its slope within M·h/2 of the chord's. M is taken as four times
/// the sharpest second difference around the stretch. A stretch that could still reach 0 twice is halved; widest stretches first.
/// Source: the error of linear interpolation, from memory; the factor of four is common practice, no source.</para>
/// <para>What is missed: a dip that shows at no look and bends over four times more sharply than what is seen around it, and crossings nearer than a millionth of the range.</para>
/// </remarks>
internal sealed class ZeroSearch
{
    private const int FirstLooks = 33;
    private const int MostLooks = 333;
    private const double Caution = 4;

    private readonly DeclaredRange _range;
    private readonly Func<double, double> _value;
    private readonly Queue<ZeroStretch> _open = new();
    private readonly List<ZeroSpot> _spots = [];
    private readonly List<(double Low, double High)> _unclear = [];
    private readonly double _narrow;
    private double _size;
    private int _looks = FirstLooks;

    private ZeroSearch(DeclaredRange range, Func<double, double> value) =>
        (_range, _value, _narrow) = (range, value, 1e-6 * (range.High - range.Low));

    /// <summary>Every value at which the function is 0, lowest first, the values at both ends, and the stretches that it had to leave open.</summary>
    internal static ZerosFound Along(DeclaredRange range, Func<double, double> value) =>
        range.Input.IsWhole ? AlongWhole(range, value) : new ZeroSearch(range, value).Run();

    /// <summary>Every whole value in turn. Where the amount is 0 at none, the first value on the other side of 0 counts, as a leap.</summary>
    private static ZerosFound AlongWhole(DeclaredRange range, Func<double, double> value)
    {
        var search = new ZeroSearch(range, value);
        var at = Enumerable.Range(0, (int)(range.High - range.Low) + 1).Select(i => range.Low + i).ToArray();
        var values = Array.ConvertAll(at, search.Look);
        var (zeros, jumps) = (new List<double>(), new List<double>());
        for (var i = 0; i < at.Length; i++)
        {
            if (values[i] == 0) zeros.Add(at[i]);
            if (i == 0 || values[i] * values[i - 1] >= 0) continue;
            zeros.Add(at[i]);
            jumps.Add(at[i]);
        }
        return new ZerosFound(zeros, jumps, values[0], values[^1], at.Length, []);
    }

    private ZerosFound Run()
    {
        var at = _range.Steps(FirstLooks);
        var values = Array.ConvertAll(at, Look);
        _size = values.Max(Math.Abs);
        values = Array.ConvertAll(values, Snapped);
        Open(at, values);
        while (_open.TryDequeue(out var stretch)) Judge(stretch);
        var zeros = ZeroSpot.Merged(_spots);
        return new ZerosFound([.. zeros.Select(z => z.At)], [.. zeros.Where(z => z.IsJump).Select(z => z.At)], values[0], values[^1], _looks, Joined());
    }

    private List<(double Low, double High)> Joined()
    {
        var joined = new List<(double Low, double High)>();
        foreach (var (low, high) in _unclear.OrderBy(u => u.Low))
        {
            if (joined.Count > 0 && joined[^1].High >= low) joined[^1] = (joined[^1].Low, high);
            else joined.Add((low, high));
        }
        return joined;
    }

    private void Open(double[] at, double[] values)
    {
        var bends = Bends(at, values);
        for (var i = 0; i < at.Length; i++)
        {
            if (values[i] == 0) _spots.Add(ZeroSpot.Met(at[i]));
            if (i == 0) continue;
            // Two looks further on both sides, as the bend may just be changing its sign here.
            var around = bends[Math.Max(0, i - 3)..Math.Min(at.Length, i + 3)].Max(Math.Abs);
            _open.Enqueue(new ZeroStretch(at[i - 1], values[i - 1], at[i], values[i], Caution * around));
        }
    }

    /// <summary>The second derivative at each look; at the two ends drawn on from the three beside them.</summary>
    private static double[] Bends(double[] at, double[] values)
    {
        var bends = new double[at.Length];
        for (var i = 1; i < at.Length - 1; i++) bends[i] = Bend(at[i - 1], values[i - 1], at[i], values[i], at[i + 1], values[i + 1]);
        bends[0] = (3 * (bends[1] - bends[2])) + bends[3];
        bends[^1] = (3 * (bends[^2] - bends[^3])) + bends[^4];
        return bends;
    }

    private void Judge(ZeroStretch stretch)
    {
        if (stretch.IsFlat(1e-11 * _size))
        {
            _spots.Add(new ZeroSpot(stretch.Low, stretch.High, stretch.Low, IsTouch: true));
        }
        else if (stretch.IsClear || stretch.Width <= _narrow)
        {
            Settle(stretch);
        }
        else if (_looks >= MostLooks)
        {
            _unclear.Add((stretch.Low, stretch.High));
            Settle(stretch);
        }
        else
        {
            Halve(stretch);
        }
    }

    private void Halve(ZeroStretch s)
    {
        _looks++;
        var middle = s.Low + (s.Width / 2);
        var found = Snapped(Look(middle));
        if (found == 0) _spots.Add(ZeroSpot.Met(middle));
        // What was seen from further away fades, or a steep neighbourhood would have the flat places in it halved to the end.
        var bend = Math.Max(s.Bend / 4, Caution * Math.Abs(Bend(s.Low, s.AtLow, middle, found, s.High, s.AtHigh)));
        _open.Enqueue(new ZeroStretch(s.Low, s.AtLow, middle, found, bend));
        _open.Enqueue(new ZeroStretch(middle, found, s.High, s.AtHigh, bend));
    }

    private void Settle(ZeroStretch s)
    {
        if (s.ChangesSign) _spots.Add(ZeroSpot.Crossed(s, Look, _size));
        else if (!s.IsClear && s.Width <= _narrow && s.Least <= 1e-5 * _size) _spots.Add(ZeroSpot.Touched(s));
    }

    private double Look(double at)
    {
        var found = _value(at);
        return double.IsFinite(found) ? found : throw Throw.NoAmountAt(_range.Input, at, found);
    }

    /// <summary>What lies below the rounding of sums counts as 0, or noise around 0 would be taken for crossings.</summary>
    private double Snapped(double value) => Math.Abs(value) <= 1e-13 * _size ? 0 : value;

    /// <summary>The second derivative that three neighbours show.</summary>
    private static double Bend(double low, double atLow, double middle, double atMiddle, double high, double atHigh) =>
        2 * (((atHigh - atMiddle) / (high - middle)) - ((atMiddle - atLow) / (middle - low))) / (high - low);
}
