namespace SolarEconomics;

/// <summary>Many tariffs laid on one grid together: days on which all of them price alike are added up first and priced once.</summary>
/// <remarks>Compiled once, then asked as often as wanted. Immutable, so safe to share between threads.
/// Exact up to the order of additions: a day's prices are compared value by value, so nothing is assumed of the calendar.</remarks>
public sealed class BillingPlans
{
    private readonly AlikeDays _days;
    private readonly double[][] _fixedCosts;
    private readonly bool _exportIsPriced;

    private BillingPlans(IReadOnlyList<BillingPlan> plans, AlikeDays days)
    {
        Plans = plans;
        _days = days;
        var nothing = new double[plans[0].Grid.Count];
        _fixedCosts = [.. plans.Select(p => p.CostsBeforeRounding(nothing, nothing))];
        _exportIsPriced = plans.Any(p => p.PricesOf(EnergySide.Export, withTax: true).AsSpan().ContainsAnyExcept(0.0));
    }

    /// <summary>The plans, in the order given.</summary>
    public IReadOnlyList<BillingPlan> Plans { get; }

    /// <summary>Lays plans together.</summary>
    /// <param name="plans">At least one, all on one grid with the same billing periods, each <see cref="BillingPlan.IsPricedByTheHour"/>.</param>
    /// <exception cref="ArgumentException">No plan, or plans of other grids or periods.</exception>
    /// <exception cref="InvalidOperationException">A plan needs the whole bill.</exception>
    public static BillingPlans Of(params IReadOnlyList<BillingPlan> plans)
    {
        ArgumentNullException.ThrowIfNull(plans);
        if (plans.Count == 0) throw Throw.NoPlan();
        foreach (var plan in plans)
        {
            if (plan.Grid != plans[0].Grid || !plan.Periods.SequenceEqual(plans[0].Periods) || !plan.BillingZone.Equals(plans[0].BillingZone)) throw Throw.PlansApart(plans[0], plan);
            if (!plan.IsPricedByTheHour) throw Throw.NotByTheHour(plan.History.Latest);
        }
        return new BillingPlans(plans, AlikeDays.Of(plans));
    }

    /// <summary>What each period costs under each plan with tax, before any rounding.</summary>
    /// <param name="importKwh">Energy taken from the grid in each interval. Unit: kWh.</param>
    /// <param name="exportKwh">Energy sent to the grid in each interval. Unit: kWh.</param>
    /// <returns>For each plan one amount for each period, as <see cref="BillingPlan.CostsBeforeRounding"/> gives them.</returns>
    /// <exception cref="ArgumentException">A column has another length than the grid, or holds no finite number somewhere.</exception>
    public double[][] CostsBeforeRounding(ReadOnlySpan<double> importKwh, ReadOnlySpan<double> exportKwh)
    {
        var grid = Plans[0].Grid;
        if (importKwh.Length != grid.Count) throw Throw.WrongLength(nameof(importKwh), importKwh.Length, grid.Count);
        if (exportKwh.Length != grid.Count) throw Throw.WrongLength(nameof(exportKwh), exportKwh.Length, grid.Count);
        var import = _days.Fold(importKwh);
        var export = _exportIsPriced ? _days.Fold(exportKwh) : null;
        var costs = new double[Plans.Count][];
        var sum = 0.0;
        for (var plan = 0; plan < costs.Length; plan++)
        {
            costs[plan] = _fixedCosts[plan].AsSpan().ToArray();
            _days.AddCosts(plan, import, export, costs[plan]);
            foreach (var cost in costs[plan]) sum += cost;
        }
        // A value that is no number makes the sum none: only then is the column searched for it.
        if (!double.IsFinite(sum)) Plans[0].CheckColumns(importKwh, exportKwh);
        return costs;
    }
}
