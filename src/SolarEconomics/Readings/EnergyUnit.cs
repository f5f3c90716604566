namespace SolarEconomics;

/// <summary>Units in which records state energy or power, with the factor to kWh or kW.</summary>
internal sealed record EnergyUnit(string Name, double ToKilo, bool IsPower, bool IsActiveEnergy = true)
{
    private static readonly EnergyUnit[] Known =
    [
        new("kWh", 1, false), new("Wh", 1e-3, false), new("MWh", 1e3, false), new("GWh", 1e6, false),
        new("MJ", 1 / 3.6, false), new("kJ", 1 / 3600.0, false),
        new("W", 1e-3, true), new("kW", 1, true), new("MW", 1e3, true),
        new("kVArh", 0, false, false), new("VArh", 0, false, false), new("kVAh", 0, false, false), new("VAh", 0, false, false),
        new("kVAr", 0, true, false), new("kVA", 0, true, false), new("V", 0, true, false), new("A", 0, true, false),
    ];

    /// <summary>Finds a unit by its name; letters are compared without case where that cannot mix two units up.</summary>
    internal static EnergyUnit? Find(string text) =>
        Array.Find(Known, u => string.Equals(u.Name, text, StringComparison.Ordinal))
        ?? Array.Find(Known, u => string.Equals(u.Name, text, StringComparison.OrdinalIgnoreCase) && u.Name.Length > 1);

    /// <summary>Kilowatt-hours of a number in this unit. Division keeps 1/1000 exact where a product would not.</summary>
    internal double Scale(double number) => ToKilo switch
    {
        1 => number,
        1e-3 => number / 1000.0,
        _ => number * ToKilo,
    };

    internal static IEnumerable<string> Names => Known.Where(u => u.IsActiveEnergy).Select(u => u.Name);
}
