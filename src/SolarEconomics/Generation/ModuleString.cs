namespace SolarEconomics;

/// <summary>Modules in series, alike or not, at 1,000 W/m² and 25 °C.</summary>
/// <param name="Modules">The modules, one or more.</param>
/// <remarks>The lowest current rules the string; bypass diodes are not reckoned, so a mixed string is estimated low. Voltages add. Source: gen-12.</remarks>
public sealed record ModuleString(params IReadOnlyList<ModuleType> Modules)
{
    /// <summary>So many modules of one type.</summary>
    /// <param name="module">The type.</param>
    /// <param name="count">How many. Range: 1 to 100.</param>
    public static ModuleString Of(ModuleType module, int count) =>
        new([.. Enumerable.Repeat(module, (int)Require.Within(count, 1, 100, "modules in series"))]);

    /// <summary>Sum of the ratings. Unit: W.</summary>
    public double RatedW => Modules.Sum(m => m.RatedW);

    /// <summary>Operating voltage; <see langword="null"/> where one module's is unknown. Unit: V.</summary>
    public double? VmpV => Sum(m => m.VmpV);

    /// <summary>Open-circuit voltage; <see langword="null"/> where one module's is unknown. Unit: V.</summary>
    public double? VocV => Sum(m => m.VocV);

    /// <summary>Operating current, the lowest of the modules; <see langword="null"/> where one is unknown. Unit: A.</summary>
    public double? ImpA => Lowest(m => m.ImpA);

    /// <summary>Short-circuit current, the lowest of the modules; <see langword="null"/> where one is unknown. Unit: A.</summary>
    public double? IscA => Lowest(m => m.IscA);

    /// <summary>Power of the string by itself; <see langword="null"/> where it cannot be told. Unit: W. Equation: lowest current × sum of voltages.</summary>
    public double? PowerW => ImpA * VmpV;

    /// <summary>The largest reverse current that every module bears; <see langword="null"/> where one is unknown. Unit: A.</summary>
    public double? LargestFuseA => Lowest(m => m.LargestFuseA);

    /// <summary>Current at a voltage, below 0 where others push current back into it. All four points of the sheet must be known. Unit: A.</summary>
    /// <remarks>Equation: I = Isc (1 − C₁ (exp(V / (C₂ Voc)) − 1)), C₂ = (Vmp/Voc − 1) / ln(1 − Imp/Isc), C₁ = (1 − Imp/Isc) exp(−Vmp / (C₂ Voc)).</remarks>
    internal double CurrentA(double volts)
    {
        var (isc, voc, left) = (IscA!.Value, VocV!.Value, 1 - (ImpA!.Value / IscA!.Value));
        var c2 = ((VmpV!.Value / voc) - 1) / Math.Log(left);
        var c1 = left * Math.Exp(-VmpV!.Value / (c2 * voc));
        return isc * (1 - (c1 * (Math.Exp(volts / (c2 * voc)) - 1)));
    }

    /// <summary>Whether the four points of its curve are known and can be true.</summary>
    internal bool HasCurve => IscA is { } isc && ImpA is { } imp && VocV is { } voc && VmpV is { } vmp && imp < isc && vmp < voc;

    private double? Sum(Func<ModuleType, double?> of) => Modules.All(m => of(m) is not null) ? Modules.Sum(m => of(m)!.Value) : null;

    private double? Lowest(Func<ModuleType, double?> of) => Modules.All(m => of(m) is not null) ? Modules.Min(m => of(m)!.Value) : null;
}
