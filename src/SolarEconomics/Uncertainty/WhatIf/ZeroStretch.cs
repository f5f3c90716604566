namespace SolarEconomics;

/// <summary>A stretch between two neighbouring looks, and how sharply the function is taken to bend in it.</summary>
/// <param name="Low">Low end.</param>
/// <param name="AtLow">Value there.</param>
/// <param name="High">High end.</param>
/// <param name="AtHigh">Value there.</param>
/// <param name="Bend">The highest |f″| allowed for.</param>
internal readonly record struct ZeroStretch(double Low, double AtLow, double High, double AtHigh, double Bend)
{
    internal double Width => High - Low;

    internal double Least => Math.Min(Math.Abs(AtLow), Math.Abs(AtHigh));

    internal bool ChangesSign => (AtLow < 0 && AtHigh > 0) || (AtLow > 0 && AtHigh < 0);

    /// <summary>Whether nothing is left to find but the one crossing that the ends show: too far from 0 on one side of it, or rising or falling throughout.</summary>
    internal bool IsClear => IsFar || Math.Abs(AtHigh - AtLow) >= Bend * Width * Width / 2;

    private bool IsFar => !ChangesSign && Least > 0 && Least >= MostSag;

    private double MostSag => Bend * Width * Width / 8;

    /// <summary>Whether it is 0 at both ends and between them.</summary>
    internal bool IsFlat(double rounding) => AtLow == 0 && AtHigh == 0 && MostSag <= rounding;
}
