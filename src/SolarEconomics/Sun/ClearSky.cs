namespace SolarEconomics;

/// <summary>What the sun gives under a sky without clouds.</summary>
public static class ClearSky
{
    /// <summary>Clear sky by turbidity and height, good for any hour of any place.</summary>
    /// <param name="sun">Direction of the sun.</param>
    /// <param name="extraterrestrialNormalWm2">Sunlight above the atmosphere square to the beam, in W/m².</param>
    /// <param name="linkeTurbidity">Haze as a multiple of clean dry air: 2 mountain or cold clear air, 3 rural, 4 to 5 humid or town, 6 and more polluted. Range: 1 to 10. Default: 3.</param>
    /// <param name="heightM">Height above the sea, in metres. Range: −430 to 9,000.</param>
    /// <remarks>Equation: global = cg1 E0 cos z exp(−cg2 m (f1 + f2 (T − 1))), beam = (0.664 + 0.163/f1) E0 exp(−0.09 m (T − 1)), with
    /// f1 = exp(−h/8000), f2 = exp(−h/1250), cg1 = 5.09·10⁻⁵ h + 0.868, cg2 = 3.92·10⁻⁵ h + 0.0387, m the air mass at the height. Source: sun-8.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Irradiance At(SunDirection sun, double extraterrestrialNormalWm2, double linkeTurbidity = 3, double heightM = 0)
    {
        Require.Within(extraterrestrialNormalWm2, 1300, 1450, "W/m² above the atmosphere");
        var factors = new ClearSkyFactors(linkeTurbidity, heightM);
        if (sun.Up <= 0) return default;
        var airMass = AirMass.Relative(sun.Up) * factors.PressureShare;
        var global = factors.GlobalScale * extraterrestrialNormalWm2 * sun.Up * Math.Exp(-factors.GlobalDepth * airMass);
        var beam = Math.Min(
            factors.BeamScale * extraterrestrialNormalWm2 * Math.Exp(-factors.BeamDepth * airMass),
            global / sun.Up);
        return new Irradiance(global, beam, Math.Max(0, global - (beam * sun.Up)));
    }

    /// <summary>Clear sky by day of year alone, as a textbook for temperate northern places has it.</summary>
    /// <param name="sun">Direction of the sun.</param>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    /// <remarks>Equation: beam = A exp(−k / cos z), diffuse = C · beam; A = 1160 + 75 sin(360° (n − 275)/365) W/m²,
    /// k = 0.174 + 0.035 sin(360° (n − 100)/365), C = 0.095 + 0.04 sin(360° (n − 100)/365). Source: sun-9.</remarks>
    public static Irradiance ByDayOfYear(SunDirection sun, int dayOfYear)
    {
        var (a, k, c) = DayOfYearConstants(dayOfYear);
        if (sun.Up <= 0) return default;
        var beam = a * Math.Exp(-k / sun.Up);
        return Irradiance.FromBeam(beam, c * beam, sun);
    }

    /// <summary>The three constants of <see cref="ByDayOfYear"/>: apparent sunlight in W/m², optical depth, diffuse share of the beam.</summary>
    /// <param name="dayOfYear">1 is 1 January. Range: 1 to 366.</param>
    public static (double ApparentWm2, double OpticalDepth, double DiffuseShare) DayOfYearConstants(int dayOfYear)
    {
        var turn = 2 * Math.PI / 365 * SolarTime.CheckedDay(dayOfYear);
        var day100 = Math.Sin(turn - (2 * Math.PI * 100 / 365));
        return (1160 + (75 * Math.Sin(turn - (2 * Math.PI * 275 / 365))), 0.174 + (0.035 * day100), 0.095 + (0.04 * day100));
    }
}
