using Google.OrTools.LinearSolver;

namespace SolarEconomics.Solvers;

/// <content>Blocks and demand: one variable for what lies beyond an edge, one for each demand that is charged.</content>
internal sealed partial class DispatchProgram
{
    private readonly Dictionary<BillPeak, Variable> _demands = new(ReferenceEqualityComparer.Instance);

    private void AddBills(BillFloor floor)
    {
        foreach (var excess in floor.Excesses)
            if (IsHere(excess.Intervals[0])) AddExcess(excess);
        foreach (var peak in floor.Peaks)
            if (peak.Averages.Count > 0 ? IsHere(peak.Averages[0].First) : _from == 0) AddPeak(peak);
    }

    private bool IsHere(int interval) => interval >= _from && interval < _to;

    /// <summary>What an edge of the program cuts off is left out, which only lowers the cost.</summary>
    private void AddExcess(BillExcess excess)
    {
        var beyond = Priced(0, excess.PerKwh);
        var sum = _solver.MakeConstraint(double.NegativeInfinity, excess.BeyondKwh);
        sum.SetCoefficient(beyond, -1);
        var metered = excess.Side == EnergySide.Import ? _import : _export;
        for (var k = 0; k < excess.Intervals.Count; k++)
            if (IsHere(excess.Intervals[k]) && metered[excess.Intervals[k] - _from] is { } kwh) sum.SetCoefficient(kwh, excess.Factors[k]);
    }

    private void AddPeak(BillPeak peak)
    {
        var demand = _demands[peak] = Priced(0, 0);
        foreach (var (first, count, hours) in peak.Averages)
        {
            if (!IsHere(first) || !IsHere(first + count - 1)) continue;
            var average = _solver.MakeConstraint(double.NegativeInfinity, 0);
            average.SetCoefficient(demand, -1);
            for (var i = first; i < first + count; i++)
                if (_import[i - _from] is { } import) average.SetCoefficient(import, 1 / hours);
        }
        var charged = Priced(peak.LeastKw, peak.PerKw);
        Sum(double.NegativeInfinity, 0, [(demand, 1), (charged, -1)]);
        foreach (var earlier in peak.Earlier)
            if (_demands.TryGetValue(earlier, out var remembered)) Sum(double.NegativeInfinity, 0, [(remembered, peak.EarlierShare), (charged, -1)]);
        foreach (var (above, perKw) in peak.Steps) Sum(double.NegativeInfinity, above, [(charged, 1), (Priced(0, perKw), -1)]);
    }

    private Variable Priced(double low, double price)
    {
        var variable = _solver.MakeNumVar(low, double.PositiveInfinity, "");
        if (Favourable(price) is var favourable and not 0) _solver.Objective().SetCoefficient(variable, favourable);
        return variable;
    }
}
