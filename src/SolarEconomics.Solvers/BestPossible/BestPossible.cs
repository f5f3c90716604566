namespace SolarEconomics.Solvers;

/// <summary>The least that the energy of a run could have cost, had all sun, use and prices been known ahead: a bound that no control can beat.</summary>
/// <remarks>
/// A linear program of the same plant and conditions, with every part that is not linear at its most favourable: charging does not slow near full, a generator
/// has its lowest cost per kWh at any output, standby of an island may go unserved, and where charging and discharging (or import and export) exclude each
/// other only their shares of what is possible may add up to one. Curtailment is free. Prices count per kWh, unless whole bills are asked for by
/// <see cref="BestPossibleOptions.Bills"/>: then demand and blocks are in it too. A waiting load is served as much by each deadline, and in all. Safe between threads.
/// </remarks>
public static class BestPossible
{
    /// <summary>The bound for one run: it starts and ends at the run's own charge, and serves as much.</summary>
    /// <param name="run">What a control did.</param>
    /// <param name="options">Choices. Default: those of <see cref="BestPossibleOptions"/>.</param>
    /// <param name="progress">Receives the share done, 0 to 1, after each window.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">No price of import is known and there is no generator: every flow costs the same. Or the tariff whose bills are asked for
    /// stands on other intervals, or has a part that no linear program can say; the part is named.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    /// <remarks>Equation: min Σ import price · import − export price · export + fuel, upkeep and unserved kWh at their prices. About a second for the hours of a
    /// year and one battery. Source: best-1.</remarks>
    public static BestPossibleCost Of(EnergyFlows run, BestPossibleOptions? options = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(run);
        options ??= new BestPossibleOptions();
        if (options.Bills is null && run.Conditions.ImportPricePerKwh.IsEmpty && run.System.Generator is null) throw Throw.NothingCosts();
        var limits = new RunLimits(run, options);
        var starts = WindowStarts(run.Time.Count, options.MostIntervals, limits.Costs.Floor);
        var least = limits.Costs.Floor?.Constant ?? 0;
        using var work = WorkProgress.Begin(progress);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel, work.Stop);
        for (var window = 0; window < starts.Count; window++)
        {
            using var program = new DispatchProgram(limits, starts[window], window + 1 < starts.Count ? starts[window + 1] : run.Time.Count);
            least += program.Least(stop.Token);
            work.Report((window + 1.0) / starts.Count);
        }
        return new BestPossibleCost(run.ControlName, limits.Costs.Of(run), least, starts.Count) { IsOfBills = options.Bills is not null };
    }

    /// <summary>Equal windows; where blocks or demand tie the intervals of a billing period together, as many whole periods as fit.</summary>
    private static List<int> WindowStarts(int count, int most, BillFloor? floor)
    {
        var windows = (count + most - 1) / most;
        if (floor is null || (floor.Excesses.Count == 0 && floor.Peaks.Count == 0)) return [.. Enumerable.Range(0, windows).Select(w => (int)((long)count * w / windows))];
        var starts = new List<int> { 0 };
        var edges = floor.PeriodStarts.Append(count).ToList();
        for (var k = 1; k + 1 < edges.Count; k++)
            if (edges[k + 1] - starts[^1] > most && edges[k] > starts[^1]) starts.Add(edges[k]);
        return starts;
    }

    /// <summary>Runs each control and says how much of the reachable saving it got.</summary>
    /// <param name="system">The plant.</param>
    /// <param name="conditions">What it meets, prices included.</param>
    /// <param name="controls">The controls; at least one.</param>
    /// <param name="options">Choices. Default: those of <see cref="BestPossibleOptions"/>.</param>
    /// <param name="progress">Receives the share done, 0 to 1, after each control.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">No control, or no price of import and no generator.</exception>
    /// <exception cref="ImpossibleOrderException">A control ordered what cannot be done.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    /// <remarks>Whoever listens around long work (<see cref="WorkProgress.Around(WorkListener)"/>, such as a notebook's page) is told a preview first: an estimate from eight weeks,
    /// or of whole bills what each control's bills come to, while the best that was possible is worked out.
    /// Equation: share = (cost with the battery at rest − cost of the control) / (cost with the battery at rest − least cost).</remarks>
    public static JudgedControls Judge(EnergySystem system, Conditions conditions, IReadOnlyList<Control> controls, BestPossibleOptions? options = null,
        IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(controls);
        if (controls.Count == 0) throw Throw.NoControls();
        options ??= new BestPossibleOptions();
        using var work = WorkProgress.Begin(progress);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel, work.Stop);
        var rest = system.Run(conditions, Control.Of("battery at rest", _ => Order.Rest), null, stop.Token);
        var runs = controls.Select(control => system.Run(conditions, control, null, stop.Token)).ToList();
        if (work.HasPreviewReader && JudgePreview.TakesLong(conditions.Time, runs.Count))
        {
            if (options.Bills is not null) work.TellPreview(new JudgedBills([.. runs.Select(run => (run.ControlName, new RunCosts(run, options).Of(run), CostAtRest(run)))], system));
            else if (JudgePreview.IsWorthwhile(conditions.Time)) work.TellPreview(JudgePreview.Of(runs, CostAtRest, options, stop.Token));
        }
        var judged = new List<JudgedControl>();
        foreach (var run in runs)
        {
            judged.Add(new JudgedControl(run, Of(run, options, null, stop.Token), CostAtRest(run)));
            work.Report((double)judged.Count / controls.Count);
        }
        return new JudgedControls(judged);

        double? CostAtRest(EnergyFlows run) => ServesLess(rest, run) && options.UnservedPricePerKwh is null ? null : new RunCosts(run, options).Of(rest);
    }

    /// <summary>Doing nothing is no measure where it leaves more unserved and unserved energy has no price.</summary>
    private static bool ServesLess(EnergyFlows rest, EnergyFlows run)
    {
        var less = 0.0;
        for (var i = 0; i < run.Time.Count; i++) less += rest[FlowPath.Unserved][i] - run[FlowPath.Unserved][i];
        return less > 1e-6;
    }
}
