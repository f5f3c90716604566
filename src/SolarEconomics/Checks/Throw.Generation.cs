using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Messages of modules, inverters and generation.</summary>
internal static partial class Throw
{
    internal static ArgumentException BentEfficiency(double atTenth, double atHalf, double atFull) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found efficiencies {atTenth}, {atHalf} and {atFull} at 10, 50 and 100 % load, expected ones that no negative loss would need. Check that they stand in this order."));

    internal static ArgumentException InputsOfArrays(IReadOnlyList<int> found, int arrays, int inputs, string device) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found inputs {string.Join(", ", found)} for {arrays} arrays, expected one for each, from 1 to {inputs}, the inputs of {device}."));

    internal static ArgumentException WeatherColumnLength(string name, int found, int expected) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {Wording.CountInMessage(found, "value")} of {name}, expected one per step: {expected}."));

    internal static ArgumentException WeatherValue(string name, Instant at, double found, double low, double high, string unit) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {name} {found} at {at}, expected {low} to {high} ({unit}). Fill or leave out gaps first; NaN is not weather."));

    internal static ArgumentException DiffuseAboveGlobal(Instant at, double globalWm2, double diffuseWm2) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found diffuse {diffuseWm2} W/m² above global {globalWm2} W/m² at {at}, expected it at or below. Are the two columns swapped, or is one of them beam?"));

    internal static ArgumentException InitialLevels(int found, int perYear) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {found} initial levels, expected {perYear} above 0, one per season of the year."));

    internal static ArgumentException NoInitialLevel(double intercept) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found a line that starts at {intercept:0.###}, expected one above 0: these totals tell nothing about ageing."));

    internal static ArgumentException TooFewYears(int months) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {Wording.CountInMessage(months, "month")}, expected at least 36: a slope with an error needs three whole years."));

    internal static ArgumentException DaysOutOfOrder(LocalDate first, LocalDate second) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {second:uuuu-MM-dd} after {first:uuuu-MM-dd}, expected the next day. A day without a reading stands in the list without a measured value."));

    internal static ArgumentException NotTwelveMonths(int energy, int air) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {energy} means of energy and {air} of air, expected twelve of each, January first."));

    internal static ArgumentException MonthAboveClearSky(int month, double found, double most) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found a mean of {found:0.##} kWh/m² a day in month {month}, expected above 0 and below the {most:0.##} of a clear sky. Is it MJ (divide by 3.6), a month's sum, or the other hemisphere's?"));

    internal static ArgumentException NotGeneration(string name, FlowKind flow) =>
        new($"Found channel \"{name}\" of {flow}, expected generation: a specific yield is what modules make.");

    internal static ArgumentException NoKwp(string device, int days) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found no rated kWp of device \"{device}\" on any of {days} days, expected one above 0. Write ratedKwp of the device in the plant's description."));

    internal static ArgumentException NoMonthTold(string origin) =>
        new($"Found no month that {origin} can tell, expected at least one with 15 whole days.");

    internal static ArgumentException MonthNotReached(int month, double found, double least, double most) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {found:0.#} kWh in month {month} of the record, expected {least:0.#} to {most:0.#}, what the model makes of 0.02 to 3 times the weather's light. Are kWp, plane or hemisphere right, and does the weather cover that month whole?"));

    internal static ArgumentException NoUseTold(string site) =>
        new($"Found no interval of {site} in which import, generation, export and the battery's flows were all read, expected at least one: use is what they leave.");

    internal static ArgumentException NoReference(string place) =>
        new($"Found nothing to judge \"{place}\" by, expected a sister array with 60 whole days in common, or weather: pass LossOptions.Weather.");
}
