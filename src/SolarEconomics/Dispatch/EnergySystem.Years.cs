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
    /// <remarks>Whoever listens around long work (<see cref="WorkProgress.Around(WorkListener)"/>, such as a notebook's page) is told <see cref="PreviewYears"/> first.</remarks>
    public FlowsOverYears RunYears(Conditions conditions, Control control, YearsAhead plan, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(plan);
        var run = new YearsRun(this, conditions, plan);
        var rows = new List<YearOfFlows>(plan.Years);
        using var work = WorkProgress.Begin(progress);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation, work.Stop);
        for (var year = 1; year <= plan.Years; year++)
        {
            rows.Add(run.Next(year, control, stop.Token));
            work.Report((double)year / plan.Years);
            if (plan.Years > YearsPreview.FewYears && work.WantsPreview((double)year / plan.Years))
                work.TellPreview(PreviewYears(conditions, control, plan, stop.Token));
        }
        return new FlowsOverYears(rows, this, plan, control.Name);
    }

    /// <summary>A first answer while an assumption moves: few years are worked out, flows of the others lie on straight lines between them, costs on curves.</summary>
    /// <param name="conditions">The first year, about 365 days long.</param>
    /// <param name="control">Who decides.</param>
    /// <param name="plan">What ages, grows and changes.</param>
    /// <param name="cancellation">Ends the work within a few thousand intervals.</param>
    /// <returns>An answer marked <see cref="FlowsOverYears.IsPreview"/>, with <see cref="FlowsOverYears.CostOff"/>; of four years or fewer, the full one.</returns>
    /// <remarks>Worked out are the first year, three between, the last, and the years on both sides of each new battery and each renewed array. What else a year
    /// <see cref="YearsAhead.Change">changes</see> is seen in these years only. Ages, cycles, replacements and prices go on in all years.</remarks>
    /// <exception cref="ArgumentException">The conditions are not a year long, a renewal names no array, or a series has a mistake.</exception>
    /// <exception cref="ImpossibleOrderException">The control ordered what cannot be done.</exception>
    public FlowsOverYears PreviewYears(Conditions conditions, Control control, YearsAhead plan, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Years <= YearsPreview.FewYears
            ? RunYears(conditions, control, plan, null, cancellation)
            : YearsPreview.Run(this, conditions, control, plan, cancellation);
    }
}
