namespace SolarEconomics;

/// <summary>The places of a 250 record that are read, counted from 0. Source: readings-nem13.</summary>
internal static class Nem13Fields
{
    internal const int Nmi = 1;
    internal const int Register = 3;
    internal const int Suffix = 4;
    internal const int Direction = 7;
    internal const int PreviousRead = 8;
    internal const int PreviousTime = 9;
    internal const int PreviousQuality = 10;
    internal const int CurrentRead = 13;
    internal const int CurrentTime = 14;
    internal const int CurrentQuality = 15;
    internal const int Quantity = 18;
    internal const int Unit = 19;
    internal const int Updated = 21;

    /// <summary>Fields up to the unit; what stands behind it may be left out.</summary>
    internal const int Least = 20;
}
