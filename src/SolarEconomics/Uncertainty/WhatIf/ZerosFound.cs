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
    /// <summary>For each zero, whether the function is above 0 between it and the next one, or the upper end.</summary>
    /// <remarks>Where a zero is the upper end itself it is the other side of what lies before it.</remarks>
    internal IReadOnlyList<bool> AboveAfter(DeclaredRange range, Func<double, double> value) =>
        range.Input.IsWhole ? [.. Zeros.Select(z => AboveAfterWhole(z, range, value))] : [.. Zeros.Select((_, i) => AboveAfter(i, range, value))];

    private bool AboveAfter(int i, DeclaredRange range, Func<double, double> value)
    {
        var next = i + 1 < Zeros.Count ? Zeros[i + 1] : range.High;
        if (next > Zeros[i]) return value(Zeros[i] + ((next - Zeros[i]) / 2)) > 0;
        var before = i > 0 ? Zeros[i - 1] : range.Low;
        return value(before + ((Zeros[i] - before) / 2)) < 0;
    }

    /// <summary>A whole input leaps: the value found is the first one on the other side, and 0 only by chance.</summary>
    private static bool AboveAfterWhole(double zero, DeclaredRange range, Func<double, double> value)
    {
        var there = value(zero);
        if (there != 0) return there > 0;
        return zero < range.High ? value(zero + 1) > 0 : value(zero - 1) < 0;
    }
}
