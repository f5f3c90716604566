namespace SolarEconomics;

/// <summary>The years of one case.</summary>
internal sealed class SweepYears(int years)
{
    private readonly double[] _cost = new double[years];
    private readonly double[] _import = new double[years];
    private readonly double[] _export = new double[years];
    private readonly double[] _given = new double[years];

    internal void Set(int year, double cost, double importKwh, double exportKwh, double givenKwh) =>
        (_cost[year - 1], _import[year - 1], _export[year - 1], _given[year - 1]) = (cost, importKwh, exportKwh, givenKwh);

    internal void FillBetween(int[] worked)
    {
        for (var k = 1; k < worked.Length; k++)
            foreach (var column in (double[][])[_cost, _import, _export, _given])
                for (var year = worked[k - 1] + 1; year < worked[k]; year++)
                {
                    var along = (double)(year - worked[k - 1]) / (worked[k] - worked[k - 1]);
                    column[year - 1] = column[worked[k - 1] - 1] + (along * (column[worked[k] - 1] - column[worked[k - 1] - 1]));
                }
    }

    internal BatteryCaseResult Result(BatteryCase c, double storedAtEndKwh, double usableAtEndKwh, bool isPreview)
    {
        // Until here costs stood at the prices of the first year, so that a preview bends with the prices and not on a straight line.
        var (npv, factor, prices) = (-c.Price, 1.0, 1.0);
        for (var year = 0; year < _cost.Length; year++, prices *= 1 + c.PriceGrowth)
        {
            _cost[year] *= prices;
            npv -= _cost[year] * (factor /= 1 + c.DiscountRate);
        }
        return new BatteryCaseResult
        {
            Case = c, Cost = _cost, ImportKwh = _import, ExportKwh = _export, ThroughputKwh = _given,
            StoredAtEndKwh = storedAtEndKwh, UsableAtEndKwh = usableAtEndKwh, Npv = npv, IsPreview = isPreview,
        };
    }
}
