using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers;

/// <content>One interval: its variables, the balances of both buses and of the battery, and what excludes each other.</content>
internal sealed partial class DispatchProgram
{
    private void AddInterval(int i, Variable stored, Variable after)
    {
        var (limits, costs, converter) = (_limits, _limits.Costs, _limits.Converter);
        var mostExport = MostExportKwh(i);
        var import = Costing(limits.MostImportKwh(i), costs.Import[i]);
        var export = Costing(mostExport, -costs.Export[i]);
        var generator = Costing(limits.MostGeneratorKwh(i), costs.GeneratorPerKwh(i));
        var unserved = Costing(limits.MostUnservedKwh(i) + Slack(0), costs.Unserved);
        var standby = Between(limits.LeastStandbyKwh(i), limits.StandbyKwh(i));
        var acArrays = Costing(limits.Supply.AcKwh[i], 0);
        var dcArrays = Costing(limits.Supply.DcKwh[i], 0);
        var toAc = Costing(MostGivenKwh(i), 0);
        var toDc = Costing(MostDrawnKwh(i), 0);
        var charge = Costing(limits.MostChargeKwh(i), 0);
        var discharge = Costing(limits.MostDischargeKwh(i), 0);

        var useKwh = Clean(limits.UseKwh(i));
        var board = Sum(useKwh, useKwh, [(acArrays, 1), (toAc, 1), (import, 1), (generator, 1), (unserved, 1), (standby, -1), (toDc, -1), (export, -1)]);
        var waitingKwh = 0.0;
        foreach (var run in _waiting.GetValueOrDefault(i) ?? [])
        {
            board.SetCoefficient(run, -1);
            waitingKwh += run.Ub();
        }
        Sum(0, 0, [(dcArrays, 1), (discharge, 1), (toDc, converter.ToDc), (charge, -1), (toAc, -1 / converter.ToAc)]);
        Sum(0, 0, [(after, 1), (stored, -limits.Battery.LeftAfter(limits.Hours(i))), (charge, -limits.Battery.ChargeEfficiency), (discharge, 1 / limits.Battery.DischargeEfficiency)]);
        // Neither import nor a generator is ever sent on.
        Sum(double.NegativeInfinity, 0, [(export, 1), (acArrays, -1), (toAc, -1)]);
        import.SetUb(Math.Min(import.Ub(), Clean(limits.UseKwh(i) + limits.StandbyKwh(i) + waitingKwh + MostDrawnKwh(i) + Slack(1))));
        // Curtailment is free, so going both ways at once pays only where import is paid for or export pays more than import costs.
        if (costs.Import[i] >= Math.Max(0, costs.Export[i])) return;
        Exclude(charge, discharge);
        Exclude(toAc, toDc);
        Exclude(import, export);
    }

    /// <summary>Export comes from arrays and battery, and only after the home's own use, of which a generator may take its part: more is never sent.</summary>
    private double MostExportKwh(int i)
    {
        var leftKwh = _limits.Supply.AcKwh[i] + MostGivenKwh(i) + _limits.MostGeneratorKwh(i) - _limits.UseKwh(i) - _limits.LeastStandbyKwh(i) + _limits.MostUnservedKwh(i);
        return Math.Max(0, Math.Min(_limits.MostExportKwh(i), leftKwh + Slack(leftKwh)));
    }

    /// <summary>The most that arrays and battery behind the converter give to the board.</summary>
    private double MostGivenKwh(int i) => Math.Min(_limits.MostToAcKwh(i), (_limits.Supply.DcKwh[i] + _limits.MostDischargeKwh(i)) * _limits.Converter.ToAc);

    /// <summary>The most that the battery's charging draws from the board.</summary>
    private double MostDrawnKwh(int i) => Math.Min(_limits.MostToDcKwh(i), _limits.MostChargeKwh(i) / _limits.Converter.ToDc);

    private Variable Costing(double mostKwh, double pricePerKwh)
    {
        var variable = Between(0, mostKwh);
        if (pricePerKwh != 0) _solver.Objective().SetCoefficient(variable, pricePerKwh);
        return variable;
    }

    private Constraint Sum(double low, double high, ReadOnlySpan<(Variable Variable, double Factor)> terms)
    {
        var sum = _solver.MakeConstraint(low, high);
        foreach (var (variable, factor) in terms) sum.SetCoefficient(variable, factor);
        return sum;
    }

    /// <summary>Of two ways that exclude each other, the shares of what is possible add up to one at most: all that a linear program can say.</summary>
    private void Exclude(Variable one, Variable other)
    {
        // Next to nothing is left out: it would only strain the solver.
        if (Math.Min(one.Ub(), other.Ub()) > 1e-3)
            Sum(double.NegativeInfinity, 1, [(one, 1 / one.Ub()), (other, 1 / other.Ub())]);
    }
}
