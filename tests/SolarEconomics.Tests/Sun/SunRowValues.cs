using NodaTime;

namespace SolarEconomics.Tests.SunRoom;

/// <summary>What the project gives for each outside row on sun and irradiance (CV-S…), by row id.</summary>
internal static class SunRowValues
{
    internal static IEnumerable<(string Id, double Got)> All() =>
        [.. Daily(), .. Textbook(), .. HighPrecision(), .. RiseAndSet(), .. Seasons(), .. Isotropic(), .. ClearDay(), .. Models()];

    private static IEnumerable<(string, double)> Daily()
    {
        yield return ("CV-S01.1", DailyRadiation.InverseDistanceSquared(246));
        yield return ("CV-S01.2", DailyRadiation.DeclinationRad(246));
        yield return ("CV-S01.3", DailyRadiation.SunsetHourAngleRad(-20, 246));
        yield return ("CV-S01.4", DailyRadiation.AboveAtmosphereMjM2(-20, 246));
        yield return ("CV-S01.5", DailyRadiation.AsEvaporationMm(DailyRadiation.AboveAtmosphereMjM2(-20, 246)));
        yield return ("CV-S02.1", DailyRadiation.DaylightHours(-20, 246));
        yield return ("CV-S02.2", DailyRadiation.DaylightHours(-20, 246));
        yield return ("CV-S03.1", DailyRadiation.AboveAtmosphereMjM2(-22.9, 135));
        yield return ("CV-S03.2", DailyRadiation.FromSunshineMjM2(-22.9, 135, 220.0 / 31, 0.25, 0.50));
    }

    private static IEnumerable<(string, double)> Textbook()
    {
        yield return ("CV-S05.1", SolarTime.EquationOfTimeMinutes(34));
        yield return ("CV-S05.2", 60 * SolarTime.SolarHours(10.5, -89.4, -90, 34));
        var sun = SunDirection.OfHourAngle(43, -14, -22.5);
        var plane = new Plane(45, 195);
        yield return ("CV-S06.1", sun.CosIncidence(plane));
        yield return ("CV-S06.2", sun.IncidenceDeg(plane));
        yield return ("CV-S06.3", sun.BeamRatio(plane)!.Value);
        var afternoon = SunDirection.OfHourAngle(43, -2.4, SolarTime.HourAngleDeg(16));
        yield return ("CV-S08.1", afternoon.ZenithDeg);
        yield return ("CV-S08.2", 90 - afternoon.ZenithDeg);
        yield return ("CV-S08.3", afternoon.AzimuthDeg - 180);
        yield return ("CV-S08.4", SolarTime.SunsetHourAngleDeg(43, -2.4));
        yield return ("CV-S18.1", SolarTime.HourAngleDeg(12));
        yield return ("CV-S18.2", SolarTime.HourAngleDeg(9.5));
        yield return ("CV-S18.3", SolarTime.HourAngleDeg(18.5));
        yield return ("CV-S18.4", SolarTime.DayAngleRad(365));
        yield return ("CV-S18.5", SolarTime.EquationOfTimeMinutes(304));
    }

    private static IEnumerable<(string, double)> HighPrecision()
    {
        var instant = Instant.FromUtc(2003, 10, 17, 19, 30, 30);
        var sun = Sun.At(instant, 39.742476, -105.1786, new Air(820, 11));
        yield return ("CV-S10.1", sun.ZenithDeg);
        yield return ("CV-S10.2", sun.AzimuthDeg);
        yield return ("CV-S10.3", sun.IncidenceDeg(new Plane(30, 180 - 10)));
        yield return ("CV-S11.1", sun.JulianDay);
        yield return ("CV-S11.2", sun.DeclinationDeg);
        yield return ("CV-S11.3", sun.RightAscensionDeg);
        yield return ("CV-S11.4", sun.EquationOfTimeMinutes);
        yield return ("CV-S11.5", sun.HourAngleDeg);
        yield return ("CV-S11.6", sun.RefractionDeg);
    }

    // Minutes of the UTC day (of the row's date), so that a table to the minute is compared in minutes.
    private static IEnumerable<(string, double)> RiseAndSet()
    {
        static double Minutes(Instant? at, int month, int day) => (at!.Value - Instant.FromUtc(2019, month, day, 0, 0)).TotalMinutes;
        static SunDay On(int month, int day) => Sun.On(new LocalDate(2019, month, day), 29, -81);
        yield return ("CV-S13.1", Minutes(On(3, 20).Rise, 3, 20));
        yield return ("CV-S13.2", Minutes(On(3, 20).Set, 3, 20));
        yield return ("CV-S13.3", Minutes(On(6, 21).Rise, 6, 21));
        yield return ("CV-S13.4", Minutes(On(6, 20).Set, 6, 21));
        yield return ("CV-S13.5", Minutes(On(12, 21).Rise, 12, 21));
        yield return ("CV-S13.6", Minutes(On(12, 21).Set, 12, 21));
    }

