namespace SolarEconomics;

/// <summary>Lays the flows of one interval where they are worth most at given prices: a greedy choice that is exact.</summary>
/// <remarks>The conditions of an interval are cuts of a network, so its flows form a polymatroid. All sources begin at their highest and all sinks at their lowest,
/// which meets every condition if anything does; then, dearest first, sinks worth having rise and sources that cost fall as far as the conditions let them.</remarks>
internal sealed class IntervalLaying
{
    private const int Export = 0;
    private const int Charge = 1;
    private const int Discharge = 2;
    private const int Import = 3;
    private const int FirstPart = 4;

    private readonly double[] _low;
    private readonly double[] _high;
    private readonly double[] _worth;
    private readonly double[] _laid;
    private readonly int[] _order;

    /// <param name="places">Places that generate; each has two parts, as its worth per kWh at the board may fall once.</param>
    internal IntervalLaying(int places)
    {
        var count = FirstPart + (2 * places);
        (_low, _high, _worth, _laid, _order) = (new double[count], new double[count], new double[count], new double[count], new int[count]);
    }

    internal double ExportKwh => _laid[Export];

    internal double ChargeKwh => _laid[Charge];

    internal double DischargeKwh => _laid[Discharge];

    internal double ImportKwh => _laid[Import];

    /// <summary>What one part of a place gives at the board.</summary>
    internal double PartKwh(int place, int part) => _laid[FirstPart + (2 * place) + part];

    internal void SetExport(double low, double high, double worth) => Set(Export, low, high, worth);

    internal void SetCharge(double low, double high, double worth) => Set(Charge, low, high, worth);

    internal void SetDischarge(double low, double high, double worth) => Set(Discharge, low, high, worth);

    internal void SetImport(double low, double high, double worth) => Set(Import, low, high, worth);

    internal void SetPart(int place, int part, double low, double high, double worth) => Set(FirstPart + (2 * place) + part, low, high, worth);

    /// <summary>Lays all flows. What the plant itself takes must be met as far as the sources can.</summary>
    internal void Lay(double standbyKwh)
    {
        var waiting = 0;
        var generation = 0.0;
        for (var k = 0; k < _low.Length; k++)
        {
            var isSink = k <= Charge;
            _laid[k] = isSink ? _low[k] : _high[k];
            if (k >= FirstPart) generation += _laid[k];
            var gain = isSink ? _worth[k] : -_worth[k];
            if (gain <= 0 || _high[k] <= _low[k]) continue;
            var at = waiting++;
            // Of equals the later first: a place's second part must not stay where its first has gone.
            for (; at > 0 && Math.Abs(_worth[_order[at - 1]]) <= gain; at--) _order[at] = _order[at - 1];
            _order[at] = k;
        }
        var forExport = generation + _laid[Discharge] - _laid[Export];
        var forCharge = generation + _laid[Import] - _laid[Charge];
        var forAll = Math.Max(0, generation + _laid[Import] + _laid[Discharge] - _laid[Export] - _laid[Charge] - standbyKwh);
        for (var n = 0; n < waiting; n++)
        {
            var k = _order[n];
            var step = Math.Min(_high[k] - _low[k], forAll);
            if (k is not (Charge or Import)) step = Math.Min(step, forExport);
            if (k is not (Export or Discharge)) step = Math.Min(step, forCharge);
            if (step <= 0) continue;
            _laid[k] += k <= Charge ? step : -step;
            forAll -= step;
            if (k is not (Charge or Import)) forExport -= step;
            if (k is not (Export or Discharge)) forCharge -= step;
        }
    }

    private void Set(int k, double low, double high, double worth) => (_low[k], _high[k], _worth[k]) = (low, high, worth);
}
