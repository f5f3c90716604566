using System.Globalization;

namespace SolarEconomics;

/// <summary>Messages of modules, inverters and generation.</summary>
internal static partial class Throw
{
    internal static ArgumentException BentEfficiency(double atTenth, double atHalf, double atFull) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found efficiencies {atTenth}, {atHalf} and {atFull} at 10, 50 and 100 % load, expected ones that no negative loss would need. Check that they stand in this order."));
}
