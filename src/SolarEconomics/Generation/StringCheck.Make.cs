using System.Globalization;

namespace SolarEconomics;

/// <summary>How a string check is made.</summary>
public sealed partial class StringCheck
{
    /// <summary>Checks an array on an inverter.</summary>
    /// <param name="array">The array; on one input.</param>
    /// <param name="inverter">Type of the inverter.</param>
    /// <param name="site">Temperatures of the place.</param>
    public static StringCheck On(ModuleArray array, InverterType inverter, StringSite site)
    {
        ArgumentNullException.ThrowIfNull(inverter);
        var hot = HotV(array, site);
        var limits = Common(array, site, inverter.HighestInputV, inverter.HighestShortCircuitA);
        limits.Add(AtLeast("Operating voltage on the hottest day against the tracking window", hot, inverter.TrackingFromV, "V",
            "below its tracking window the inverter loses the best point or stops"));
        limits.Add(Unused("Operating voltage on a cold bright day against the top of the tracking window", ColdOperatingV(array, site), inverter.TrackingToV, "V"));
        limits.Add(Unused("Operating current at 1,000 W/m²", array.Module.ImpA * array.Strings, inverter.HighestInputA, "A"));
        limits.Add(Unused("Power of the array against the input", array.RatedKwp * 1000, inverter.HighestInputW, "W"));
        return new StringCheck(array, inverter.Name, limits, Most(array, site, inverter.HighestInputV), Fewest(hot / array.InSeries, inverter.TrackingFromV));
    }

    /// <summary>Checks an array on a charge controller.</summary>
    /// <param name="array">The array.</param>
    /// <param name="controller">Type of the controller.</param>
    /// <param name="site">Temperatures of the place, and the battery's voltages.</param>
    public static StringCheck On(ModuleArray array, ControllerType controller, StringSite site)
    {
        ArgumentNullException.ThrowIfNull(controller);
        var hot = HotV(array, site);
        var limits = Common(array, site, controller.HighestInputV, controller.HighestShortCircuitA);
        var needed = site.AbsorptionV + controller.HeadroomV;
        limits.Add(AtLeast("Operating voltage on the hottest day against absorption and headroom", hot, needed, "V",
            "below it the battery is never charged full on hot days"));
        var limitW = site.EmptyV is { } empty ? controller.LimitW(empty) : null;
        limits.Add(Unused("Power of the array against the charging current at an empty battery", array.RatedKwp * 1000 * controller.Efficiency, limitW, "W"));
        return new StringCheck(array, controller.Name, limits, Most(array, site, controller.HighestInputV), Fewest(hot / array.InSeries, needed));
    }

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

    private static List<StringLimit> Common(ModuleArray array, StringSite site, double? highestV, double? highestShortA)
    {
        var module = array.Module;
        var cold = ColdVoltage(module, site.ColdestC);
        var coldV = cold?.Volts * array.InSeries;
        var how = cold?.How ?? "open-circuit voltage, or the lowest temperature, is unknown";
        var circuitA = module.IscA is { } isc ? Strings.CircuitA(isc, array.Strings) : (double?)null;
        return
        [
            AtMost("Open-circuit voltage at the coldest dawn against the device", coldV, highestV, "V", how),
            AtMost("Open-circuit voltage at the coldest dawn against the modules", coldV, module.HighestSystemV, "V", how),
            AtMost("Short-circuit current of all strings × 1.25 against the device", circuitA, highestShortA, "A", "1.25 for light above 1,000 W/m²"),
            Fuse(array),
        ];
    }

    /// <summary>From three strings on, the others can feed more current into a faulty one than its modules bear.</summary>
    private static StringLimit Fuse(ModuleArray array)
    {
        var module = array.Module;
        const string What = "Current that the other strings feed into a faulty one";
        if (array.Strings == 1) return new(What, 0, module.LargestFuseA, "A", Verdict.WithinTheData, "one string: no other feeds it");
        if (module.IscA is not { } isc || module.LargestFuseA is not { } largest)
            return new(What, null, module.LargestFuseA, "A", Verdict.CannotTell, "short-circuit current or the largest fuse of the module is unknown");
        var others = Strings.CircuitA(isc, array.Strings - 1);
        if (others <= largest) return new(What, others, largest, "A", Verdict.WithinTheData, "no string fuse is needed for the modules' sake");
        var rating = Strings.ConductorA(isc);
        return rating <= largest
            ? new(What, others, largest, "A", Verdict.WithinTheData, string.Create(CultureInfo.InvariantCulture,
                $"a fuse in each string is needed: at least {rating:0.0} A (1.25 × 1.25 × Isc), at most {largest:0.#} A"))
            : new(What, others, largest, "A", Verdict.Fails, string.Create(CultureInfo.InvariantCulture,
                $"a fuse in each string is needed, but {rating:0.0} A would be above the {largest:0.#} A that the module bears"));
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
        Compare(what, found, limit, unit, how, (f, l) => f >= l, Verdict.Fails);

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
