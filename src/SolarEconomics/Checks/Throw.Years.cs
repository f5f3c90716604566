using System.Globalization;

namespace SolarEconomics;

/// <summary>Messages of runs over years.</summary>
internal static partial class Throw
{
    internal static ArgumentException NotAYear(double days) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found conditions of {days:0.#} days, expected a year of 365 or 366: each further year repeats it, and ageing goes by years."));

    internal static ArgumentException TariffNeedsOneLength(NodaTime.LocalDateTime at, double hours, double expected) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"{at:uuuu-MM-dd HH:mm}: found an interval of {hours:0.####} h, expected {expected:0.####} h as the first: a tariff over years is laid on intervals of one length. Lay prices on the conditions instead."));

    internal static UnknownNameException NoSuchArray(string name, IEnumerable<string> known) =>
        new($"Found array \"{name}\", expected one of the conditions: {Nearest.List(name, known)}.");
}
