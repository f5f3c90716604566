using System.Runtime.InteropServices;

namespace SolarEconomics;

/// <summary>The different days of prices that one plan has, and which of them each day has.</summary>
internal sealed class PriceRows
{
    private readonly int[] _importOf;
    private readonly int[] _exportOf;
    private readonly List<double[]> _import = [];
    private readonly List<double[]> _export = [];
    private double[][] _importOfRow = [];
    private double[][] _exportOfRow = [];

    internal PriceRows(BillingPlan plan, IReadOnlyList<BilledDay> days)
    {
        _importOf = Sort(plan.PricesOf(EnergySide.Import, withTax: true), days, _import);
        _exportOf = Sort(plan.PricesOf(EnergySide.Export, withTax: true), days, _export);
    }

    internal int ImportRowOf(int day) => _importOf[day];

    internal int ExportRowOf(int day) => _exportOf[day];

    internal ReadOnlySpan<double> Import(int row) => _importOfRow[row];

    internal ReadOnlySpan<double> Export(int row) => _exportOfRow[row];

    /// <summary>Keeps the prices by row, each row told by one of its days.</summary>
    internal void Keep(int[] dayOfRow)
    {
        _importOfRow = [.. dayOfRow.Select(d => _import[_importOf[d]])];
        _exportOfRow = [.. dayOfRow.Select(d => _export[_exportOf[d]])];
    }

    private static int[] Sort(double[] prices, IReadOnlyList<BilledDay> days, List<double[]> different)
    {
        var rowOf = new int[days.Count];
        for (var d = 0; d < days.Count; d++)
        {
            var day = prices.AsSpan(days[d].First, days[d].Count);
            var row = 0;
            while (row < different.Count && !MemoryMarshal.AsBytes(day).SequenceEqual(MemoryMarshal.AsBytes(different[row].AsSpan()))) row++;
            if (row == different.Count) different.Add(day.ToArray());
            rowOf[d] = row;
        }
        return rowOf;
    }
}