    // Minutes since the start of the day that the table names.
    private static IEnumerable<(string, double)> Seasons()
    {
        (int Year, Season Season, int Month, int Day)[] table =
        [
            (2024, Season.MarchEquinox, 3, 20), (2024, Season.JuneSolstice, 6, 20), (2024, Season.SeptemberEquinox, 9, 22), (2024, Season.DecemberSolstice, 12, 21),
            (2025, Season.MarchEquinox, 3, 20), (2025, Season.JuneSolstice, 6, 21), (2025, Season.SeptemberEquinox, 9, 22), (2025, Season.DecemberSolstice, 12, 21),
        ];
        return table.Select((r, i) => ($"CV-S16.{i + 1}",
            (Sun.SeasonStart(r.Year, r.Season) - Instant.FromUtc(r.Year, r.Month, r.Day, 0, 0)).TotalMinutes));
    }

    private static IEnumerable<(string, double)> Isotropic()
    {
        var sun = SunDirection.Of(60, 200);
        var sky = new Sky(sun, Irradiance.FromBeam(700, 100, sun), 1361);
        yield return ("CV-S17.1", sky.Irradiance.GlobalWm2);
        yield return ("CV-S17.2", sky.On(Plane.Level, SkyModel.Isotropic).TotalWm2);
        yield return ("CV-S17.3", sky.On(new Plane(90, 180), SkyModel.Isotropic).TotalWm2);
        yield return ("CV-S17.4", sky.On(new Plane(90, 0), SkyModel.Isotropic).TotalWm2);
    }

    private static IEnumerable<(string, double)> ClearDay()
    {
        const int Day = 141;
        var declination = 23.45 * Math.Sin(2 * Math.PI * (Day - 81) / 365.0);
        var sun = SunDirection.OfHourAngle(33.7, declination, 0);
        var (apparent, depth, share) = ClearSky.DayOfYearConstants(Day);
        var clear = ClearSky.ByDayOfYear(sun, Day);
        var plane = new Plane(52, 160);
        var onPlane = new Sky(sun, clear, 1361).On(plane, SkyModel.Isotropic, 0.2);
        yield return ("CV-S19.1", 90 - sun.ZenithDeg);
        yield return ("CV-S19.2", apparent);
        yield return ("CV-S19.3", depth);
        yield return ("CV-S19.4", clear.BeamNormalWm2);
        yield return ("CV-S19.5", sun.CosIncidence(plane));
        yield return ("CV-S19.6", onPlane.BeamWm2);
        yield return ("CV-S19.7", share);
        yield return ("CV-S19.8", onPlane.SkyWm2);
        yield return ("CV-S19.9", onPlane.GroundWm2);
        yield return ("CV-S19.10", onPlane.TotalWm2);
    }

    private static IEnumerable<(string, double)> Models()
    {
        const double Rad = Math.PI / 180;
        // The row gives zenith, incidence and tilt; the azimuth between sun and plane follows from them.
        var between = Math.Acos((Math.Cos(30 * Rad) - (Math.Cos(60 * Rad) * Math.Cos(45 * Rad))) / (Math.Sin(60 * Rad) * Math.Sin(45 * Rad))) / Rad;
        var sun = SunDirection.Of(60, 180 + between);
        var plane = new Plane(45, 180);
        var sky = new Sky(sun, Irradiance.FromBeam(600, 200, sun), 1367) { AirMass = 2 };
        yield return ("CV-S21.1", sky.On(plane).BeamWm2);
        yield return ("CV-S21.2", sky.On(plane, SkyModel.Isotropic, 0.2).GroundWm2);
        yield return ("CV-S21.3", sky.On(plane, SkyModel.Isotropic).SkyWm2);
        yield return ("CV-S21.4", sky.On(plane, SkyModel.HayDavies).SkyWm2);
        yield return ("CV-S21.5", sky.On(plane, SkyModel.HayDaviesKlucherReindl).SkyWm2);
        yield return ("CV-S21.6", sky.On(plane, SkyModel.Perez).SkyWm2);
        var perez = PerezSky.Of(sky);
        yield return ("CV-S21.7", perez.Clearness);
        yield return ("CV-S21.8", perez.Brightness);
        yield return ("CV-S21.9", perez.Brightening.AroundSun);
        yield return ("CV-S21.10", perez.Brightening.Horizon);
        yield return ("CV-S21.11", Decomposition.DiffuseShare(0.1));
        yield return ("CV-S21.12", Decomposition.DiffuseShare(0.5));
        yield return ("CV-S21.13", Decomposition.DiffuseShare(0.9));
    }
}
