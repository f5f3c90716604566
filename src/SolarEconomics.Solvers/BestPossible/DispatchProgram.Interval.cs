using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers;

/// <content>One interval: its variables, the balances of both buses and of the battery, and what excludes each other.</content>
internal sealed partial class DispatchProgram
{
    private void AddInterval(int i, Variable stored, Variable after)
    {
        var (limits, costs) = (_limits, _limits.Costs);
        // Without a price below 0 for sending, and with no limit on it, everything the arrays make finds a taker: nothing of it is left to decide.
        var isAllTaken = costs.Export[i] >= 0 && double.IsPositiveInfinity(limits.MostExportKwh(i));
        var arraysKwh = Clean(limits.Supply.AcKwh[i]);
        var import = Costing(limits.MostImportKwh(i), costs.Import[i]);
        var export = Costing(MostExportKwh(i), -costs.Export[i]);
        var generator = Costing(limits.MostGeneratorKwh(i), costs.GeneratorPerKwh(i));
        var unserved = limits.MostUnservedKwh(i) == 0 && double.IsPositiveInfinity(limits.MostImportKwh(i)) ? null : Costing(limits.MostUnservedKwh(i) + Slack(0), costs.Unserved);
        var standby = limits.LeastStandbyKwh(i) == limits.StandbyKwh(i) ? null : Costing(limits.StandbyKwh(i), 0);
        var arrays = isAllTaken ? null : Costing(arraysKwh, 0);
        (_import[i - _from], _export[i - _from]) = (import, export);

        var needKwh = Clean(limits.UseKwh(i)) + (standby is null ? Clean(limits.StandbyKwh(i)) : 0) - (isAllTaken ? arraysKwh : 0);
        if (Math.Abs(needKwh) < DustKwh) needKwh = 0;
        var board = Sum(needKwh, needKwh, [(arrays, 1), (import, 1), (generator, 1), (unserved, 1), (standby, -1), (export, -1)]);
        var waitingKwh = 0.0;
        foreach (var run in _waiting.GetValueOrDefault(i) ?? [])
        {
            board.SetCoefficient(run, -1);
            waitingKwh += run.Ub();
        }
        var fromArrays = AddStorage(i, stored, after, board);
        import?.SetUb(Math.Min(import.Ub(), Clean(limits.UseKwh(i) + limits.StandbyKwh(i) + waitingKwh + MostDrawnKwh(i) + Slack(1))));
        // Going both ways at once pays only where import is paid for or export pays more than import costs.
        var pays = costs.Import[i] < Math.Max(0, costs.Export[i]);
        // Neither import nor a generator is ever sent on.
        if (export is not null && (pays || generator is not null))
            Sum(double.NegativeInfinity, isAllTaken ? arraysKwh : 0, [(export, 1), (arrays, -1), .. fromArrays]);
        if (pays && import is not null && export is not null) Exclude(import, export);
    }

    /// <summary>The battery behind its converter, with the arrays on its bus. Returns what the converter gives to the board, to be taken off there.</summary>
    private (Variable?, double)[] AddStorage(int i, Variable stored, Variable after, Constraint board)
    {
        var (limits, converter) = (_limits, _limits.Converter);
        var dcKwh = limits.Supply.DcKwh[i];
        var hasDc = Clean(dcKwh) > 0;
        // Without arrays on the bus all that is charged comes through the converter and all that is given goes through it.
        var charge = Costing(hasDc ? limits.MostChargeKwh(i) : Math.Min(limits.MostChargeKwh(i), limits.MostToDcKwh(i) * converter.ToDc), 0);
        var discharge = Costing(hasDc ? limits.MostDischargeKwh(i) : Math.Min(limits.MostDischargeKwh(i), limits.MostToAcKwh(i) / converter.ToAc), 0);
        Sum(0, 0, [(after, 1), (stored, -limits.Battery.LeftAfter(limits.Hours(i))), (charge, -limits.Battery.ChargeEfficiency), (discharge, 1 / limits.Battery.DischargeEfficiency)]);
        var equalise = Costing(limits.MostEqualiseKwh(i), 0);
        var pays = limits.Costs.Import[i] < Math.Max(0, limits.Costs.Export[i]);
        if (pays) Exclude(charge, discharge);
        if (!hasDc)
        {
            if (charge is not null) board.SetCoefficient(charge, -1 / converter.ToDc);
            if (discharge is not null) board.SetCoefficient(discharge, converter.ToAc);
            if (equalise is not null) board.SetCoefficient(equalise, -1 / converter.ToDc);
            return [(discharge, -converter.ToAc)];
        }
        var (toAc, toDc, arrays) = (Costing(MostGivenKwh(i), 0), Costing(MostDrawnKwh(i), 0), Costing(dcKwh, 0));
        if (toAc is not null) board.SetCoefficient(toAc, 1);
        if (toDc is not null) board.SetCoefficient(toDc, -1);
        Sum(0, 0, [(arrays, 1), (discharge, 1), (toDc, converter.ToDc), (charge, -1), (equalise, -1), (toAc, -1 / converter.ToAc)]);
        if (pays) Exclude(toAc, toDc);
        return [(toAc, -1)];
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
    private double MostDrawnKwh(int i) => Math.Min(_limits.MostToDcKwh(i), (_limits.MostChargeKwh(i) + _limits.MostEqualiseKwh(i)) / _limits.Converter.ToDc);

    /// <summary>A variable from 0 to a most, at a price; none where there can be nothing.</summary>
    private Variable? Costing(double mostKwh, double pricePerKwh)
    {
        if (Clean(mostKwh) == 0) return null;
        var variable = Between(0, mostKwh);
        if (Favourable(pricePerKwh) is var price and not 0) _solver.Objective().SetCoefficient(variable, price);
        return variable;
    }

    private Constraint Sum(double low, double high, ReadOnlySpan<(Variable? Variable, double Factor)> terms)
    {
        var sum = _solver.MakeConstraint(low, high);
        foreach (var (variable, factor) in terms)
            if (variable is not null) sum.SetCoefficient(variable, factor);
        return sum;
    }

    /// <summary>Of two ways that exclude each other, the shares of what is possible add up to one at most: all that a linear program can say.</summary>
    private void Exclude(Variable? one, Variable? other)
    {
        // Next to nothing is left out: it would only strain the solver.
        if (one is not null && other is not null && Math.Min(one.Ub(), other.Ub()) > 1e-3)
            Sum(double.NegativeInfinity, 1, [(one, 1 / one.Ub()), (other, 1 / other.Ub())]);
    }
}
