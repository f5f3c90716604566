using System.Numerics;
using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>The controller, where there is one, and the inverter: what the input takes, what is converted, what is clipped.</summary>
internal sealed class AcStage
{
    private readonly EfficiencyCurve _curve;
    private readonly double _ratedW;
    private readonly double _inputLimitShare;
    private readonly double _controllerEfficiency;
    private readonly double _running;

    internal AcStage(GenerationModel model)
    {
        _curve = model.Inverter.Efficiency;
        _ratedW = model.Inverter.RatedAcW;
        var controllerW = model.Controller?.LimitW(model.BatteryV) ?? double.MaxValue;
        _inputLimitShare = Math.Min(model.Inverter.HighestInputW ?? double.MaxValue, controllerW) / _ratedW;
        _controllerEfficiency = model.Controller?.Efficiency ?? 1;
        _running = 1 - model.DownTime;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void InLanes(StepBlock block, StageSums sums)
    {
        var (zero, one) = (Vector<double>.Zero, Vector<double>.One);
        var (offered, taken, converted, given) = (zero, zero, zero, zero);
        var clippedSteps = Vector<long>.Zero;
        var b = new Vector<double>(1 + _curve.Linear);
        for (var i = 0; i < StepBlock.Size; i += Vector<double>.Count)
        {
            var behindController = new Vector<double>(block.DcW, i) * (_controllerEfficiency / _ratedW);
            var input = Vector.Min(behindController, new Vector<double>(_inputLimitShare));
            var net = Vector.Max(zero, input - new Vector<double>(_curve.Constant));
            var output = (net + net) / (b + Vector.SquareRoot((b * b) + (net * (4 * _curve.Square))));
            var limited = Vector.Min(output, one);
            (limited * (_ratedW * _running)).CopyTo(block.AcW, i);
            offered += behindController;
            taken += input;
            converted += output;
            given += limited;
            clippedSteps -= Vector.GreaterThan(output, one);
        }
        Add(sums, Vector.Sum(offered), Vector.Sum(taken), Vector.Sum(converted), Vector.Sum(given), Vector.Sum(clippedSteps));
    }

    internal void StepByStep(StepBlock block, int steps, StageSums sums)
    {
        var (offered, taken, converted, given, clipped) = (0.0, 0.0, 0.0, 0.0, 0L);
        for (var i = 0; i < steps; i++)
        {
            var behindController = block.DcW[i] * _controllerEfficiency / _ratedW;
            var input = Math.Min(behindController, _inputLimitShare);
            var output = _curve.Output(input);
            var limited = Math.Min(output, 1);
            block.AcW[i] = limited * _ratedW * _running;
            offered += behindController;
            taken += input;
            converted += output;
            given += limited;
            if (output > 1) clipped++;
        }
        Add(sums, offered, taken, converted, given, clipped);
    }

    /// <summary>What would be given without the AC limit. Unit: W.</summary>
    internal double Unclipped(double dcW) => _curve.Output(Math.Min(dcW * _controllerEfficiency / _ratedW, _inputLimitShare)) * _ratedW * _running;

    private void Add(StageSums sums, double offered, double taken, double converted, double given, long clippedSteps)
    {
        sums.AfterController += offered * _ratedW;
        sums.AfterInputLimit += taken * _ratedW;
        sums.AfterConversion += converted * _ratedW;
        sums.AfterClipping += given * _ratedW;
        sums.ClippedSteps += clippedSteps;
    }
}
