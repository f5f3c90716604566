namespace SolarEconomics;

/// <summary>Temperature of the cells by sun, air and wind. Unit: °C.</summary>
public static class CellTemperature
{
    /// <summary>By the heat a module sheds: the form of the module energy standard, and the one that the yearly model uses.</summary>
    /// <param name="planeWm2">Light on the plane, in W/m². Range: 0 to 2,000.</param>
    /// <param name="airC">Air, in °C. Range: −90 to 70.</param>
    /// <param name="windMs">Wind at the modules, in m/s. Range: 0 to 60.</param>
    /// <param name="mounting">How the modules shed heat.</param>
    /// <remarks>Equation: air + G / (u0 + u1 · wind). Source: gen-1.</remarks>
    public static double ByHeatShed(double planeWm2, double airC, double windMs, Mounting mounting)
    {
        ArgumentNullException.ThrowIfNull(mounting);
        Checked(planeWm2, airC, windMs);
        return airC + (planeWm2 / (mounting.U0 + (mounting.U1 * windMs)));
    }

    /// <summary>By the temperature of the back and the step from back to cell.</summary>
    /// <param name="planeWm2">Light on the plane, in W/m². Range: 0 to 2,000.</param>
    /// <param name="airC">Air, in °C. Range: −90 to 70.</param>
    /// <param name="windMs">Wind at 10 m, in m/s. Range: 0 to 60.</param>
    /// <param name="back">Constants of the mounting.</param>
    /// <remarks>Equation: back = G exp(a + b · wind) + air; cell = back + ΔT · G / 1000. Source: gen-3.</remarks>
    public static double ByBack(double planeWm2, double airC, double windMs, BackTemperature back)
    {
        ArgumentNullException.ThrowIfNull(back);
        return back.At(planeWm2, airC, windMs) + (back.CellAboveBackK * planeWm2 / 1000);
    }

    /// <summary>By the data sheet's NOCT: without wind, so right for about 1 m/s.</summary>
    /// <param name="planeWm2">Light on the plane, in W/m². Range: 0 to 2,000.</param>
    /// <param name="airC">Air, in °C. Range: −90 to 70.</param>
    /// <param name="noctC">Cell temperature at 800 W/m² and 20 °C, in °C. Range: 35 to 60.</param>
    /// <remarks>Equation: air + (NOCT − 20) · G / 800. Source: gen-4.</remarks>
    public static double ByNoct(double planeWm2, double airC, double noctC)
    {
        Checked(planeWm2, airC, 0);
        return airC + ((Require.Within(noctC, 35, 60, "°C at 800 W/m² and 20 °C air") - 20) * planeWm2 / 800);
    }

    /// <summary>Power of a module at a cell temperature and light, by its rating. Unit: W; never below 0.</summary>
    /// <param name="module">Type of the module.</param>
    /// <param name="planeWm2">Light on the plane, in W/m². Range: 0 to 2,000.</param>
    /// <param name="cellC">Cell temperature, in °C.</param>
    /// <remarks>Equation: P = rated · G/1000 · (1 + γ (cell − 25)). Source: gen-4.</remarks>
    public static double PowerW(ModuleType module, double planeWm2, double cellC)
    {
        ArgumentNullException.ThrowIfNull(module);
        return Math.Max(0, module.RatedW * planeWm2 / 1000 * (1 + (module.PowerPerK * (Require.Finite(cellC) - 25))));
    }

    internal static void Checked(double planeWm2, double airC, double windMs)
    {
        Require.Within(planeWm2, 0, 2000, "W/m²");
        Require.Within(airC, -90, 70, "°C");
        Require.Within(windMs, 0, 60, "m/s; km/h are divided by 3.6");
    }
}
