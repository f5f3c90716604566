using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Messages of what can never be: powers that were watts, hours of no length, limits that leave nothing to do.</summary>
internal static partial class Throw
{
    internal static ArgumentOutOfRangeException PowerAskedBack(string name, double value, double low, string orElse) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"Expected a power from {low} to {Require.MostKw} kW{orElse}; 4,500 W is written 4.5."));

    internal static ArgumentException HoursOfNoLength(string name) =>
        new("Found hours of no length, expected a start and an end, such as HourSpan.Parse(\"22:00-06:00\"), or HourSpan.WholeDay.", name);

    internal static ArgumentException HoursBetweenStarts(DeferrableLoad load, int interval, LocalDateTime at, double hours) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found load \"{load.Name}\" with the hours {load.Between} inside interval {interval} ({Local(at)}, {hours:0.##} h long), expected an interval that starts in them: ") +
            "the load would never run. Take shorter intervals, or longer hours.");

    internal static ArgumentException NoLoadParts() => new("Found a load of no part, expected at least one; a home that uses nothing has a part of zeros.");

    internal static ArgumentException GridOfNothing() =>
        new($"Found a connection with {nameof(GridConnection.MostImportKw)} 0, {nameof(GridConnection.MostExportKw)} 0 and {nameof(GridConnection.RunsInOutages)} false, " +
            $"expected something that it allows: the plant would be switched off all the time. Off-grid is written {nameof(GridConnection)}.{nameof(GridConnection.None)}.");

    internal static ArgumentException TwoArraysOfAName(string name) =>
        new($"Found two arrays named \"{name}\", expected a name of its own for each: ages and renewals go by name, and an array listed twice would count twice.");

    internal static ArgumentException AlwaysQuiet(Generator generator) =>
        new($"Found quiet hours {string.Join(", ", generator.QuietHours)}, expected some time of day outside them: the generator could never run. Leave it out to see the plant without it.");

    internal static ArgumentException NeverWithinTemperatures(TemperatureLimits limits, LocalDateTime at, double firstC, double lowC, double highC) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found temperatures of the battery from {lowC:0.#} to {highC:0.#} °C, {firstC:0.#} °C in interval 0 ({Local(at)}), expected some within its limits, ") +
            string.Create(CultureInfo.InvariantCulture,
            $"{limits.ChargeFromC:0.#} to {limits.UntilC:0.#} °C to charge and {limits.DischargeFromC:0.#} to {limits.UntilC:0.#} °C to discharge: it would rest all the time. 77 °F is 25 °C."));

    internal static ControlFailedException ControlFailed(string control, int interval, LocalDateTime at, Exception fault) =>
        new($"Control \"{control}\" failed in interval {interval} ({Local(at)}): found {fault.GetType().Name}, \"{fault.Message}\", expected an order. See what it reads and divides by then.", interval, fault);

    internal static ArgumentException FuelFromNothing(FuelLine fuel, double litresPerKwh, double least) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found a fuel line of {fuel.IdleLitresPerHourPerKw} L/h per kW and {fuel.LitresPerKwh} L/kWh, {litresPerKwh:0.####} litres per kWh at full load, expected {least} or more: ") +
            "a litre of diesel holds about 10.7 kWh of heat. Small sets burn 0.3 to 0.5 litres per kWh.", nameof(Generator.Fuel));

    internal static ArgumentException NothingLeftInCold(double cellC, double lossPerKelvin, double ratedC) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found a bank at {cellC} °C that loses {lossPerKelvin} of its capacity per kelvin below {ratedC} °C, expected something left of it: nothing is. Check both."));

    internal static ArgumentOutOfRangeException SlowerThanPeukert(string name, double amps, double hours, double mostHours) =>
        new(name, amps, string.Create(CultureInfo.InvariantCulture,
            $"Expected a current that empties the bank within {mostHours} h: at {amps} A Peukert's law gives {hours:0} h and far more energy than any bank holds. Give the current of its usual work, not its mean over days."));

    internal static ArgumentException SweepNeedsAYear(double days, int years) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found conditions of {days:0.#} days in a sweep over {years} years, expected a year of 365 or 366 days: each further year repeats it, and ageing, growth and discounting go by years."));

    internal static ArgumentException NoConditionsOfYear(int year) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found nothing as the conditions of year {year}, expected {nameof(YearsAhead.Change)} to return the conditions it was given or changed ones."));
}
