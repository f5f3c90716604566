namespace SolarEconomics;

/// <summary>A first answer over years: some are worked out, the others lie on curves between them, and a year left out on purpose tells how far that is off.</summary>
internal static class YearsPreview
{
    /// <summary>Up to so many years nothing is left out.</summary>
    internal const int FewYears = 4;

    /// <summary>Years from a new start to the next that is worked out: a battery's life is often too short for one in the middle otherwise.</summary>
    private const int SoonAfter = 3;

    internal static FlowsOverYears Run(EnergySystem system, Conditions conditions, Control control, YearsAhead plan, CancellationToken cancellation)
    {
        var years = plan.Years;
        int[] some = [(years + 2) / 3, ((2 * years) + 1) / 3, years];
        var run = new YearsRun(system, conditions, plan);
        var rows = new List<YearOfFlows>(years);
        var (stretches, stretch, began) = (new int[years], 0, 1);
        for (var year = 1; year <= years; year++)
        {
            // A new battery or a renewed array makes a jump, over which no curve is drawn: the years on both sides are worked out.
            // So does another tariff.
            var startsAnew = year == 1 || rows[^1].IsBatteryReplaced || run.Jumps(year);
            if (startsAnew) (stretch, began) = (stretch + 1, year);
            stretches[year - 1] = stretch;
            var isLast = run.Jumps(year + 1) || (year > 1 && run.IsLastOfBattery(rows[^1].Totals));
            var isWorkedOut = startsAnew || isLast || year == began + SoonAfter || some.Contains(year);
            rows.Add(isWorkedOut ? run.Next(year, control, cancellation) : run.Repeat(year, rows[^1]));
        }
        var costs = new YearCosts(rows, stretches, run.PriceFactor);
        return new FlowsOverYears(Between(rows, costs), system, plan, control.Name) { IsPreview = rows.Exists(r => r.IsEstimated), CostOff = costs.Off() };
    }

    /// <summary>Flows lie on straight lines, as these keep them closed and at 0 or more; costs on curves.</summary>
    private static List<YearOfFlows> Between(List<YearOfFlows> rows, YearCosts costs) =>
    [
        .. rows.Select((row, k) =>
        {
            if (!row.IsEstimated) return row;
            var (a, b) = (rows.FindLastIndex(k, r => !r.IsEstimated), rows.FindIndex(k, r => !r.IsEstimated));
            var along = (double)(k - a) / (b - a);
            return row with
            {
                Totals = rows[a].Totals.Towards(rows[b].Totals, along),
                ArrayFactor = rows[a].ArrayFactor + (along * (rows[b].ArrayFactor - rows[a].ArrayFactor)),
                EnergyCost = costs.At(k),
            };
        }),
    ];
}
