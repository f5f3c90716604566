namespace AlderWeir;

/// <summary>The off-grid sister site: an array on a charge controller, a lead-acid battery, an inverter with charger and a generator, worked out in half hours.</summary>
internal static class RefugeSite
{
    internal const double GeneratorKw = 4.5;
    internal const double NameplateKwh = 33.6;
    private const double MostChargerW = 2800;
    private const double StandbyW = 32;

    private static readonly SolarArray s_array = new("array", 60, 180, 8, 3400) { DcToAc = 1, RatedKwp = _ => 3.6, HealthyKwp = _ => 3.6 };

    /// <summary>Lost evenly with the years: 2.8 % of the first capacity each.</summary>
    internal static double HealthAt(int half) => 1 - (0.028 * half / (2 * 24 * 365.25));

    internal static RefugeTruth Run(Clock clock, Draw draw)
    {
        var truth = new RefugeTruth(clock.Start, clock.Count);
        var weather = new Weather(clock, draw);
        var habits = new RefugeHabits(draw);
        var (stockWh, isRunning) = (12_000L, false);
        for (var half = 0; half < clock.Count; half++)
        {
            var local = clock.LocalStartOf(half);
            var usableWh = (long)(NameplateKwh * 500 * HealthAt(half));
            var share = (double)stockWh / usableWh;
            var mayRun = local.Hour is >= 7 and < 22;
            var runs = mayRun && (isRunning ? share < 0.85 : share < 0.30);
            truth.Starts[half] = runs && !isRunning;
            isRunning = runs;
            var sun = Sun.At(clock.StartOf(half) + NodaTime.Duration.FromMinutes(15));
            var potentialWh = (long)(s_array.PotentialW(half * Clock.StepsPerHalfHour, local.Date, sun, weather) / 2);
            stockWh = Step(truth, half, potentialWh, (long)(habits.WantedW(half, local) / 2), runs, Math.Min(stockWh, usableWh), usableWh);
        }
        return truth;
    }

    /// <summary>The sun serves first, a running generator serves the load and charges, the battery gives the rest or takes what is over.</summary>
    private static long Step(RefugeTruth truth, int half, long potentialWh, long wantedWh, bool runs, long stockWh, long usableWh)
    {
        const double ToAc = 0.91;
        const double ToDc = 0.90;
        const double IntoCells = 0.86;
        var standbyWh = (long)(StandbyW / 2);
        var roomWh = (long)((usableWh - stockWh) / IntoCells);
        var neededDcWh = standbyWh + (runs ? 0 : (long)(wantedWh / ToAc));
        var direct = Math.Min(potentialWh, neededDcWh);
        var toStoreWh = Math.Min(potentialWh - direct, roomWh);
        var chargerWh = runs ? (long)Math.Min(MostChargerW / 2 * ToDc, roomWh - toStoreWh) : 0;
        var dischargeWh = Math.Min(neededDcWh - direct, stockWh);
        var shortDcWh = neededDcWh - direct - dischargeWh;
        var unservedWh = Math.Min(wantedWh, (long)(shortDcWh * ToAc));

        truth.ArrayWh[half] = direct + toStoreWh;
        truth.CurtailedWh[half] = potentialWh - direct - toStoreWh;
        truth.GeneratorWh[half] = runs ? wantedWh + (long)(chargerWh / ToDc) : 0;
        truth.ChargeWh[half] = toStoreWh + chargerWh;
        truth.ChargedByGeneratorWh[half] = chargerWh;
        truth.DischargeWh[half] = dischargeWh;
        truth.UsedWh[half] = wantedWh - unservedWh;
        truth.UnservedWh[half] = unservedWh;
        return stockWh - dischargeWh + (long)(truth.ChargeWh[half] * IntoCells);
    }
}
