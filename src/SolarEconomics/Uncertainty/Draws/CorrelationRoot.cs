namespace SolarEconomics;

/// <summary>The lower triangle L with L Lᵀ = the correlations (Cholesky): L times independent scores are correlated scores.</summary>
internal static class CorrelationRoot
{
    /// <summary>Smaller than this a pivot is a rounded 0: one input then follows wholly from those before it.</summary>
    private const double Nothing = 1e-12;

    /// <param name="names">Names of the inputs, each once.</param>
    /// <param name="pairs">Pairs of them; those not named move apart.</param>
    /// <returns>The triangle, row by row; <see langword="null"/> where no pair is named.</returns>
    /// <exception cref="ArgumentException">A pair names an unknown input, or itself, or stands twice; or the correlations contradict each other.</exception>
    internal static double[,]? Of(IReadOnlyList<string> names, IReadOnlyList<CorrelatedPair> pairs)
    {
        if (pairs.Count == 0) return null;
        var given = Matrix(names, pairs);
        var root = new double[names.Count, names.Count];
        for (var row = 0; row < names.Count; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var rest = given[row, column];
                for (var k = 0; k < column; k++) rest -= root[row, k] * root[column, k];
                if (row == column)
                {
                    if (rest < -Nothing) throw Throw.CorrelationsContradict(names[row]);
                    root[row, row] = rest < Nothing ? 0 : Math.Sqrt(rest);
                }
                else if (root[column, column] > 0)
                {
                    root[row, column] = rest / root[column, column];
                }
                else if (Math.Abs(rest) > 1e-9)
                {
                    throw Throw.CorrelationsContradict(names[row]);
                }
            }
        }
        return root;
    }

    private static double[,] Matrix(IReadOnlyList<string> names, IReadOnlyList<CorrelatedPair> pairs)
    {
        var given = new double[names.Count, names.Count];
        for (var i = 0; i < names.Count; i++) given[i, i] = 1;
        foreach (var pair in pairs)
        {
            var (first, second) = (At(pair.First), At(pair.Second));
            if (first == second) throw Throw.PairOfOne(pair.First);
            if (given[first, second] != 0) throw Throw.PairTwice(pair.First, pair.Second);
            given[first, second] = given[second, first] = pair.Correlation;
        }
        return given;

        int At(string name)
        {
            for (var i = 0; i < names.Count; i++) if (string.Equals(names[i], name, StringComparison.Ordinal)) return i;
            throw Throw.UnknownInput(name, names);
        }
    }
}
