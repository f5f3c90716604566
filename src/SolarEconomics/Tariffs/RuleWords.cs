using System.Globalization;

namespace SolarEconomics;

/// <summary>The rules of a bill in sentences that can be read aloud. Numbers are written in invariant form.</summary>
internal static partial class RuleWords
{
    internal static string Unit(ChargePeriod per) => per switch
    {
        ChargePeriod.Day => "day",
        ChargePeriod.Month => "month",
        ChargePeriod.Year => "year",
        _ => "bill",
    };

    internal static string Supply(SupplyCharge supply, decimal quantity, Tariff tariff)
    {
        var unit = Unit(supply.Per);
        return string.Create(CultureInfo.InvariantCulture,
            $"{quantity:0.####} {unit}{(quantity == 1 ? "" : "s")} of {supply.PaysFor} at {supply.Amount} {tariff.Currency} a {unit}{Tax(supply, tariff)}.");
    }

    internal static string Energy(EnergyPart part, EnergyRate rate, decimal quantity, decimal perKwh, Tariff tariff)
    {
        var when = rate.Windows.Count > 0 ? string.Join("; ", rate.Windows)
            : part.Rates.Count == 1 ? "at any hour" : "at all other hours";
        return string.Create(CultureInfo.InvariantCulture,
            $"{quantity:#,0.###} kWh {part.Side.Words()} ({when}) at {perKwh} {tariff.Currency} a kWh{Tax(part, tariff)}.");
    }

    /// <summary>Name of a block on the bill, with its size as the sheet states it.</summary>
    internal static string Block(EnergyRate rate, RateBlocks blocks, int index)
    {
        var until = blocks.Steps[index].UpToKwh;
        var per = blocks.Per switch
        {
            BlockPeriod.Day or BlockPeriod.DaysOfBill => " a day",
            BlockPeriod.Month => " a month",
            BlockPeriod.Quarter => " a quarter",
            BlockPeriod.ThirtyDays => " in 30 days",
            BlockPeriod.Year => " a year",
            BlockPeriod.Season => " a season",
            _ => "",
        };
        if (index == 0) return rate.Name + ", " + (until is null ? "all" : $"first {Kwh(until)}{per}");
        var from = Kwh(blocks.Steps[index - 1].UpToKwh);
        return rate.Name + ", " + (until is null ? $"above {from}{per}" : $"{from} to {Kwh(until)}{per}");
    }

    private static string Kwh(decimal? kwh) => string.Create(CultureInfo.InvariantCulture, $"{kwh:#,0.###} kWh");

    internal static string Rounding(Tariff tariff)
    {
        var mode = tariff.Rounding.Mode switch
        {
            RoundingMode.HalfUp => "half up",
            RoundingMode.HalfEven => "half to even",
            _ => "towards zero",
        };
        var digits = (tariff.Rounding.Digits ?? tariff.Currency.MinorDigits).ToString(CultureInfo.InvariantCulture);
        return tariff.Rounding.Place switch
        {
            RoundingPlace.Line => $"Every line, the tax and the total are rounded {mode} to {digits} digits.",
            RoundingPlace.Bill => $"Only the total is rounded, {mode} to {digits} digits.",
            _ => "Nothing is rounded.",
        };
    }

    internal static string Demand(DemandCharge charge, decimal highestKw, decimal floorKw, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"The highest average over {charge.AveragingMinutes} minutes was {highestKw:0.###} {Unit(charge.Unit)} ({charge.Window}){(floorKw > 0 ? $", charged as at least {floorKw:0.###} {Unit(charge.Unit)}" : "")}{Tax(charge, tariff)}.");

    internal static string Percent(PercentCharge charge, decimal sum, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"{charge.Fraction * 100:0.###} % of {(charge.Of.Count == 0 ? "the charges" : DayWords.And(charge.Of))}, which come to {sum:0.00####} {tariff.Currency}{Tax(charge, tariff)}.");

    internal static string Minimum(decimal least, decimal charges, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"The charges come to {charges:0.00####} {tariff.Currency}; the bill is at least {least:0.00####} {tariff.Currency} before tax.");

    internal static string Tier(BillTier tier, decimal kwh, decimal quantity, decimal rate, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"The whole bill of {kwh:#,0.###} kWh falls into the tier {(tier.UpToKwh is { } end ? $"up to {end:#,0.###} kWh" : "above all others")}: {quantity:#,0.###} at {rate} {tariff.Currency}.");

    internal static string Net(EnergyRate rate, decimal left, decimal import, decimal export, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"{import:#,0.###} kWh taken, {export:#,0.###} kWh sent and the bank of earlier bills leave {left:#,0.###} kWh at {rate.PerKwh} {tariff.Currency} a kWh.");

    internal static string CashOut(decimal kwh, decimal perKwh, Tariff tariff) => string.Create(CultureInfo.InvariantCulture,
        $"{kwh:#,0.###} kWh banked until now are paid out at {perKwh} {tariff.Currency} a kWh, free of tax.");

    internal static string Tax(TariffPart part, Tariff tariff)
    {
        var tax = tariff.TaxOn(part);
        return tax == 0 ? ", free of tax" : string.Create(CultureInfo.InvariantCulture, $", before {tax * 100:0.###} % tax");
    }
}
