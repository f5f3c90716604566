namespace SolarEconomics;

/// <summary>The parts of <see cref="ClearSky.At"/> that do not change through a year, worked out once for a loop over many steps.</summary>
internal readonly struct ClearSkyFactors
{
    internal ClearSkyFactors(double linkeTurbidity, double heightM)
    {
        Require.Within(linkeTurbidity, 1, 10, "multiples of clean dry air; 3 is rural air");
        PressureShare = AirMass.PressureShare(heightM);
        var low = Math.Exp(-heightM / 8000);
        var haze = Math.Exp(-heightM / 1250);
        GlobalScale = (5.09e-5 * heightM) + 0.868;
        GlobalDepth = ((3.92e-5 * heightM) + 0.0387) * (low + (haze * (linkeTurbidity - 1)));
        BeamScale = 0.664 + (0.163 / low);
        BeamDepth = 0.09 * (linkeTurbidity - 1);
    }

    internal double PressureShare { get; }

    internal double GlobalScale { get; }

    internal double GlobalDepth { get; }

    internal double BeamScale { get; }

    internal double BeamDepth { get; }
}
