using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Messages of runs over years and of the logs of battery and generator.</summary>
internal static partial class Throw
{
    internal static ArgumentException NotAYear(double days) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found conditions of {days:0.#} days, expected a year of 365 or 366: each further year repeats it, and ageing goes by years."));

    internal static UnknownNameException NoSuchArray(string name, IEnumerable<string> known) =>
        new($"Found array \"{name}\", expected one of the conditions: {Nearest.List(name, known)}.");

    internal static InvalidOperationException TooFewTests(int count) =>
        new($"Found {count} capacity tests, expected at least three over half a year: fewer tell no fade. Until then use the maker's figures and say so.");

    internal static InvalidOperationException NotACapacity(LocalDate date, double found) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found a capacity test of {found} kWh on {date:uuuu-MM-dd}, expected above 0 and below 1000. Is it Wh or Ah?"));

    internal static ArgumentException FuelLinesSwapped() =>
        new("Found a thirsty fuel line that gives more kWh for the same litres than the sparing one, expected it to give less. Are the two swapped?");

    internal static ArgumentException FuelDoesNotFit(LocalDate date, double litres, double hours, double least, double most) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {litres:0.##} litres in {hours:0.##} hours on {date:uuuu-MM-dd}, expected {least:0.##} to {most:0.##} by the fuel lines. Check litres, hours and the rated power."));
}
