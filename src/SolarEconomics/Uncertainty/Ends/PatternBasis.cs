namespace SolarEconomics;

/// <summary>The patterns in the mix with their shares: a revised simplex table with one row for each sum and one for each block, whose shares add up to 1.</summary>
internal sealed class PatternBasis
{
    private const double Dust = 1e-9;
    private const int PivotsBeforeInverting = 60;

    private readonly int[] _sums;
    private readonly int _blocks;
    private readonly double[] _wanted;
    private readonly Pattern?[] _patterns;
    private readonly int[] _blockOf;
    private readonly double[][] _columns;
    private readonly double[] _worth;
    private double[,] _inverse;
    private double[] _shares;
    private int _pivots;

    /// <param name="wanted">What each sum must come to. Unit: kWh.</param>
    /// <param name="fine">What a missed kWh of a sum costs.</param>
    /// <param name="start">A first pattern of each block.</param>
    /// <param name="sums">The numbers of the sums.</param>
    internal PatternBasis(double[] wanted, double fine, IReadOnlyList<Pattern> start, int[] sums)
    {
        (_sums, _blocks) = (sums, start.Count);
        var rows = sums.Length + _blocks;
        _wanted = [.. wanted, .. Enumerable.Repeat(1.0, _blocks)];
        (_patterns, _blockOf, _columns, _worth) = (new Pattern?[rows], new int[rows], new double[rows][], new double[rows]);
        for (var r = 0; r < sums.Length; r++)
        {
            // What the first patterns leave open is missed, at a fine, until better patterns meet it.
            _columns[r] = new double[rows];
            _columns[r][r] = wanted[r] >= start.Sum(p => p.InSums[sums[r]]) ? 1 : -1;
            _worth[r] = -fine;
        }
        for (var b = 0; b < _blocks; b++) Put(sums.Length + b, start[b], b);
        (_inverse, _shares) = (new double[0, 0], []);
        Invert();
    }

    /// <summary>By how many kWh the sums are missed, counted from the patterns themselves: by records that contradict each other.</summary>
    internal double MissedKwh
    {
        get
        {
            var missed = 0.0;
            for (var sum = 0; sum < _sums.Length; sum++)
            {
                var met = 0.0;
                for (var r = 0; r < _patterns.Length; r++) if (_patterns[r] is not null) met += Math.Max(0, _shares[r]) * _columns[r][sum];
                missed += Math.Abs(_wanted[sum] - met);
            }
            return missed;
        }
    }

    /// <summary>What a kWh more in each sum would be worth, at the present mix, to a pattern that enters.</summary>
    internal void PricesInto(double[] price)
    {
        var dual = Duals();
        for (var r = 0; r < _sums.Length; r++) price[_sums[r]] = -dual[r];
    }

    /// <summary>What a pattern would gain over the mix of its block.</summary>
    internal double GainOf(Pattern pattern, int block)
    {
        var dual = Duals();
        var gain = pattern.Worth - dual[_sums.Length + block];
        for (var r = 0; r < _sums.Length; r++) gain -= dual[r] * pattern.InSums[_sums[r]];
        return gain;
    }

    /// <summary>Lets a pattern into the mix; another leaves.</summary>
    internal void Enter(Pattern pattern, int block)
    {
        var rows = _patterns.Length;
        var column = ColumnOf(pattern, block);
        var change = new double[rows];
        for (var r = 0; r < rows; r++)
            for (var k = 0; k < rows; k++) change[r] += _inverse[r, k] * column[k];
        // Of all that would be used up at about the same time the steepest leaves: a pivot on next to nothing would spoil the table.
        var most = double.PositiveInfinity;
        for (var r = 0; r < rows; r++)
            if (change[r] > Dust) most = Math.Min(most, (Math.Max(0, _shares[r]) + Dust) / change[r]);
        var leaves = -1;
        for (var r = 0; r < rows; r++)
            if (change[r] > Dust && Math.Max(0, _shares[r]) / change[r] <= most && (leaves < 0 || change[r] > change[leaves])) leaves = r;
        // Shares of a block add up to 1, so something always leaves.
        Put(leaves, pattern, block);
        if (++_pivots % PivotsBeforeInverting == 0)
        {
            Invert();
            return;
        }
        for (var k = 0; k < rows; k++) _inverse[leaves, k] /= change[leaves];
        _shares[leaves] = Math.Max(0, _shares[leaves]) / change[leaves];
        for (var r = 0; r < rows; r++)
        {
            if (r == leaves || change[r] == 0) continue;
            for (var k = 0; k < rows; k++) _inverse[r, k] -= change[r] * _inverse[leaves, k];
            _shares[r] -= change[r] * _shares[leaves];
        }
    }

    /// <summary>The flows of a block in the mix.</summary>
    internal Pattern Mix(int block)
    {
        Invert();
        var own = Enumerable.Range(0, _patterns.Length).Where(r => _patterns[r] is not null && _blockOf[r] == block && _shares[r] > 0).ToList();
        var whole = own.Sum(r => _shares[r]);
        var first = _patterns[own[0]]!;
        var mix = new Pattern(first.From, first.From + first.Count, first.Generation.Length);
        foreach (var r in own) mix.Add(_shares[r] / whole, _patterns[r]!);
        return mix;
    }

    private void Put(int row, Pattern pattern, int block) =>
        (_patterns[row], _blockOf[row], _columns[row], _worth[row]) = (pattern, block, ColumnOf(pattern, block), pattern.Worth);

    private double[] ColumnOf(Pattern pattern, int block)
    {
        var column = new double[_patterns.Length];
        for (var r = 0; r < _sums.Length; r++) column[r] = pattern.InSums[_sums[r]];
        column[_sums.Length + block] = 1;
        return column;
    }

    private double[] Duals()
    {
        var dual = new double[_patterns.Length];
        for (var r = 0; r < dual.Length; r++)
            for (var k = 0; k < dual.Length; k++) dual[k] += _worth[r] * _inverse[r, k];
        return dual;
    }

    private void Invert()
    {
        var table = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfColumnArrays(_columns);
        _inverse = table.Inverse().ToArray();
        _shares = new double[_patterns.Length];
        for (var r = 0; r < _shares.Length; r++)
            for (var k = 0; k < _shares.Length; k++) _shares[r] += _inverse[r, k] * _wanted[k];
    }
}
