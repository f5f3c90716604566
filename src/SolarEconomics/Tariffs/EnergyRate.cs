namespace SolarEconomics;

/// <summary>A price per kWh and when it applies.</summary>
/// <param name="Name">Name on the bill, for example <c>evening peak</c>.</param>
/// <param name="PerKwh">Price before tax, in the tariff's currency per kWh.</param>
/// <param name="Windows">When it applies; empty means all hours that no other rate of the part claims.</param>
public sealed record EnergyRate(string Name, decimal PerKwh, IReadOnlyList<RateWindow> Windows)
{
    /// <summary>A rate for all hours.</summary>
    /// <param name="name">Name on the bill.</param>
    /// <param name="perKwh">Price before tax, per kWh.</param>
    public static EnergyRate Flat(string name, decimal perKwh) => new(name, perKwh, []);

    /// <summary>Whether the rate takes the hours that no other rate claims.</summary>
    public bool IsOtherwise => Windows.Count == 0;
}
