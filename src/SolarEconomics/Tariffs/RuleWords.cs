using System.Globalization;

namespace SolarEconomics;

/// <summary>The rules of a bill in sentences that can be read aloud. Numbers are written in invariant form.</summary>
internal static class RuleWords
{
    internal static string Unit(ChargePeriod per) => per switch
    {
        ChargePeriod.Day => "day",
        ChargePeriod.Month => "month",
        _ => "year",
    };

    internal static string Supply(SupplyCharge supply, decimal quantity, Tariff tariff)
    {
        var unit = Unit(supply.Per);
        return string.Create(CultureInfo.InvariantCulture,
            $"{quantity:0.####} {unit}{(quantity == 1 ? "" : "s")} of being connected at {supply.Amount} {tariff.Currency} a {unit}{Tax(supply, tariff)}.");
    }

    internal static string Energy(EnergyPart part, EnergyRate rate, decimal quantity, Tariff tariff)
    {
        var when = rate.Windows.Count > 0 ? string.Join("; ", rate.Windows)
            : part.Rates.Count == 1 ? "at any hour" : "at all other hours";
        var what = part.Side == EnergySide.Import ? "taken from" : "sent to";
        return string.Create(CultureInfo.InvariantCulture,
            $"{quantity:#,0.###} kWh {what} the grid ({when}) at {rate.PerKwh} {tariff.Currency} a kWh{Tax(part, tariff)}.");
    }

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

    private static string Tax(TariffPart part, Tariff tariff)
    {
        var tax = tariff.TaxOn(part);
        return tax == 0 ? ", free of tax" : string.Create(CultureInfo.InvariantCulture, $", before {tax * 100:0.###} % tax");
    }
}
