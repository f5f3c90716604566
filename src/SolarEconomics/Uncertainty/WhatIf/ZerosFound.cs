namespace SolarEconomics;

/// <summary>What a search for zeros found, and what it could not look into.</summary>
/// <param name="Zeros">Every value found, lowest first.</param>
/// <param name="Jumps">Those of them at which the function leaps over 0.</param>
/// <param name="AtLow">Value at the low end.</param>
/// <param name="AtHigh">Value at the high end.</param>
/// <param name="Looks">How many values were looked at.</param>
/// <param name="Unclear">Stretches in which two more crossings could lie, lowest first.</param>
internal sealed record ZerosFound(
    IReadOnlyList<double> Zeros, IReadOnlyList<double> Jumps, double AtLow, double AtHigh, int Looks, IReadOnlyList<(double Low, double High)> Unclear);
