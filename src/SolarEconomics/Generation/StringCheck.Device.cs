using System.Globalization;

namespace SolarEconomics;

/// <summary>What a string check asks of the device behind the array.</summary>
public sealed partial class StringCheck
{
    /// <summary>Checks an array on an inverter.</summary>
    /// <param name="array">The array; on one input.</param>
    /// <param name="inverter">Type of the inverter.</param>
    /// <param name="site">Temperatures of the place.</param>
    /// <param name="input">Input of the inverter, counted from 1. Default: 1.</param>
    public static StringCheck On(ModuleArray array, InverterType inverter, StringSite site, int input = 1) => On(array, inverter, site, input, [], []);

    /// <summary>Checks an array on a charge controller.</summary>
    /// <param name="array">The array; on one input.</param>
    /// <param name="controller">Type of the controller.</param>
    /// <param name="site">Temperatures of the place, and the battery's voltages.</param>
    /// <param name="input">Input of the controller, counted from 1. Default: 1.</param>
    public static StringCheck On(ModuleArray array, ControllerType controller, StringSite site, int input = 1) => On(array, controller, site, input, [], []);

    /// <summary>The same beside other arrays: on the same input currents add, on the same device powers.</summary>
    internal static StringCheck On(ModuleArray array, InverterType inverter, StringSite site, int input, IReadOnlyList<ModuleArray> onInput, IReadOnlyList<ModuleArray> onDevice)
    {
        ArgumentNullException.ThrowIfNull(array);
        ArgumentNullException.ThrowIfNull(inverter);
        ArgumentNullException.ThrowIfNull(site);
        var (hot, own) = (HotV(array, site), inverter.LimitsOf(input));
        var limits = Common(array, site, inverter.HighestInputV, own.HighestShortCircuitA, onInput);
        limits.Add(AtLeast("Operating voltage on the hottest day against the tracking window", hot, own.TrackingFromV, "V",
            "below its tracking window the inverter loses the best point or stops" + ByGamma(array)));
        limits.Add(Unused("Operating voltage on a cold bright day against the top of the tracking window", ColdOperatingV(array, site), own.TrackingToV, "V"));
        limits.Add(Unused("Operating current at 1,000 W/m²" + Together(onInput), Sum([array, .. onInput], a => a.Module.ImpA * a.Strings), own.HighestInputA, "A"));
        if (own.HighestInputW is { } inputW) limits.Add(Unused("Power of the array against the input" + Together(onInput), RatedW([array, .. onInput]), inputW, "W"));
        limits.Add(Unused("Power against the DC power that the device uses" + Together(onDevice), RatedW([array, .. onDevice]), inverter.HighestInputW, "W"));
        return new StringCheck(array, inverter.Name, limits, Most(array, site, inverter.HighestInputV), Fewest(hot / array.InSeries, own.TrackingFromV)) { Fuse = FuseOf(array, onInput) };
    }

    /// <summary>The same beside other arrays: on the same input currents add, on the same device powers.</summary>
    internal static StringCheck On(ModuleArray array, ControllerType controller, StringSite site, int input, IReadOnlyList<ModuleArray> onInput, IReadOnlyList<ModuleArray> onDevice)
    {
        ArgumentNullException.ThrowIfNull(array);
        ArgumentNullException.ThrowIfNull(controller);
        ArgumentNullException.ThrowIfNull(site);
        var (hot, own) = (HotV(array, site), controller.LimitsOf(input, site.AbsorptionV ?? 1));
        var limits = Common(array, site, controller.HighestInputV, own.HighestShortCircuitA, onInput);
        var needed = site.AbsorptionV + controller.HeadroomV;
        limits.Add(AtLeast("Operating voltage on the hottest day against absorption and headroom", hot, needed, "V", "below it the battery is never charged full on hot days" + ByGamma(array)));
        if (own.HighestInputA is { } inputA) limits.Add(Unused("Operating current at 1,000 W/m²" + Together(onInput), Sum([array, .. onInput], a => a.Module.ImpA * a.Strings), inputA, "A"));
        if (own.HighestInputW is { } inputW) limits.Add(Unused("Power of the array against the input" + Together(onInput), RatedW([array, .. onInput]), inputW, "W"));
        var power = RatedW([array, .. onDevice]) * controller.Efficiency;
        limits.Add(Unused("Power against the charging current at an empty battery" + Together(onDevice), power, site.EmptyV is { } empty ? controller.LimitW(empty) : null, "W"));
        limits.Add(Unused("Power against the charging current at absorption" + Together(onDevice), power, site.AbsorptionV is { } full ? controller.LimitW(full) : null, "W"));
        return new StringCheck(array, controller.Name, limits, Most(array, site, controller.HighestInputV), Fewest(hot / array.InSeries, needed)) { Fuse = FuseOf(array, onInput) };
    }

