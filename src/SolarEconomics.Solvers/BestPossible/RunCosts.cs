namespace SolarEconomics.Solvers;

/// <summary>Prices per kWh of a run, and what a run cost at them or by its whole bills.</summary>
internal sealed class RunCosts
{
    private readonly double[] _hours;
    private readonly Generator? _generator;
    private readonly BillingPlan? _bills;

    internal RunCosts(EnergyFlows run, BestPossibleOptions options)
    {
        _hours = run.Time.Hours.ToArray();
        _generator = run.System.Generator;
        _bills = options.Bills;
        if (_bills is not null)
        {
            if (!IsOn(_bills.Grid, run.Time)) throw Throw.BillsOnOtherIntervals(_bills.Grid, run.Time);
            Floor = BillFloor.Of(_bills);
        }
        Import = Floor?.ImportPerKwh ?? Prices(run.Conditions.ImportPricePerKwh);
        Export = Floor?.ExportPerKwh ?? Prices(run.Conditions.ExportPricePerKwh);
        Unserved = options.UnservedPricePerKwh ?? 0;
    }

    /// <summary>What no bill lies below, where whole bills are judged.</summary>
    internal BillFloor? Floor { get; }

    internal double[] Import { get; }

    internal double[] Export { get; }

    internal double Unserved { get; }

    /// <summary>The lowest cost per kWh at which a generator can give any: at full power, where starting and idling weigh least.</summary>
    internal double GeneratorPerKwh(int i) => _generator is null ? 0 : GeneratorCost(_generator.RatedKw * _hours[i], _hours[i]) / (_generator.RatedKw * _hours[i]);

    internal double Of(EnergyFlows run)
    {
        if (_bills is null) return Of(run, 0, _hours.Length);
        var (importKwh, exportKwh) = (new double[_hours.Length], new double[_hours.Length]);
        var sum = 0.0;
        for (var i = 0; i < _hours.Length; i++)
        {
            (importKwh[i], exportKwh[i]) = (run.ImportKwh(i), run.ExportKwh(i));
            sum += BesideGrid(run, i);
        }
        return sum + _bills.Bills(importKwh, exportKwh).Sum(bill => (double)bill.Total.Amount);
    }

    /// <summary>Of some intervals, by prices per kWh.</summary>
    internal double Of(EnergyFlows run, int from, int to)
    {
        var sum = 0.0;
        for (var i = from; i < to; i++) sum += (Import[i] * run.ImportKwh(i)) - (Export[i] * run.ExportKwh(i)) + BesideGrid(run, i);
        return sum;
    }

    /// <summary>Unserved kWh and the generator.</summary>
    private double BesideGrid(EnergyFlows run, int i) =>
        (Unserved * run[FlowPath.Unserved][i]) + (run.GeneratorKwh(i) is > 0 and var kwh ? GeneratorCost(kwh, _hours[i]) : 0);

    private static bool IsOn(IntervalGrid grid, Timeline time)
    {
        if (grid.Count != time.Count) return false;
        for (var i = 0; i < time.Count; i++)
            if (grid.StartOf(i) != time.StartOf(i)) return false;
        return grid.End == time.End;
    }

    private double GeneratorCost(double kwh, double hours) =>
        (_generator!.LitresFor(kwh, hours) * _generator.FuelPricePerLitre) + (_generator.MaintenancePerHour * hours);

    private double[] Prices(ReadOnlyMemory<double> prices) => prices.IsEmpty ? new double[_hours.Length] : prices.ToArray();
}
