namespace SolarEconomics;

/// <summary>Current of modules by voltage, both in parts of the best point: 1 at 1. For what a string gives where its input does not let it work at its best point.</summary>
/// <remarks>Equation: y(x) = a (1 − C₁ (exp(x / (C₂ b)) − 1)), a = Isc/Imp, b = Voc/Vmp, as <see cref="ModuleString"/> has it, scaled so that x · y is highest at 1 · 1.
/// Where a sheet is silent a = 1.06 and b = 1.22 are taken: common practice, no source. Source: gen-12.</remarks>
internal sealed class StringCurve
{
    private const double UsualShortOverBest = 1.06;
    private const double UsualOpenOverBest = 1.22;
    private readonly double _a;
    private readonly double _c1;
    private readonly double _c2b;
    private readonly double _peakX = 1;
    private readonly double _peakY = 1;

    private StringCurve(double a, double b)
    {
        var left = 1 - (1 / a);
        var c2 = ((1 / b) - 1) / Math.Log(left);
        (_a, _c1, _c2b) = (a, left * Math.Exp(-1 / (c2 * b)), c2 * b);
        (_peakX, _peakY) = (1, 1);
        var peak = Highest.Of(x => x * At(x), 0, b);
        (_peakX, _peakY) = (peak, At(peak));
        Open = _c2b * Math.Log(1 + (1 / _c1)) / _peakX;
    }

    /// <summary>Voltage without load, in parts of the best point's.</summary>
    internal double Open { get; }

    internal static StringCurve Of(ModuleType module)
    {
        var a = module is { IscA: { } isc, ImpA: { } imp } && isc > imp ? isc / imp : UsualShortOverBest;
        var b = module is { VocV: { } voc, VmpV: { } vmp } && voc > vmp ? voc / vmp : UsualOpenOverBest;
        return new StringCurve(a, b);
    }

    /// <summary>Current at a voltage; 0 above <see cref="Open"/>, as nothing flows backwards here.</summary>
    internal double At(double x) => Math.Max(0, _a * (1 - (_c1 * (Math.Exp(x * _peakX / _c2b) - 1)))) / _peakY;
}
