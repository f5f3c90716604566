using NodaTime;

namespace AlderWeir;

/// <summary>What house and joinery workshop want to use, whether the sun shines or not. The plant's own standby is not in it.</summary>
internal sealed class Load(Draw draw)
{
    // Mean activity of the house in W, hour by hour from midnight.
    private static readonly double[] HouseW =
        [90, 70, 60, 60, 60, 90, 260, 620, 560, 330, 300, 380, 520, 480, 320, 300, 400, 780, 1010, 900, 720, 580, 390, 190];

    internal double WantedW(int step, LocalDateTime local) => HouseUseW(step, local) + WorkshopUseW(step, local);

    private double HouseUseW(int step, LocalDateTime local)
    {
        var winter = Math.Cos(2 * Math.PI * (local.DayOfYear - 15) / 365.25);
        var weekend = local.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday ? 1.15 : 1.0;
        var activity = HouseW[local.Hour] * weekend * (1 + (0.22 * winter));
        var level = draw.Between(Stream.HouseLevel, step, 0.35, 1.05);
        // Kettle, cooker and shower: short and strong, so that import and export both run inside one half hour.
        var spikes = draw.Unit(Stream.HouseSpike, step) < activity / 5500;
        var spikeW = spikes ? draw.Between(Stream.HouseSpikeSize, step, 1400, 3200) : 0;
        var waterHeaterW = local.Hour is 6 or 21 ? 850 * (1 + (0.3 * winter)) : 0;
        return 200 + (activity * level) + spikeW + waterHeaterW;
    }

    private double WorkshopUseW(int step, LocalDateTime local)
    {
        // Timber is kept dry from November to March.
        var dryingW = local.Month is >= 11 or <= 3 ? 190 : 0;
        if (!WorkshopOpen(local)) return dryingW + 15;
        var machineRuns = draw.Unit(Stream.Machine, step) < 0.30;
        return dryingW + 220 + (machineRuns ? draw.Between(Stream.MachineSize, step, 1500, 4200) : 0);
    }

    private bool WorkshopOpen(LocalDateTime local)
    {
        var date = local.Date;
        if (date is { Month: 12, Day: >= 22 } or { Month: 1, Day: <= 4 } or { Month: 8, Day: <= 14 }) return false;
        return local.DayOfWeek switch
        {
            IsoDayOfWeek.Sunday => false,
            IsoDayOfWeek.Saturday => local.Hour is >= 9 and < 13 && draw.Unit(Stream.SaturdayWork, date.DayOfYear + (400 * date.Year)) < 0.4,
            _ => local.Hour is >= 8 and < 17 and not 13,
        };
    }
}
