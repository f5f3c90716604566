namespace SolarEconomics;

/// <summary>The share of an interval that falls into one rate, where an edge cuts through it.</summary>
internal readonly record struct SplitPiece(int Interval, byte Band, double Share);
