namespace SolarEconomics;

/// <summary>The same array step by step, from the public formulas: the reference of the lanes, and the way of skies and shade that they do not know.</summary>
internal sealed partial class DcStage
{
    internal void StepByStep(StepBlock block, int steps, StageSums sums)
    {
        for (var i = 0; i < steps; i++)
        {
            var sun = new SunDirection(block.East[i], block.North[i], block.Up[i]);
            var above = block.ExtraterrestrialWm2[i];
            var irradiance = block.IsSplit
                ? new Irradiance(block.GlobalWm2[i], block.BeamWm2[i], block.DiffuseWm2[i])
                : Decomposition.Split(block.GlobalWm2[i], sun, above);
            var on = new Sky(sun, irradiance, above).On(Array.Plane, _model.Sky, _model.GroundReflection);
            var free = Shaded(on, sun);
            var lit = _model.Shade is null ? free : Dimmed(free, sun, above, block.Unshaded[i]);
            block.PlaneKw[i] += lit.TotalWm2 * _ratedKw;
            var glass = IncidenceAngle.Glass(sun.CosIncidence(Array.Plane));
            var inside = ((lit.BeamWm2 + lit.AroundSunWm2) * glass) + (lit.DomeWm2 * _skyGlass) + (lit.GroundWm2 * _groundGlass);
            var clean = inside * _clean;
            var faint = Math.Max(0, 1 + (Math.Log(Math.Max(clean, FaintWm2) / 1000) * _lowLightPerLog));
            var atLowLight = clean * faint * _ratedKw;
            // As CellTemperature.ByHeatShed, whose range is for what people type: a reading at the horizon may stand above it.
            var cell = block.AirC[i] + (lit.TotalWm2 / (Array.Mounting.U0 + (Array.Mounting.U1 * block.WindMs[i])));
            var atHeat = atLowLight * Math.Max(0, 1 + (Array.Module.PowerPerK * (cell - 25)));
            var matched = atHeat * _ageAndMismatch;
            var atInverter = Math.Max(0, matched - (matched * matched * _wiringLossAtRated / (_ratedKw * 1000)));
            block.DcW[i] += atInverter;
            if (_keepsOwn) (OwnW[i], _cellC[i]) = (atInverter, cell);

            sums.Nominal += on.TotalWm2 * _ratedKw;
            sums.AfterShade += free.TotalWm2 * _ratedKw;
            sums.AfterSeasonalShade += lit.TotalWm2 * _ratedKw;
            sums.AfterReflection += inside * _ratedKw;
            sums.AfterLowLight += atLowLight;
            sums.AfterHeat += atHeat;
            sums.AfterAge += atHeat * _age;
            sums.AfterWiring += atInverter;
        }
        block.RatedKw += _ratedKw;
    }

    /// <summary>Near and far shade: hills and rows take the beam and the sky around the sun; hills also take their part of the dome.</summary>
    private PlaneIrradiance Shaded(PlaneIrradiance on, SunDirection sun)
    {
        if (_horizon.SeesAll && _rows is null) return on;
        var lit = _horizon.Hides(sun) ? 0 : 1 - (_rows?.ShadedShare(sun) ?? 0);
        return on with
        {
            BeamWm2 = on.BeamWm2 * lit,
            AroundSunWm2 = on.AroundSunWm2 * lit,
            DomeWm2 = on.DomeWm2 * (_skyShare / Array.Plane.SkyShare),
        };
    }

    /// <summary>Seasonal shade takes of the direct light what leaves a clear sky the share found; only where that is not enough, of the rest too. So a dull hour, which casts no shadow, loses little.</summary>
    private PlaneIrradiance Dimmed(PlaneIrradiance on, SunDirection sun, double above, double share)
    {
        if (share >= 1 || !(sun.Up > 0)) return on;
        var clear = new Sky(sun, ClearSky.At(sun, above, ShadeEnvelope.LinkeTurbidity, 0), above).On(Array.Plane, _model.Sky, _model.GroundReflection);
        var (direct, rest) = (clear.BeamWm2 + clear.AroundSunWm2, clear.DomeWm2 + clear.GroundWm2);
        var wanted = share * (direct + rest);
        var beamLeft = direct > 0 ? Math.Clamp((wanted - rest) / direct, 0, 1) : 1;
        var restLeft = rest > 0 ? Math.Min(1, wanted / rest) : 1;
        return on with
        {
            BeamWm2 = on.BeamWm2 * beamLeft,
            AroundSunWm2 = on.AroundSunWm2 * beamLeft,
            DomeWm2 = on.DomeWm2 * restLeft,
            GroundWm2 = on.GroundWm2 * restLeft,
        };
    }
}
