namespace AlderWeir;

/// <summary>The board where arrays, battery, loads and grid meet: works the plant out in steps of five minutes.</summary>
/// <remarks>Steps this short make import and export run in the same half hour, as they do at a real meter.
/// Energies are whole grains, so every balance closes exactly.</remarks>
internal static class Board
{
    /// <summary>The grid operator's limit of 5.5 kW to the grid.</summary>
    private const long ExportLimitGrains = 5_500_000;

    internal static TrueFlows Run(Clock clock, Draw draw)
    {
        var weather = new Weather(clock, draw);
        var load = new Load(draw);
        var battery = new Battery();
        var truth = new TrueFlows(clock.Start, clock.Count);
        var potentialGrains = new long[Arrays.All.Length];
        for (var step = 0; step < clock.Steps; step++)
        {
            var half = step / Clock.StepsPerHalfHour;
            var local = clock.LocalStartOf(half);
            var day = local.Date;
            battery.Present = day >= Timeline.BatteryOn;
            var sun = Sun.At(clock.StartOf(half) + NodaTime.Duration.FromMinutes((5 * (step % Clock.StepsPerHalfHour)) + 2.5));
            for (var a = 0; a < potentialGrains.Length; a++)
            {
                potentialGrains[a] = Grain.Of(Arrays.All[a].PotentialW(step, day, sun, weather));
                truth.Failed[a][half] += Arrays.All[a].FailedW(step, day, sun, weather) / 12_000;
            }
            Step(truth, half, potentialGrains, Grain.Of(load.WantedW(step, local)), Grain.Of(Standby.W(day)), battery);
        }
        return truth;
    }

    /// <summary>The sun serves the wanted load first, then standby, then the battery, then the grid; the battery serves in the same order.</summary>
    private static void Step(TrueFlows truth, int half, long[] potentialGrains, long wanted, long standby, Battery battery)
    {
        var potential = potentialGrains.Sum();
        var direct = Math.Min(potential, wanted);
        var toStandby = Math.Min(potential - direct, standby);
        var stockBefore = battery.StockGrains;
        var stored = battery.Charge(potential - direct - toStandby);
        var left = potential - direct - toStandby - stored;
        var exported = Math.Min(left, ExportLimitGrains);
        var curtailed = left - exported;
        var delivered = battery.Discharge(wanted - direct + standby - toStandby);
        var fromStorage = Math.Min(delivered, wanted - direct);
        var imported = wanted + standby - direct - toStandby - delivered;

        Throttle(truth, half, potentialGrains, potential, curtailed);
        truth.Wanted[half] += wanted * Grain.Kwh;
        truth.Standby[half] += standby * Grain.Kwh;
        truth.UsedDirectly[half] += direct * Grain.Kwh;
        truth.GenerationToStandby[half] += toStandby * Grain.Kwh;
        truth.Stored[half] += stored * Grain.Kwh;
        truth.Delivered[half] += delivered * Grain.Kwh;
        truth.UsedFromStorage[half] += fromStorage * Grain.Kwh;
        truth.Imported[half] += imported * Grain.Kwh;
        truth.Exported[half] += exported * Grain.Kwh;
        truth.BatteryLoss[half] += (stored - delivered - (battery.StockGrains - stockBefore)) * Grain.Kwh;
        truth.Stock[half] = battery.StockGrains * Grain.Kwh;
        truth.BatteryFull[half] |= battery.Full;
    }

    /// <summary>Every array is throttled by the same share; what rounding leaves goes to the first that can bear it.</summary>
    private static void Throttle(TrueFlows truth, int half, long[] potentialGrains, long potential, long curtailed)
    {
        var parts = potentialGrains.Select(p => potential == 0 ? 0 : curtailed * p / potential).ToArray();
        for (var (a, open) = (0, curtailed - parts.Sum()); open > 0; a++)
        {
            var more = Math.Min(open, potentialGrains[a] - parts[a]);
            parts[a] += more;
            open -= more;
        }
        for (var a = 0; a < parts.Length; a++)
        {
            truth.Curtailed[a][half] += parts[a] * Grain.Kwh;
            truth.Generation[a][half] += (potentialGrains[a] - parts[a]) * Grain.Kwh;
        }
    }
}
