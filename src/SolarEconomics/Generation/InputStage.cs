namespace SolarEconomics;

/// <summary>One input of the inverter or controller: what its voltage window, its current and the sharing of one voltage let through.</summary>
/// <remarks>Equation: P = max over V from the lowest to the highest tracking voltage of V · min(highest current, Σ Iₖ(V)), not above the input's power; Iₖ(V) = Pₖ/Vₖ · yₖ(V/Vₖ),
/// Pₖ what array k would give alone at its best point, Vₖ = n Vmp (1 + β (cell − 25)), y the module's curve. The faint light of morning, which lowers Vₖ by some per cent, is left out. Source: gen-12.</remarks>
internal sealed class InputStage
{
    private const double SameVoltage = 1e-9;
    private readonly int _input;
    private readonly DcStage[] _arrays;
    private readonly StringCurve[] _curves;
    private readonly double _fromV;
    private readonly double _toV;
    private readonly double _mostA;
    private readonly double _mostW;
    private double _offered;
    private double _taken;

    private InputStage(int input, DcStage[] arrays, InputLimits limits)
    {
        (_input, _arrays) = (input, arrays);
        _curves = [.. arrays.Select(a => StringCurve.Of(a.Array.Module))];
        KnowsVoltage = arrays.All(a => a.Array.Module.VmpV is not null);
        (_fromV, _toV, _mostA) = KnowsVoltage ? (limits.TrackingFromV ?? 0, limits.TrackingToV ?? double.MaxValue, limits.HighestInputA ?? double.MaxValue) : (0, double.MaxValue, double.MaxValue);
        _mostW = limits.HighestInputW ?? double.MaxValue;
    }

    /// <summary>Whether the operating voltage of every array here is known; if not, only the input's power holds.</summary>
    private bool KnowsVoltage { get; }

    /// <summary>The inputs of a model; none where nothing holds anything back at any of them.</summary>
    internal static IReadOnlyList<InputStage> Of(GenerationModel model, IReadOnlyList<DcStage> arrays)
    {
        if (!model.ReckonsInputs) return [];
        var inputs = model.InputOfEachArray();
        return [.. Enumerable.Range(0, arrays.Count).GroupBy(i => inputs[i]).OrderBy(g => g.Key)
            .Select(g => new InputStage(g.Key, [.. g.Select(i => arrays[i])], model.LimitsOf(g.Key)))];
    }

    /// <summary>What each input took of what its arrays offered.</summary>
    internal InputOutput Result(double toKwh) => new(_input, [.. _arrays.Select(a => a.Array.Name)], _offered * toKwh, _taken * toKwh, KnowsVoltage);

    /// <summary>Puts what all inputs let through in place of what the arrays would give.</summary>
    internal static void Run(IReadOnlyList<InputStage> inputs, StepBlock block, int steps)
    {
        Array.Clear(block.DcW);
        foreach (var input in inputs)
            for (var i = 0; i < steps; i++) block.DcW[i] += input.Take(i);
    }

    private double Take(int step)
    {
        var (offered, amps, lowV, highV) = (0.0, 0.0, double.MaxValue, 0.0);
        foreach (var array in _arrays)
        {
            var w = array.OwnW[step];
            if (!(w > 0)) continue;
            offered += w;
            if (!KnowsVoltage) continue;
            var v = array.VoltageAt(step);
            amps += w / v;
            (lowV, highV) = (Math.Min(lowV, v), Math.Max(highV, v));
        }
        if (!(offered > 0)) return 0;
        var isFree = !KnowsVoltage || (highV - lowV <= SameVoltage * highV && lowV >= _fromV && highV <= _toV && amps <= _mostA);
        var taken = Math.Min(_mostW, isFree ? offered : Bounded(step));
        _offered += offered;
        _taken += taken;
        return taken;
    }

    private double Bounded(int step)
    {
        var (count, openV) = (_arrays.Length, 0.0);
        var (v, w) = (new double[count], new double[count]);
        for (var k = 0; k < count; k++)
        {
            (v[k], w[k]) = (_arrays[k].VoltageAt(step), Math.Max(0, _arrays[k].OwnW[step]));
            openV = Math.Max(openV, v[k] * _curves[k].Open);
        }
        var (low, high) = (_fromV, Math.Min(_toV, openV));
        if (!(low < high)) return 0;
        double PowerAt(double volt)
        {
            var amps = 0.0;
            for (var k = 0; k < count; k++) amps += w[k] / v[k] * _curves[k].At(volt / v[k]);
            return volt * Math.Min(_mostA, amps);
        }
        return Math.Max(PowerAt(Highest.Of(PowerAt, low, high)), Math.Max(PowerAt(low), PowerAt(high)));
    }
}
