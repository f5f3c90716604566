namespace SolarEconomics;

/// <summary>What a search for zeros found, and what it could not look into.</summary>
/// <param name="Zeros">Every value found, lowest first.</param>
/// <param name="Jumps">Those of them at which the function leaps over 0.</param>
/// <param name="AtLow">Value at the low end.</param>
/// <param name="AtHigh">Value at the high end.</param>
/// <param name="Looks">How many values were looked at.</param>
/// <param name="Unclear">Stretches in which two more crossings could lie, lowest first.</param>
internal sealed record ZerosFound(
    IReadOnlyList<double> Zeros, IReadOnlyList<double> Jumps, double AtLow, double AtHigh, int Looks, IReadOnlyList<(double Low, double High)> Unclear)
{
    /// <summary>For each zero, whether the function is above 0 just above it and below 0 just below it (true), the other way round (false), or on one side of 0 both times (null).</summary>
    /// <remarks>At an end of the range there is one side only, and the function is taken to cross. A whole input may leap over 0: then the value found is the first one on the other side.</remarks>
    internal IReadOnlyList<bool?> Rises(DeclaredRange range, Func<double, double> value) =>
        [.. Zeros.Select((zero, i) => range.Input.IsWhole ? Rises(zero, range, value) : Rises(i, range, value))];

    private bool? Rises(int i, DeclaredRange range, Func<double, double> value)
    {
        var (zero, before, after) = (Zeros[i], i > 0 ? Zeros[i - 1] : range.Low, i + 1 < Zeros.Count ? Zeros[i + 1] : range.High);
        return Rises(before < zero ? value(before + ((zero - before) / 2)) : null, after > zero ? value(zero + ((after - zero) / 2)) : null);
    }

    private static bool? Rises(double zero, DeclaredRange range, Func<double, double> value)
    {
        var there = value(zero);
        return there != 0 ? there > 0 : Rises(zero > range.Low ? value(zero - 1) : null, zero < range.High ? value(zero + 1) : null);
    }

    private static bool? Rises(double? before, double? after) => (before, after) switch
    {
        (null, { } up) => up == 0 ? null : up > 0,
        ({ } down, null) => down == 0 ? null : down < 0,
        (< 0, > 0) => true,
        (> 0, < 0) => false,
        _ => null,
    };
}
