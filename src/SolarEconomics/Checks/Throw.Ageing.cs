using System.Globalization;

namespace SolarEconomics;

internal static partial class Throw
{
    internal static ArgumentOutOfRangeException LossAskedBack(double loss) =>
        new(nameof(loss), loss, string.Create(CultureInfo.InvariantCulture,
            $"Found a loss of {loss} a year, which is {loss * 100:0.##} %; expected a fraction from 0 to 0.2. 0.6 % is written 0.006."));
}
