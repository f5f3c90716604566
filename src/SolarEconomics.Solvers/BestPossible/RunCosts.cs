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
        var (importKwh, exportKwh) = (new double[_hours.Length], new double[_hours.Length]);
        var (sum, energy) = (0.0, 0.0);
        for (var i = 0; i < _hours.Length; i++)
        {
            (importKwh[i], exportKwh[i]) = (run.ImportKwh(i), run.ExportKwh(i));
            energy += (Import[i] * importKwh[i]) - (Export[i] * exportKwh[i]);
            sum += Unserved * run[FlowPath.Unserved][i];
            if (run.GeneratorKwh(i) is > 0 and var kwh) sum += GeneratorCost(kwh, _hours[i]);
        }
        return sum + (_bills is null ? energy : _bills.Bills(importKwh, exportKwh).Sum(bill => (double)bill.Total.Amount));
    }

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
