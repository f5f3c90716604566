using System.Numerics;
using System.Runtime.CompilerServices;

namespace SolarEconomics;

/// <summary>One array from light to the inverter's DC side. Here: its constants and the vector lanes; the step-by-step twin stands beside.</summary>
internal sealed partial class DcStage
{
    /// <summary>Light below which a logarithm says nothing about a module: it is held there.</summary>
    private const double FaintWm2 = 1.0;

    private readonly GenerationModel _model;
    private readonly SunDirection _normal;
    private readonly double _ratedKw;
    private readonly double _skyShare;
    private readonly double _groundShare;
    private readonly double _skyGlass;
    private readonly double _groundGlass;
    private readonly double _clean;
    private readonly double _lowLightPerLog;
    private readonly double _age;
    private readonly double _ageAndMismatch;
    private readonly Horizon _horizon;
    private readonly Rows? _rows;
    private readonly double _directed;
    private readonly double _wiringLossAtRated;
    private readonly bool _keepsOwn;
    private readonly double[] _cellC;

    internal DcStage(ModuleArray array, GenerationModel model)
    {
        Array = array;
        _model = model;
        _normal = array.Plane.Normal;
        _ratedKw = array.RatedKwp;
        // What stands around a face of its own comes before what stands around the place; shade found in the record holds both.
        _horizon = model.Shade is not null ? Horizon.Free : array.Face.Horizon.SeesAll ? model.Horizon : array.Face.Horizon;
        _rows = model.Shade is not null ? null : array.Face.Rows ?? model.Rows;
        _skyShare = _horizon.SeesAll ? array.Plane.SkyShare : _horizon.SkyShare(array.Plane);
        _groundShare = array.Plane.GroundShare;
        _skyGlass = IncidenceAngle.Sky(array.Plane);
        _groundGlass = IncidenceAngle.Ground(array.Plane);
        _clean = 1 - model.SoilingLoss;
        _lowLightPerLog = array.Module.LossAt200Wm2 / Math.Log(5);
        _age = model.AgeFactor * array.AgeFactor;
        _ageAndMismatch = _age * (1 - model.MismatchLoss);
        _directed = model.Sky == SkyModel.Isotropic ? 0 : 1;
        _wiringLossAtRated = array.Cable?.LossAtRated(array) ?? model.WiringLossAtRated;
        _keepsOwn = model.ReckonsInputs;
        OwnW = _keepsOwn ? new double[StepBlock.Size] : [];
        _cellC = _keepsOwn ? new double[StepBlock.Size] : [];
    }

    internal ModuleArray Array { get; }

    /// <summary>What this array gives at its own best point, step by step; kept where an input may hold some of it back.</summary>
    internal double[] OwnW { get; }

    /// <summary>Operating voltage of its strings. Unit: V.</summary>
    internal double VoltageAt(int step) =>
        Array.InSeries * Array.Module.VmpV!.Value * Math.Max(0.5, 1 + ((Array.Module.VmpPerK ?? Array.Module.PowerPerK) * (_cellC[step] - 25)));

    /// <summary>Whether the lanes know this array's sky and shade.</summary>
    internal bool FitsLanes => _model.Sky is SkyModel.Isotropic or SkyModel.HayDavies && _horizon.SeesAll && _rows is null && _model.Shade is null;

