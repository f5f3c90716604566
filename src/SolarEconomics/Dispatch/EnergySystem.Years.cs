namespace SolarEconomics;

/// <content>Year after year.</content>
public sealed partial record EnergySystem
{
    /// <summary>Works out year after year: arrays and battery age, use and prices grow, parts are replaced, charge is carried over.</summary>
    /// <param name="conditions">The first year, about 365 days long; each further year repeats its sun.</param>
    /// <param name="control">Who decides.</param>
    /// <param name="plan">What ages, grows and changes.</param>
    /// <param name="progress">Receives the share done, 0 to 1, after each year. Default: nobody.</param>
    /// <param name="cancellation">Ends the work within a few thousand intervals.</param>
    /// <exception cref="ArgumentException">The conditions are not a year long, a renewal names no array, or a series has a mistake.</exception>
    /// <exception cref="ImpossibleOrderException">The control ordered what cannot be done.</exception>
    public FlowsOverYears RunYears(Conditions conditions, Control control, YearsAhead plan, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(plan);
        var run = new YearsRun(this, conditions, plan);
        var rows = new List<YearOfFlows>(plan.Years);
        using var work = WorkProgress.Begin(progress);
        for (var year = 1; year <= plan.Years; year++)
        {
            rows.Add(run.Next(year, control, cancellation));
            work.Report((double)year / plan.Years);
        }
        return new FlowsOverYears(rows, this, plan, control.Name);
    }

    /// <summary>A first answer while an assumption moves: few years are worked out, the others repeat the flows of the last one that was, at a cost on a straight line between.</summary>
    /// <param name="conditions">The first year, about 365 days long.</param>
    /// <param name="control">Who decides.</param>
    /// <param name="plan">What ages, grows and changes.</param>
    /// <param name="cancellation">Ends the work within a few thousand intervals.</param>
    /// <returns>An answer marked <see cref="FlowsOverYears.IsPreview"/>; of four years or fewer, the full one.</returns>
    /// <remarks>Worked out are the first year, two between, the last, and each year that begins with a new battery or a renewed array. What else a year
    /// <see cref="YearsAhead.Change">changes</see> is seen in these years only. Ages, cycles, replacements and prices go on in all years.</remarks>
    /// <exception cref="ArgumentException">The conditions are not a year long, a renewal names no array, or a series has a mistake.</exception>
    /// <exception cref="ImpossibleOrderException">The control ordered what cannot be done.</exception>
    public FlowsOverYears PreviewYears(Conditions conditions, Control control, YearsAhead plan, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(plan);
        var years = plan.Years;
        if (years <= 4) return RunYears(conditions, control, plan, null, cancellation);
        int[] some = [1, (years + 2) / 3, ((2 * years) + 1) / 3, years];
        var run = new YearsRun(this, conditions, plan);
        var rows = new List<YearOfFlows>(years);
        for (var year = 1; year <= years; year++)
        {
            var isWorkedOut = some.Contains(year) || rows[^1].IsBatteryReplaced || plan.Renewals.Any(r => r.Year == year);
            rows.Add(isWorkedOut ? run.Next(year, control, cancellation) : run.Repeat(year, rows[^1]));
        }
        return new FlowsOverYears(CostsBetween(rows, plan.PriceGrowth), this, plan, control.Name) { IsPreview = rows.Exists(r => r.IsRepeated) };
    }

    /// <summary>Between two years that were worked out the cost lies on a straight line at the prices of the first year, and bends with the prices only.</summary>
    private static List<YearOfFlows> CostsBetween(List<YearOfFlows> rows, double priceGrowth)
    {
        double Prices(int k) => Math.Pow(1 + priceGrowth, k);
        var worked = Enumerable.Range(0, rows.Count).Where(k => !rows[k].IsRepeated).ToList();
        return [.. rows.Select((row, k) =>
        {
            if (!row.IsRepeated) return row;
            var (a, b) = (worked.FindLast(w => w < k), worked.Find(w => w > k));
            var (first, last) = (rows[a].EnergyCost / Prices(a), rows[b].EnergyCost / Prices(b));
            return row with { EnergyCost = (first + ((last - first) * (k - a) / (b - a))) * Prices(k) };
        })];
    }
}
