namespace SolarEconomics;

/// <summary>Costs of the years that a preview did not work out: on the curve through the nearest years of the same stretch that it did.</summary>
/// <param name="rows">All years.</param>
/// <param name="stretches">For each year the number of its stretch; between two stretches something was renewed.</param>
/// <param name="prices">Prices of a year, by its number, against those before any growth: the curve is drawn without growth and bends with it.</param>
internal sealed class YearCosts(List<YearOfFlows> rows, int[] stretches, Func<int, double> prices)
{
    /// <summary>Years that a curve goes through: a parabola, as use and ageing bend slowly.</summary>
    private const int Through = 3;

    internal double At(int k) => Curve(k, leftOut: -1);

    /// <summary>The most by which a curve that left out a year which was worked out missed it; <see langword="null"/> where there is no such year.</summary>
    /// <remarks>Such a curve spans more years than one that leaves nothing out, and so is off by more.</remarks>
    internal double? Off()
    {
        double? most = null;
        for (var k = 0; k < rows.Count; k++)
        {
            if (rows[k].IsEstimated || Nodes(k, k) is not { Count: > 1 } others || others.TrueForAll(n => n > k) || others.TrueForAll(n => n < k)) continue;
            most = Math.Max(most ?? 0, Math.Abs(rows[k].EnergyCost - Curve(k, leftOut: k)));
        }
        return most;
    }

    /// <summary>Lagrange's polynomial through the nearest years.</summary>
    private double Curve(int k, int leftOut)
    {
        var nodes = Nodes(k, leftOut).OrderBy(n => Math.Abs(n - k)).Take(Through).ToList();
        var sum = 0.0;
        foreach (var node in nodes)
        {
            var weight = 1.0;
            foreach (var other in nodes)
                if (other != node) weight *= (double)(k - other) / (node - other);
            sum += weight * rows[node].EnergyCost / Prices(node);
        }
        return sum * Prices(k);
    }

    private List<int> Nodes(int k, int leftOut) =>
        [.. Enumerable.Range(0, rows.Count).Where(n => n != leftOut && !rows[n].IsEstimated && stretches[n] == stretches[k])];

    private double Prices(int k) => prices(k + 1);
}
