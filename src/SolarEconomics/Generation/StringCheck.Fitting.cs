namespace SolarEconomics;

/// <summary>Which ways of wiring so many modules fit.</summary>
public sealed partial class StringCheck
{
    /// <summary>All ways of wiring up to so many modules on one input that break no limit, the one that fits best first.</summary>
    /// <param name="module">Type of the modules.</param>
    /// <param name="modules">Modules at hand. Range: 1 to 1,000.</param>
    /// <param name="inverter">Type of the inverter.</param>
    /// <param name="site">Temperatures of the place.</param>
    /// <param name="plane">How the modules would be laid. Default: level; it changes no limit.</param>
    /// <param name="input">Input of the device, counted from 1. Default: 1.</param>
    /// <remarks>Best: first those whose every limit could be told, then most modules, then no power left unused, then fewest strings, as fewer need fewer fuses.</remarks>
    public static IReadOnlyList<StringCheck> Fitting(ModuleType module, int modules, InverterType inverter, StringSite site, Plane plane = default, int input = 1) =>
        Fitting(module, modules, array => On(array, inverter, site, input), plane);

    /// <summary>All ways of wiring up to so many modules on one controller that break no limit, the one that fits best first.</summary>
    /// <param name="module">Type of the modules.</param>
    /// <param name="modules">Modules at hand. Range: 1 to 1,000.</param>
    /// <param name="controller">Type of the controller.</param>
    /// <param name="site">Temperatures of the place, and the battery's voltages.</param>
    /// <param name="plane">How the modules would be laid. Default: level; it changes no limit.</param>
    /// <param name="input">Input of the device, counted from 1. Default: 1.</param>
    /// <remarks>Ordered as for an inverter.</remarks>
    public static IReadOnlyList<StringCheck> Fitting(ModuleType module, int modules, ControllerType controller, StringSite site, Plane plane = default, int input = 1) =>
        Fitting(module, modules, array => On(array, controller, site, input), plane);

    private static IReadOnlyList<StringCheck> Fitting(ModuleType module, int modules, Func<ModuleArray, StringCheck> check, Plane plane)
    {
        ArgumentNullException.ThrowIfNull(module);
        var atHand = (int)Require.Within(modules, 1, 1000, "modules");
        var ways =
            from inSeries in Enumerable.Range(1, Math.Min(100, atHand))
            from strings in Enumerable.Range(1, atHand / inSeries)
            let found = check(new ModuleArray(module.Name, module, inSeries, strings, plane))
            where found.Verdict != Verdict.Fails
            orderby found.Verdict == Verdict.CannotTell, found.Array.Count descending, found.Verdict == Verdict.LeavesPowerUnused, strings
            select found;
        return [.. ways];
    }
}
