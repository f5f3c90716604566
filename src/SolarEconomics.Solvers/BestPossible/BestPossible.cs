namespace SolarEconomics.Solvers;

/// <summary>The least that the energy of a run could have cost, had all sun, use and prices been known ahead: a bound that no control can beat.</summary>
/// <remarks>
/// A linear program of the same plant and conditions, with every part that is not linear at its most favourable: charging does not slow near full, a generator
/// has its lowest cost per kWh at any output, standby of an island may go unserved, and where charging and discharging (or import and export) exclude each
/// other only their shares of what is possible may add up to one. Curtailment is free. Prices count per kWh: demand charges, blocks, caps and rounding are not
/// in it, so for a tariff that has them this is no bound of the bill. Safe between threads.
/// </remarks>
public static class BestPossible
{
    /// <summary>The bound for one run: it starts and ends at the run's own charge, and serves as much.</summary>
    /// <param name="run">What a control did.</param>
    /// <param name="options">Choices. Default: those of <see cref="BestPossibleOptions"/>.</param>
    /// <param name="progress">Receives the share done, 0 to 1, after each window.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">No price of import is known and there is no generator: every flow costs the same.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    /// <remarks>Equation: min Σ import price · import − export price · export + fuel, upkeep and unserved kWh at their prices. Some seconds for the hours of a
    /// year and one battery, a quarter of that in monthly windows. Source: best-1.</remarks>
    public static BestPossibleCost Of(EnergyFlows run, BestPossibleOptions? options = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(run);
        options ??= new BestPossibleOptions();
        if (run.Conditions.ImportPricePerKwh.IsEmpty && run.System.Generator is null) throw Throw.NothingCosts();
        var limits = new RunLimits(run, options);
        var count = run.Time.Count;
        var windows = (count + options.MostIntervals - 1) / options.MostIntervals;
        var least = 0.0;
        using var work = WorkProgress.Begin(progress);
        for (var window = 0; window < windows; window++)
        {
            var (from, to) = ((int)((long)count * window / windows), (int)((long)count * (window + 1) / windows));
            using var program = new DispatchProgram(limits, from, to);
            least += program.Least(cancel);
            work.Report((window + 1.0) / windows);
        }
        return new BestPossibleCost(run.ControlName, limits.Costs.Of(run), least, windows);
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
    /// <remarks>Equation: share = (cost with the battery at rest − cost of the control) / (cost with the battery at rest − least cost).</remarks>
    public static JudgedControls Judge(EnergySystem system, Conditions conditions, IReadOnlyList<Control> controls, BestPossibleOptions? options = null,
        IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(controls);
        if (controls.Count == 0) throw Throw.NoControls();
        options ??= new BestPossibleOptions();
        using var work = WorkProgress.Begin(progress);
        var rest = system.Run(conditions, Control.Of("battery at rest", _ => Order.Rest), null, cancel);
        var judged = new List<JudgedControl>();
        foreach (var control in controls)
        {
            var run = system.Run(conditions, control, null, cancel);
            var cost = Of(run, options, null, cancel);
            var restCost = new RunCosts(run, options).Of(rest);
            judged.Add(new JudgedControl(run, cost, ServesLess(rest, run) && options.UnservedPricePerKwh is null ? null : restCost));
            work.Report((double)judged.Count / controls.Count);
        }
        return new JudgedControls(judged);
    }

    /// <summary>Doing nothing is no measure where it leaves more unserved and unserved energy has no price.</summary>
    private static bool ServesLess(EnergyFlows rest, EnergyFlows run)
    {
        var less = 0.0;
        for (var i = 0; i < run.Time.Count; i++) less += rest[FlowPath.Unserved][i] - run[FlowPath.Unserved][i];
        return less > 1e-6;
    }
}
