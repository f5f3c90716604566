using System.Runtime.InteropServices;

namespace SolarEconomics;

/// <summary>The days of a grid sorted into rows: days of one billing period and length on which every plan of a set has the same prices.</summary>
internal sealed class AlikeDays
{
    private readonly (int First, int Count, int Row)[] _days;
    private readonly (int At, int Count, int Period)[] _rows;
    private readonly PriceRows[] _prices;
    private readonly int _cells;

    private AlikeDays((int First, int Count, int Row)[] days, (int At, int Count, int Period)[] rows, PriceRows[] prices)
    {
        _days = days;
        _rows = rows;
        _prices = prices;
        _cells = rows.Length == 0 ? 0 : rows[^1].At + rows[^1].Count;
    }

    internal static AlikeDays Of(IReadOnlyList<BillingPlan> plans)
    {
        var days = plans[0].BilledDays();
        var row = new int[days.Count];
        var rowOf = new Dictionary<(int Before, int Import, int Export), int>();
        for (var d = 0; d < days.Count; d++) row[d] = Row(rowOf, (-1 - days[d].Period, days[d].Count, 0));
        var sorted = plans.Select(plan => new PriceRows(plan, days)).ToArray();
        foreach (var prices in sorted)
        {
            // Each plan parts the rows that the plans before it could not tell from each other.
            rowOf.Clear();
            for (var d = 0; d < days.Count; d++) row[d] = Row(rowOf, (row[d], prices.ImportRowOf(d), prices.ExportRowOf(d)));
        }
        var count = row.Length == 0 ? 0 : row.Max() + 1;
        var rows = new (int At, int Count, int Period)[count];
        var stands = new int[count];
        for (var d = days.Count - 1; d >= 0; d--)
        {
            rows[row[d]] = (0, days[d].Count, days[d].Period);
            stands[row[d]] = d;
        }
        for (var r = 1; r < count; r++) rows[r].At = rows[r - 1].At + rows[r - 1].Count;
        foreach (var prices in sorted) prices.Keep(stands);
        return new AlikeDays([.. days.Select((day, d) => (day.First, day.Count, row[d]))], rows, sorted);
    }

    /// <summary>Adds up the energy of alike days, interval by interval.</summary>
    internal double[] Fold(ReadOnlySpan<double> kwh)
    {
        var cells = new double[_cells];
        foreach (var (first, count, row) in _days)
            CellSums.Add(kwh.Slice(first, count), cells.AsSpan(_rows[row].At, count));
        return cells;
    }

    /// <summary>Adds to each period's cost what a plan asks for the folded energy.</summary>
    internal void AddCosts(int plan, double[] import, double[]? export, double[] costs)
    {
        var prices = _prices[plan];
        for (var row = 0; row < _rows.Length; row++)
        {
            var (at, count, period) = _rows[row];
            var cost = CellSums.Dot(import.AsSpan(at, count), prices.Import(row));
            if (export is not null) cost -= CellSums.Dot(export.AsSpan(at, count), prices.Export(row));
            costs[period] += cost;
        }
    }

    private static int Row(Dictionary<(int Before, int Import, int Export), int> rowOf, (int Before, int Import, int Export) key)
    {
        ref var row = ref CollectionsMarshal.GetValueRefOrAddDefault(rowOf, key, out var known);
        if (!known) row = rowOf.Count - 1;
        return row;
    }
}
