using System.Globalization;

namespace SolarEconomics;

/// <summary>How a string check is made.</summary>
public sealed partial class StringCheck
{
    /// <summary>Open-circuit voltage of a module at the coldest temperature: by its coefficient, else by table. Unit: V.</summary>
    /// <param name="module">Type of the module.</param>
    /// <param name="coldestC">Lowest temperature, in °C.</param>
    /// <returns>The voltage and how it was reckoned; <see langword="null"/> where data are missing.</returns>
    public static (double Volts, string How)? ColdVoltage(ModuleType module, double? coldestC)
    {
        ArgumentNullException.ThrowIfNull(module);
        if (module.VocV is not { } voc || coldestC is not { } cold) return null;
        if (module.VocPerK is { } perK) return (Strings.VoltageAt(voc, perK, cold), "by the module's own coefficient");
        return cold >= -40 ? (voc * Strings.ColdFactor(cold), "by the table for crystalline silicon, as the coefficient is unknown") : null;
    }

    private static List<StringLimit> Common(ModuleArray array, StringSite site, double? highestV, double? highestShortA, IReadOnlyList<ModuleArray> onInput)
    {
        var module = array.Module;
        var cold = ColdVoltage(module, site.ColdestC);
        var coldV = cold?.Volts * array.InSeries;
        var how = cold?.How ?? "open-circuit voltage, or the lowest temperature, is unknown";
        var circuitA = Sum([array, .. onInput], a => a.Module.IscA * a.Strings) * Strings.BrightLight;
        return
        [
            AtMost("Open-circuit voltage at the coldest dawn against the device", coldV, highestV, "V", how),
            AtMost("Open-circuit voltage at the coldest dawn against the modules", coldV, module.HighestSystemV, "V", how),
            AtMost("Short-circuit current of all strings × 1.25 against the device" + Together(onInput), circuitA, highestShortA, "A", "1.25 for light above 1,000 W/m²"),
            FuseLimit(array, onInput),
        ];
    }

    private static double? HotV(ModuleArray array, StringSite site) => OperatingV(array, site.HottestCellC);

    private static double? ColdOperatingV(ModuleArray array, StringSite site) => OperatingV(array, site.ColdestC);

    private static double? OperatingV(ModuleArray array, double? cellC) =>
        array.Module.VmpV is { } vmp && cellC is { } cell
            ? array.InSeries * Strings.VoltageAt(vmp, array.Module.VmpPerK ?? array.Module.PowerPerK, cell)
            : null;

    private static int? Most(ModuleArray array, StringSite site, double? highestV)
    {
        if (ColdVoltage(array.Module, site.ColdestC) is not { } cold || highestV is not { } limit) return null;
        return Strings.MostInSeries(cold.Volts, Math.Min(limit, array.Module.HighestSystemV ?? limit));
    }

    private static int? Fewest(double? hotModuleV, double? neededV) =>
        hotModuleV is { } hot && neededV is { } needed && hot > 0 ? (int)Math.Ceiling(needed / hot) : null;

    private static StringLimit AtMost(string what, double? found, double? limit, string unit, string how) =>
        Compare(what, found, limit, unit, how, (f, l) => f <= l, Verdict.Fails);

    private static StringLimit AtLeast(string what, double? found, double? limit, string unit, string how) =>
        Compare(what, found, limit, unit, how, (f, l) => f >= l, Verdict.Fails) with { IsLeast = true };

    private static StringLimit Unused(string what, double? found, double? limit, string unit) =>
        Compare(what, found, limit, unit, "what is above the limit is left unused", (f, l) => f <= l, Verdict.LeavesPowerUnused);

    private static StringLimit Compare(
        string what, double? found, double? limit, string unit, string how, Func<double, double, bool> holds, Verdict otherwise)
    {
        if (found is { } f && limit is { } l) return new(what, f, l, unit, holds(f, l) ? Verdict.WithinTheData : otherwise, how);
        var missing = found is null ? "a figure of the modules or of the place is unknown" : "the limit of the device or module is unknown";
        return new(what, found, limit, unit, Verdict.CannotTell, missing);
    }
}
