namespace SolarEconomics;

/// <summary>Working columns of one block of steps: small enough to stay in the nearest cache, and padded with night to whole vectors.</summary>
internal sealed class StepBlock
{
    internal const int Size = 1024;

    internal double[] East { get; } = new double[Size];

    internal double[] North { get; } = new double[Size];

    internal double[] Up { get; } = new double[Size];

    internal double[] ExtraterrestrialWm2 { get; } = new double[Size];

    internal double[] GlobalWm2 { get; } = new double[Size];

    internal double[] BeamWm2 { get; } = new double[Size];

    internal double[] DiffuseWm2 { get; } = new double[Size];

    /// <summary>Share of a clear sky's power that seasonal shade leaves; filled only where a model has such shade.</summary>
    internal double[] Unshaded { get; } = new double[Size];

    internal double[] AirC { get; } = new double[Size];

    internal double[] WindMs { get; } = new double[Size];

    /// <summary>Light on the plane times rated kW, summed over arrays; divided by all rated kW when stored.</summary>
    internal double[] PlaneKw { get; } = new double[Size];

    internal double[] DcW { get; } = new double[Size];

    internal double[] AcW { get; } = new double[Size];

    internal bool IsSplit { get; private set; }

    internal double RatedKw { get; set; }

    internal void Load(Weather weather, SunTrack track, int first, int steps)
    {
        Array.Clear(PlaneKw);
        Array.Clear(DcW);
        RatedKw = 0;
        Copy(weather.GlobalWm2, GlobalWm2, first, steps);
        Copy(weather.AirC, AirC, first, steps);
        Copy(weather.WindMs, WindMs, first, steps);
        IsSplit = weather.IsSplit;
        if (IsSplit)
        {
            Copy(weather.BeamNormalWm2, BeamWm2, first, steps);
            Copy(weather.DiffuseWm2, DiffuseWm2, first, steps);
        }
        track.Fill(first, this);
    }

    internal void Store(Span<double> planeWm2, Span<double> dcW, Span<double> acW)
    {
        for (var i = 0; i < planeWm2.Length; i++) planeWm2[i] = PlaneKw[i] / RatedKw;
        DcW.AsSpan(0, dcW.Length).CopyTo(dcW);
        AcW.AsSpan(0, acW.Length).CopyTo(acW);
    }

    private static void Copy(ReadOnlySpan<double> from, double[] to, int first, int steps)
    {
        from.Slice(first, steps).CopyTo(to);
        to.AsSpan(steps).Clear();
    }
}
