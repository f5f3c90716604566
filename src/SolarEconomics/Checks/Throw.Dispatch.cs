using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Messages of the flow model: battery, control, load, generator.</summary>
internal static partial class Throw
{
    internal static ArgumentOutOfRangeException CapacityAskedBack(string name, double value, double most) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture,
            $"Expected kWh from 0 to {most}. A capacity in Wh is divided by 1000 first; one in Ah needs its voltage: Battery.OfAmpHours(ampHours, volts, usableShare)."));

    internal static ArgumentException NoIntervals() => new("Found no interval, expected at least one of a length above zero.");

    internal static ArgumentException StepDoesNotDivide(int year, Duration step) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found a step of {step} for the year {year}, expected one that divides it, such as an hour or five minutes."));

    internal static ArgumentException IntervalsApart(string channel, int interval, LocalDateTime at) =>
        new($"Found interval {interval} of \"{channel}\" at {Local(at)}, expected it to start where the one before ended and to have a length. " +
            "Fill or leave out the gap by name first: a battery's charge is not known across a hole.");

    internal static ArgumentException SeriesLength(string what, int found, int expected) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {Wording.CountInMessage(found, "value")} of {what}, expected one per interval: {expected}."));

    internal static ArgumentException NotAnEnergy(string what, int interval, LocalDateTime at, double found) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {found} kWh of {what} in interval {interval} ({Local(at)}), expected a number of 0 or more. A gap is filled by a named rule first; 0 would be a guess."));

    internal static ArgumentException NotAValue(string what, int interval, LocalDateTime at, double found, double low, double high, string orElse) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {found} as {what} in interval {interval} ({Local(at)}), expected a number from {low} to {high}{orElse}."));

    internal static ArgumentException UsableAboveNameplate(double usableKwh, double nameplateKwh) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {nameof(Battery.UsableKwh)} {usableKwh} kWh above {nameof(Battery.NameplateKwh)} {nameplateKwh} kWh, expected at most the nameplate. Data sheets give both; leave the nameplate at 0 where it is not known."));

    internal static ArgumentException TwoDevicesOfAnArray(ArraySupply array, SharedInverter inverter) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found array \"{array.Name}\" behind the shared inverter \"{inverter.Name}\" with coupling {array.Coupling}, efficiency {array.Efficiency} and a limit of {array.MostKw} kW, ") +
            "expected coupling Ac and neither efficiency nor limit of its own: the inverter's type has both.");

    internal static ArgumentException TwoTypesOfAnInverter(SharedInverter inverter, InverterType first) =>
        new($"Found the shared inverter \"{inverter.Name}\" as type \"{inverter.Type.Name}\" and as type \"{first.Name}\", expected one type per inverter. Give the second inverter another name, or both arrays the same one.");

    internal static ArgumentException UpsideDownTemperatures(string field, double fromC, double untilC) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found temperature limits with {field} {fromC} °C and {nameof(TemperatureLimits.UntilC)} {untilC} °C, expected the lower limit first: {nameof(TemperatureLimits)}(0, -10, 45) charges from 0 °C, discharges from -10 °C and rests above 45 °C."));

    internal static ArgumentException StoreOutsideBattery(string field, double found, double usableKwh) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {field} {found} kWh, expected 0 to the usable {usableKwh} kWh of the battery."));

    internal static ImpossibleOrderException ImpossibleOrder(string control, string field, int interval, LocalDateTime at, double found, double most, string because) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Control \"{control}\" ordered {field} {found:0.######} in interval {interval} ({Local(at)}), expected {(double.IsPositiveInfinity(most) ? "0 or more" : most > 0 ? string.Create(CultureInfo.InvariantCulture, $"0 to {most:0.######}") : "0")} kWh: ") + (
                found > most ? $"{because}. Take the smaller of the wish and what Situation allows."
                : double.IsNaN(found) ? "it is no number. See what it was worked out from."
                : $"an order is never negative. What goes out of the battery is its {nameof(Order.DischargeKwh)}."),
            field, interval);

    internal static ImpossibleOrderException BothWays(string control, int interval, LocalDateTime at, double chargeKwh, double dischargeKwh) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Control \"{control}\" ordered to charge {chargeKwh:0.######} and discharge {dischargeKwh:0.######} kWh in interval {interval} ({Local(at)}), expected one of them: doing both burns energy."),
            nameof(Order.DischargeKwh), interval);

    internal static ArgumentException StopBelowStart(double start, double stop) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found a generator that starts below {start} and stops above {stop} of a full battery, expected the stop level at or above the start level: it would stop as it starts."));

    internal static ArgumentException ProfileWeights(string name, int found) =>
        new($"Found {found} weights in the profile \"{name}\", expected 24 numbers of 0 or more for each kind of day, one per local hour, and one of them above 0.");

    internal static ArgumentException NotTwelve(string what, int found) => new($"Found {found} {what}, expected 12, January first.");

    internal static ArgumentException MonthNotAnEnergy(double found) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {found} kWh as the use of a month, expected a number of 0 or more."));

    internal static ArgumentException MissingLoad(string channel, int interval, LocalDateTime at) =>
        new($"Found no value of \"{channel}\" in interval {interval} ({Local(at)}), expected one in every interval of a load. Fill it by a named rule first, or take a span without gaps.");

    internal static InvalidOperationException NoPrices() =>
        new("Found neither a price of import nor a generator, expected one of them: without it a kWh displaces nothing that has a price. Give the conditions a tariff with PricedBy.");

    internal static ArgumentException NotInASweep(string what) =>
        new($"Found {what} in a sweep, expected one battery under self-consumption behind AC-coupled arrays and an unlimited connection. EnergySystem.Run knows the rest.");

    internal static InvalidOperationException NoPricesToShift() =>
        new("Found no price of import, expected one in every interval: time-of-use shifting buys by price. Give the conditions a tariff with PricedBy.");

    private static string Local(LocalDateTime at) => at.ToString("d MMM uuuu, HH:mm", CultureInfo.InvariantCulture);
}
