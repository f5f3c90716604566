namespace SolarEconomics.Solvers;

/// <summary>Prices per kWh of a run, and what a run cost at them.</summary>
internal sealed class RunCosts
{
    private readonly double[] _hours;
    private readonly Generator? _generator;

    internal RunCosts(EnergyFlows run, BestPossibleOptions options)
    {
        _hours = run.Time.Hours.ToArray();
        _generator = run.System.Generator;
        Import = Prices(run.Conditions.ImportPricePerKwh);
        Export = Prices(run.Conditions.ExportPricePerKwh);
        Unserved = options.UnservedPricePerKwh ?? 0;
    }

    internal double[] Import { get; }

    internal double[] Export { get; }

    internal double Unserved { get; }

    /// <summary>The lowest cost per kWh at which a generator can give any: at full power, where starting and idling weigh least.</summary>
    internal double GeneratorPerKwh(int i) => _generator is null ? 0 : GeneratorCost(_generator.RatedKw * _hours[i], _hours[i]) / (_generator.RatedKw * _hours[i]);

    internal double Of(EnergyFlows run)
    {
        var sum = 0.0;
        for (var i = 0; i < _hours.Length; i++)
        {
            sum += (Import[i] * run.ImportKwh(i)) - (Export[i] * run.ExportKwh(i)) + (Unserved * run[FlowPath.Unserved][i]);
            if (run.GeneratorKwh(i) is > 0 and var kwh) sum += GeneratorCost(kwh, _hours[i]);
        }
        return sum;
    }

    private double GeneratorCost(double kwh, double hours) =>
        (_generator!.LitresFor(kwh, hours) * _generator.FuelPricePerLitre) + (_generator.MaintenancePerHour * hours);

    private double[] Prices(ReadOnlyMemory<double> prices) => prices.IsEmpty ? new double[_hours.Length] : prices.ToArray();
}
