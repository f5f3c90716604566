using NodaTime;

namespace AlderWeir;

/// <summary>One array: how it lies, what it is rated on each day, and what reaches the board from it.</summary>
internal sealed record SolarArray(string Name, double TiltDeg, double AzimuthDeg, double HorizonDeg, double InverterW)
{
    /// <summary>Share of the DC that reaches AC. For the ground array it is the secret that its DC counter hides.</summary>
    internal double DcToAc { get; init; } = 0.96;

    /// <summary>Cable, dirt, mismatch and reflection together.</summary>
    internal double Kept { get; init; } = 0.90;

    internal required Func<LocalDate, double> RatedKwp { get; init; }

    /// <summary>What would be at work had nothing failed.</summary>
    internal required Func<LocalDate, double> HealthyKwp { get; init; }

    /// <summary>AC power in W that the array could give in a step of unlimited demand.</summary>
    internal double PotentialW(int step, LocalDate day, Sun sun, Weather weather) => PotentialW(RatedKwp(day), step, day, sun, weather);

    /// <summary>AC power in W that its failures take away in a step of unlimited demand.</summary>
    internal double FailedW(int step, LocalDate day, Sun sun, Weather weather)
    {
        var (atWork, healthy) = (RatedKwp(day), HealthyKwp(day));
        return atWork == healthy ? 0 : PotentialW(healthy, step, day, sun, weather) - PotentialW(atWork, step, day, sun, weather);
    }

    private double PotentialW(double kwp, int step, LocalDate day, Sun sun, Weather weather)
    {
        if (kwp <= 0) return 0;
        var planeWm2 = weather.OnPlaneWm2(step, sun, TiltDeg, AzimuthDeg, HorizonDeg);
        var cellC = weather.AirC(step) + (0.028 * planeWm2);
        var ageing = 1 - (0.005 * Period.DaysBetween(Timeline.Start, day) / 365.25);
        var dcW = kwp * planeWm2 * (1 - (0.0037 * (cellC - 25))) * Kept * ageing;
        return Math.Max(0, Math.Min(dcW * DcToAc, InverterW));
    }
}
