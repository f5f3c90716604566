namespace SolarEconomics;

/// <summary>Voltages and currents of modules in series and parallel, at the ends of the temperature range.</summary>
/// <remarks>Planning aid: see the cautions of <see cref="StringCheck"/>.</remarks>
public static class Strings
{
    /// <summary>Factor on short-circuit current for light above 1,000 W/m²: 1.25.</summary>
    /// <remarks>Source: gen-5.</remarks>
    public const double BrightLight = 1.25;

    /// <summary>Factor on current for conductors and fuses that carry it for hours: 1.25.</summary>
    /// <remarks>Source: gen-5.</remarks>
    public const double Continuous = 1.25;

    // Upper end of each band in °C and its factor, for crystalline silicon; a band ends where the next begins.
    private static readonly (double DownToC, double Factor)[] ColdBands =
    [
        (20, 1.02), (15, 1.04), (10, 1.06), (5, 1.08), (0, 1.10), (-5, 1.12), (-10, 1.14), (-15, 1.16), (-20, 1.18), (-25, 1.20), (-30, 1.21), (-35, 1.23), (-40, 1.25),
    ];

    /// <summary>A voltage at a cell temperature by its coefficient. Unit: V.</summary>
    /// <param name="volts">Voltage at 25 °C, in V. Above 0.</param>
    /// <param name="perK">Change per K as a fraction; −0.28 %/°C is written −0.0028. Range: −0.01 to 0.</param>
    /// <param name="cellC">Cell temperature, in °C. Range: −90 to 120. On a cold clear dawn the cell is as cold as the air.</param>
    /// <remarks>Equation: U = U25 (1 + β (T − 25)). Source: gen-4.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double VoltageAt(double volts, double perK, double cellC) =>
        Require.Within(volts, 0.1, 2000, "V")
        * (1 + (Require.Within(perK, -0.01, 0, "fraction per K; −0.28 %/°C is written −0.0028") * (Require.Within(cellC, -90, 120, "°C") - 25)));

    /// <summary>Factor on open-circuit voltage by table, where only the coldest temperature is known.</summary>
    /// <param name="coldestC">Lowest temperature, in °C. Range: −40 to 60; 25 and above gives 1. Between whole degrees the colder band counts.</param>
    /// <remarks>For crystalline silicon only. Source: gen-6.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Colder than the table reaches: use the coefficient.</exception>
    public static double ColdFactor(double coldestC)
    {
        Require.Within(coldestC, -40, 60, "°C; below −40 °C the table ends: use the module's own coefficient");
        if (coldestC >= 25) return 1;
        return ColdBands.First(band => coldestC >= band.DownToC).Factor;
    }

    /// <summary>Most modules in series whose open-circuit voltage stays within a limit, rounded down; 0 where not even one does.</summary>
    /// <param name="moduleV">Open-circuit voltage of one module at the coldest temperature, in V. Above 0.</param>
    /// <param name="limitV">Limit, in V. Above 0.</param>
    public static int MostInSeries(double moduleV, double limitV) =>
        (int)Math.Floor(Require.Within(limitV, 0.1, 10_000, "V") / Require.Within(moduleV, 0.1, 2000, "V"));

    /// <summary>Current to reckon with from strings in parallel. Equation: 1.25 · Isc · strings. Unit: A.</summary>
    /// <param name="iscA">Short-circuit current of one string, in A. Above 0.</param>
    /// <param name="strings">Strings in parallel, 1 or more.</param>
    public static double CircuitA(double iscA, int strings = 1) =>
        BrightLight * Require.Within(iscA, 0.01, 1000, "A") * Require.Within(strings, 1, 1000, "strings");

    /// <summary>Current that conductor and fuse must carry. Equation: 1.25 · 1.25 · Isc · strings. Unit: A.</summary>
    /// <param name="iscA">Short-circuit current of one string, in A. Above 0.</param>
    /// <param name="strings">Strings in parallel, 1 or more.</param>
    public static double ConductorA(double iscA, int strings = 1) => Continuous * CircuitA(iscA, strings);
}