    private static string Together(IReadOnlyList<ModuleArray> beside) => beside.Count == 0 ? "" : $", with {string.Join(", ", beside.Select(a => a.Name))}";

    private static string ByGamma(ModuleArray array) => array.Module.VmpPerK is null ? "; the coefficient of power stands in for that of voltage, which is unknown" : "";

    private static double RatedW(IEnumerable<ModuleArray> arrays) => arrays.Sum(a => a.RatedKwp) * 1000;

    private static double? Sum(IReadOnlyList<ModuleArray> arrays, Func<ModuleArray, double?> of) => arrays.All(a => of(a) is not null) ? arrays.Sum(a => of(a)!.Value) : null;

    /// <summary>Most current that the other strings of the input feed into a faulty one of this array; <see langword="null"/> where one is unknown.</summary>
    private static double? FedA(ModuleArray array, IReadOnlyList<ModuleArray> onInput) =>
        Sum([array, .. onInput], a => a.Module.IscA * a.Strings) - array.Module.IscA is { } others ? Strings.BrightLight * others : null;

    private static FuseNeed FuseOf(ModuleArray array, IReadOnlyList<ModuleArray> onInput)
    {
        var (fed, largest) = (FedA(array, onInput), array.Module.LargestFuseA);
        bool? needed = array.Strings == 1 && onInput.Count == 0 ? false : fed > largest ? true : fed <= largest ? false : null;
        return new FuseNeed(needed, array.Module.IscA is { } isc ? Strings.ConductorA(isc) : null, largest);
    }

    /// <summary>From three strings on, the others can feed more current into a faulty one than its modules bear.</summary>
    private static StringLimit FuseLimit(ModuleArray array, IReadOnlyList<ModuleArray> onInput)
    {
        const string What = "Current that the other strings feed into a faulty one";
        var (fuse, fed) = (FuseOf(array, onInput), FedA(array, onInput));
        if (array.Strings == 1 && onInput.Count == 0) return new(What, 0, fuse.AtMostA, "A", Verdict.WithinTheData, "one string: no other feeds it");
        return (fuse.IsNeeded, fuse.AtLeastA) switch
        {
            (false, _) => new(What, fed, fuse.AtMostA, "A", Verdict.WithinTheData, "no string fuse is needed for the modules' sake"),
            (true, { } least) when least <= fuse.AtMostA => new(What, fed, fuse.AtMostA, "A", Verdict.WithinTheData, string.Create(CultureInfo.InvariantCulture,
                $"a fuse in each string is needed: at least {least:0.0} A (1.25 × 1.25 × Isc), at most {fuse.AtMostA:0.#} A")),
            (true, { } least) => new(What, fed, fuse.AtMostA, "A", Verdict.Fails, string.Create(CultureInfo.InvariantCulture,
                $"a fuse in each string is needed, but {least:0.0} A would be above the {fuse.AtMostA:0.#} A that the module bears")),
            _ => new(What, fed, fuse.AtMostA, "A", Verdict.CannotTell, "short-circuit current or the largest fuse of a module is unknown"),
        };
    }
}
