namespace SolarEconomics;

/// <summary>How modules shed heat: the two constants of air + G / (u0 + u1 · wind).</summary>
/// <param name="Name">What it is called.</param>
/// <param name="U0">Heat shed without wind. Unit: W/(m² K). Range: above 0.</param>
/// <param name="U1">Heat shed more per m/s of wind. Unit: W s/(m³ K). Range: 0 or more.</param>
/// <remarks>Source: gen-1 for the open rack; the others are common practice, no source.</remarks>
public sealed record Mounting(string Name, double U0, double U1)
{
    /// <summary>In the open, air behind: 25 and 6.84.</summary>
    public static Mounting OpenRack { get; } = new("open rack", 25, 6.84);

    /// <summary>By a data sheet's NOCT, which leaves wind out: 800 / (NOCT − 20) and 0.</summary>
    /// <param name="noctC">Cell temperature at 800 W/m² and 20 °C, in °C. Range: 35 to 60.</param>
    /// <remarks>Equation: air + G / u0 = air + (NOCT − 20) · G / 800. Source: gen-4.</remarks>
    public static Mounting OfNoct(double noctC) =>
        new(FormattableString.Invariant($"NOCT of {noctC:0.#} °C"), 800 / (Require.Within(noctC, 35, 60, "°C at 800 W/m² and 20 °C air") - 20), 0);

    /// <summary>On a roof, a hand's breadth of air behind: 20 and 4.5.</summary>
    public static Mounting OnRoof { get; } = new("on a roof with air behind", 20, 4.5);

    /// <summary>In the roof or against a wall, no air behind: 16 and 2.</summary>
    public static Mounting Insulated { get; } = new("insulated back", 16, 2);
}
