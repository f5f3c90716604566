namespace SolarEconomics;

/// <summary>Value as the difference of two bills: the same wanted load without the plant, less the bill with it, period by period with all rounding.</summary>
internal sealed class BillDifference
{
    private readonly BillingPlan _plan;
    private readonly decimal _reclaimedShare;

    /// <param name="plan">The tariffs compiled for the grid.</param>
    /// <param name="reclaimedShare">Share of the tax on import that is reclaimed and so was never saved.</param>
    internal BillDifference(BillingPlan plan, double reclaimedShare)
    {
        _plan = plan;
        _reclaimedShare = (decimal)reclaimedShare;
    }

    /// <summary>What a set of flows was worth in each billing period.</summary>
    internal decimal[] PerPeriod(EnergySet flows)
    {
        var without = new double[flows.Grid.Count];
        for (var i = 0; i < without.Length; i++) without[i] = flows.WantedKwh(i);
        return PerPeriod(without, flows.ImportKwh, flows.ExportKwh);
    }

    internal decimal[] PerPeriod(double[] withoutImportKwh, double[] withImportKwh, double[] withExportKwh)
    {
        var without = _plan.Bills(withoutImportKwh, new double[withoutImportKwh.Length]);
        var with = _plan.Bills(withImportKwh, withExportKwh);
        var value = new decimal[with.Count];
        for (var i = 0; i < value.Length; i++) value[i] = Due(without[i]) - Due(with[i]);
        return value;
    }

    /// <summary>What is due in each billing period, the reclaimed tax taken off.</summary>
    internal (DateSpan Period, decimal Due)[] Dues(double[] importKwh, double[] exportKwh) => [.. _plan.Bills(importKwh, exportKwh).Select(b => (b.Period, Due(b)))];

    private decimal Due(Bill bill) => bill.Total.Amount
        - Math.Round(_reclaimedShare * bill.Tax.Amount, bill.Total.Currency.MinorDigits, MidpointRounding.AwayFromZero);
}
