namespace AlderWeir;

/// <summary>The board where arrays, battery, loads and grid meet: works the plant out in steps of five minutes.</summary>
/// <remarks>Steps this short make import and export run in the same half hour, as they do at a real meter.
/// Energies are whole milliwatt-hours, so every balance closes exactly.</remarks>
internal static class Board
{
    /// <summary>The grid operator's limit of 5.5 kW to the grid, for five minutes.</summary>
    private const long ExportLimitMwh = 458_333;
    private const double KwhPerMwh = 1e-6;

    internal static TrueFlows Run(Clock clock, Draw draw)
    {
        var weather = new Weather(clock, draw);
        var load = new Load(draw);
        var battery = new Battery();
        var truth = new TrueFlows(clock.Start, clock.Count);
        var potentialMwh = new long[Arrays.All.Length];
        for (var step = 0; step < clock.Steps; step++)
        {
            var half = step / Clock.StepsPerHalfHour;
            var local = clock.LocalStartOf(half);
            var day = local.Date;
            battery.Present = day >= Timeline.BatteryOn;
            var sun = Sun.At(clock.StartOf(half) + NodaTime.Duration.FromMinutes((5 * (step % Clock.StepsPerHalfHour)) + 2.5));
            for (var a = 0; a < potentialMwh.Length; a++)
                potentialMwh[a] = ToMwh(Arrays.All[a].PotentialW(step, day, sun, weather));
            Step(truth, half, potentialMwh, ToMwh(load.WantedW(step, local)), ToMwh(Standby.W(day)), battery);
        }
        return truth;
    }

    /// <summary>The sun serves the wanted load first, then standby, then the battery, then the grid; the battery serves in the same order.</summary>
    private static void Step(TrueFlows truth, int half, long[] potentialMwh, long wanted, long standby, Battery battery)
    {
        var potential = potentialMwh.Sum();
        var direct = Math.Min(potential, wanted);
        var toStandby = Math.Min(potential - direct, standby);
        var stockBefore = battery.StockMwh;
        var stored = battery.Charge(potential - direct - toStandby);
        var left = potential - direct - toStandby - stored;
        var exported = Math.Min(left, ExportLimitMwh);
        var curtailed = left - exported;
        var delivered = battery.Discharge(wanted - direct + standby - toStandby);
        var fromStorage = Math.Min(delivered, wanted - direct);
        var imported = wanted + standby - direct - toStandby - delivered;

        Throttle(truth, half, potentialMwh, potential, curtailed);
        truth.Wanted[half] += wanted * KwhPerMwh;
        truth.Standby[half] += standby * KwhPerMwh;
        truth.UsedDirectly[half] += direct * KwhPerMwh;
        truth.GenerationToStandby[half] += toStandby * KwhPerMwh;
        truth.Stored[half] += stored * KwhPerMwh;
        truth.Delivered[half] += delivered * KwhPerMwh;
        truth.UsedFromStorage[half] += fromStorage * KwhPerMwh;
        truth.Imported[half] += imported * KwhPerMwh;
        truth.Exported[half] += exported * KwhPerMwh;
        truth.BatteryLoss[half] += (stored - delivered - (battery.StockMwh - stockBefore)) * KwhPerMwh;
        truth.Stock[half] = battery.StockMwh * KwhPerMwh;
        truth.BatteryFull[half] |= battery.Full;
    }

    /// <summary>Every array is throttled by the same share; what rounding leaves goes to the first that can bear it.</summary>
    private static void Throttle(TrueFlows truth, int half, long[] potentialMwh, long potential, long curtailed)
    {
        var parts = potentialMwh.Select(p => potential == 0 ? 0 : curtailed * p / potential).ToArray();
        for (var (a, open) = (0, curtailed - parts.Sum()); open > 0; a++)
        {
            var more = Math.Min(open, potentialMwh[a] - parts[a]);
            parts[a] += more;
            open -= more;
        }
        for (var a = 0; a < parts.Length; a++)
        {
            truth.Curtailed[a][half] += parts[a] * KwhPerMwh;
            truth.Generation[a][half] += (potentialMwh[a] - parts[a]) * KwhPerMwh;
        }
    }

    private static long ToMwh(double watts) => (long)Math.Round(watts * 1000 * Clock.StepHours);
}