    // Optimised from the first call: a year would be over before the runtime noticed that this loop is hot.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void InLanes(StepBlock block, StageSums sums)
    {
        var (nominal, reflected, dim, hot, wired) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
        var (zero, one) = (Vector<double>.Zero, Vector<double>.One);
        var rated = new Vector<double>(_ratedKw);
        for (var i = 0; i < StepBlock.Size; i += Vector<double>.Count)
        {
            var up = new Vector<double>(block.Up, i);
            var global = new Vector<double>(block.GlobalWm2, i);
            var above = new Vector<double>(block.ExtraterrestrialWm2, i);
            var (beam, diffuse) = block.IsSplit
                ? (new Vector<double>(block.BeamWm2, i), new Vector<double>(block.DiffuseWm2, i))
                : Split(global, up, above);
            var facing = Vector.Max(zero, (new Vector<double>(block.East, i) * _normal.East) + (new Vector<double>(block.North, i) * _normal.North) + (up * _normal.Up));

            // Onto the plane.
            beam = Vector.ConditionalSelect(Vector.GreaterThan(up, zero), beam, zero);
            var directed = Vector.Min(one, beam / above) * _directed;
            var direct = (beam * facing) + (diffuse * directed * facing / Vector.Max(up, new Vector<double>(Transposition.LowestCosZenith)));
            var dome = diffuse * (one - directed) * _skyShare;
            var ground = global * (_model.GroundReflection * _groundShare);
            var light = direct + dome + ground;
            (new Vector<double>(block.PlaneKw, i) + (light * rated)).CopyTo(block.PlaneKw, i);

            // Through the glass, then dirt and faint light.
            var inside = (direct * Glass(facing)) + (dome * _skyGlass) + (ground * _groundGlass);
            var clean = inside * _clean;
            var faint = Vector.Max(zero, one + (Vector.Log(Vector.Max(clean, new Vector<double>(FaintWm2)) * 0.001) * _lowLightPerLog));
            var atLowLight = clean * faint * rated;

            // Heat, age, mismatch, cables.
            var cell = new Vector<double>(block.AirC, i)
                + (light / (new Vector<double>(Array.Mounting.U0) + (new Vector<double>(block.WindMs, i) * Array.Mounting.U1)));
            var atHeat = atLowLight * Vector.Max(zero, one + ((cell - new Vector<double>(25.0)) * Array.Module.PowerPerK));
            var matched = atHeat * _ageAndMismatch;
            var atInverter = Vector.Max(zero, matched - (matched * matched * (_wiringLossAtRated / (_ratedKw * 1000))));
            (new Vector<double>(block.DcW, i) + atInverter).CopyTo(block.DcW, i);
            if (_keepsOwn)
            {
                atInverter.CopyTo(OwnW, i);
                cell.CopyTo(_cellC, i);
            }

            nominal += light;
            reflected += inside;
            dim += atLowLight;
            hot += atHeat;
            wired += atInverter;
        }
        sums.Nominal += Vector.Sum(nominal) * _ratedKw;
        sums.AfterShade += Vector.Sum(nominal) * _ratedKw;
        sums.AfterSeasonalShade += Vector.Sum(nominal) * _ratedKw;
        sums.AfterReflection += Vector.Sum(reflected) * _ratedKw;
        sums.AfterLowLight += Vector.Sum(dim);
        sums.AfterHeat += Vector.Sum(hot);
        sums.AfterAge += Vector.Sum(hot) * _age;
        sums.AfterWiring += Vector.Sum(wired);
        block.RatedKw += _ratedKw;
    }

    /// <summary>As <see cref="Decomposition.Split"/>, all branches worked out and the right one picked.</summary>
    private static (Vector<double> Beam, Vector<double> Diffuse) Split(Vector<double> global, Vector<double> up, Vector<double> above)
    {
        var one = Vector<double>.One;
        var high = Vector.GreaterThanOrEqual(up, new Vector<double>(Decomposition.LowestCosZenith));
        var safeUp = Vector.ConditionalSelect(high, up, one);
        var k = Vector.Min(one, global / (above * safeUp));
        var cloudy = one - (k * 0.09);
        var between = ((((((k * 12.336) - new Vector<double>(16.638)) * k) + new Vector<double>(4.388)) * k - new Vector<double>(0.1604)) * k) + new Vector<double>(0.9511);
        var share = Vector.ConditionalSelect(Vector.LessThanOrEqual(k, new Vector<double>(0.22)), cloudy,
            Vector.ConditionalSelect(Vector.LessThanOrEqual(k, new Vector<double>(0.80)), between, new Vector<double>(0.165)));
        var diffuse = Vector.ConditionalSelect(high, global * share, global);
        return ((global - diffuse) / safeUp, diffuse);
    }

    /// <summary>As <see cref="IncidenceAngle.Glass"/>.</summary>
    private static Vector<double> Glass(Vector<double> facing)
    {
        var one = Vector<double>.One;
        var c = Vector.Min(one, facing);
        var inside = Vector.SquareRoot(one - ((one - (c * c)) * (1 / (IncidenceAngle.GlassIndex * IncidenceAngle.GlassIndex))));
        var across = (c - (inside * IncidenceAngle.GlassIndex)) / (c + (inside * IncidenceAngle.GlassIndex));
        var along = ((c * IncidenceAngle.GlassIndex) - inside) / ((c * IncidenceAngle.GlassIndex) + inside);
        var through = Vector.Exp(new Vector<double>(-IncidenceAngle.AbsorptionPerM * IncidenceAngle.GlassThicknessM) / inside)
            * (one - (((across * across) + (along * along)) * 0.5));
        return through * (1 / IncidenceAngle.SquareOn);
    }
}
