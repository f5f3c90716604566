using System.Globalization;

namespace SolarEconomics;

/// <content>The rules of parts that few tariffs have.</content>
internal static partial class RuleWords
{
    internal static string Unit(DemandUnit unit) => unit == DemandUnit.Kilowatt ? "kW" : "kVA";

    internal static string Unit(ConnectionUnit unit) => unit switch { ConnectionUnit.Ampere => "A", ConnectionUnit.KilovoltAmpere => "kVA", _ => "kW" };

    internal static string Step(DemandCharge charge, int index)
    {
        var (from, until) = (index == 0 ? 0 : charge.Steps[index - 1].UpTo, charge.Steps[index].UpTo);
        return until is null
            ? string.Create(CultureInfo.InvariantCulture, $"{charge.Name}, above {from:0.###} {Unit(charge.Unit)}")
            : string.Create(CultureInfo.InvariantCulture, $"{charge.Name}, {from:0.###} to {until:0.###} {Unit(charge.Unit)}");
    }

    internal static string Connection(ConnectionCharge charge, SegmentContext context) => string.Create(CultureInfo.InvariantCulture,
        $"A connection of {charge.Size:0.###} {Unit(charge.Unit)} at {charge.PerUnit} {context.Tariff.Currency} for each {Unit(charge.Unit)} a {Unit(charge.Per)}{Tax(charge, context.Tariff)}.");

    internal static string Series(SeriesPrice part, decimal kwh, decimal mean, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"{kwh:#,0.###} kWh {part.Side.Words()} at the prices of {part.Prices.Name}, {mean:0.######} {tariff.Currency} a kWh in the mean{Limits(part)}{Tax(part, tariff)}.");

    internal static string Event(EventCharge part, decimal kwh, SegmentContext context) => string.Create(CultureInfo.InvariantCulture,
        $"{kwh:#,0.###} kWh {part.Side.Words()} in the called hours ({DayWords.And([.. part.Hours.Select(h => h.ToString())])}) at {part.PerKwh} {context.Tariff.Currency} a kWh on top{Tax(part, context.Tariff)}.");

    internal static string Rebate(EventRebate part, decimal kwh, int days, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"{kwh:#,0.###} kWh less than the mean of up to {part.BaselineDays} earlier days in the called hours of {days} day{(days == 1 ? "" : "s")}, at {part.PerKwh} {tariff.Currency} a kWh{Tax(part, tariff)}.");

    internal static string Reactive(ReactiveCharge charge, decimal kvarh, decimal kwh, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"{kvarh:#,0.###} kvarh of reactive energy; {charge.FreeShare * 100:0.###} % of the {kwh:#,0.###} kWh taken is free, the rest costs {charge.PerKvarh} {tariff.Currency} a kvarh{Tax(charge, tariff)}.");

    internal static string PowerFactor(PowerFactorCharge charge, decimal factor, decimal sum, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"The mean power factor was {factor:0.00##}; for each hundredth below {charge.Least:0.00##}, {charge.FractionPerHundredth * 100:0.###} % of lines of {sum:0.00####} {tariff.Currency}{Tax(charge, tariff)}.");

    internal static string CreditLimit(decimal credit, decimal most, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"The credits come to {credit:0.00####} {tariff.Currency}; at most {most:0.00####} {tariff.Currency} are given.");

    internal static string CreditKept(CreditKept credit, decimal left, decimal carried, Tariff tariff) => credit.IsCarried
        ? string.Create(CultureInfo.InvariantCulture, $"The bill would be {left:0.00} {tariff.Currency} below zero, which is kept for later bills: {carried:0.00} {tariff.Currency} by now.")
        : string.Create(CultureInfo.InvariantCulture, $"The bill would be {left:0.00} {tariff.Currency} below zero, which is not paid out.");

    internal static string CreditUsed(decimal used, decimal carried, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"{used:0.00} {tariff.Currency} of credit from earlier bills; {carried:0.00} {tariff.Currency} remain.");

    private static string Limits(SeriesPrice part) => (part.FloorPerKwh, part.CapPerKwh) switch
    {
        (null, null) => "",
        ({ } floor, null) => string.Create(CultureInfo.InvariantCulture, $", never below {floor}"),
        (null, { } cap) => string.Create(CultureInfo.InvariantCulture, $", never above {cap}"),
        ({ } floor, { } cap) => string.Create(CultureInfo.InvariantCulture, $", never below {floor} nor above {cap}"),
    };
}
