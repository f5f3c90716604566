using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of a change.</summary>
internal static class UpgradeWords
{
    internal static Finding Say(UpgradeResult r, Outlook outlook, CultureInfo culture)
    {
        var a = outlook.Assumptions;
        var isWorthIt = r.Npv.Amount >= 0;
        var figure = $"{Wording.Signed(r.Npv, culture)}";
        var payback = r.PaybackYears is { } years ? $"It pays for itself in {Wording.Years(years, culture)}." : "It does not pay for itself within the horizon.";
        var words = $"is what the change is worth today, at {Wording.Percent(a.DiscountRate, culture)} a year: " +
            (isWorthIt ? "worth its price on these assumptions. " : "not worth its price on these assumptions. ") + payback +
            $" {r.OldKwp.ToString("0.00", culture)} kWp become {r.Swap.NewKwp.ToString("0.00", culture)} kWp ({Wording.Percent((r.Swap.NewKwp / r.OldKwp) - 1, culture)} more);" +
            $" {Wording.Kwh(r.ExtraKwhPerYear, culture)} more a year, {Wording.Percent(r.ExtraUsedShare, culture)} of them used on site, worth {Wording.Whole(r.FirstYearValue, culture)} in the first year.";
        return new Finding(figure, words)
        {
            Tables =
            [
                new FindingTable($"If the extra energy goes another way ({r.Npv.Currency})", ["Extra energy", "First year", "Net present value"],
                [
                    ["all exported", Wording.Whole(r.FirstYearRange.Low, culture), Wording.Signed(r.NpvRange.Low, culture)],
                    ["as in the records' hours", Wording.Whole(r.FirstYearValue, culture), Wording.Signed(r.Npv, culture)],
                    ["all used on site", Wording.Whole(r.FirstYearRange.High!.Value, culture), Wording.Signed(r.NpvRange.High!.Value, culture)],
                ]),
            ],
            Notes =
            [
                "The difference of two futures: money already spent is left out.",
                $"Cost {Wording.Whole(Money.Nominal(r.Swap.Cost, r.Npv.Currency), culture)}; the old modules: {Old(r, culture)}.",
                r.Swap.InverterKw is { } kw
                    ? $"Cut at the inverter's {kw.ToString("0.0", culture)} kW; within an interval more is clipped than its mean shows."
                    : "No inverter limit is stated: clipping is left out, so the gain is an upper estimate where the inverter is small.",
                "The new modules yield what the old ones did per kWp, outages included; the battery is left as recorded, so the share used is a lower estimate.",
            ],
            Cautions = [Cautions.Panels, Cautions.Money],
        };
    }

    private static string Old(UpgradeResult r, CultureInfo culture)
    {
        var displaced = r.Swap.Displaced;
        var money = Wording.Whole(Money.Nominal(Math.Abs(displaced.Received), r.Npv.Currency), culture);
        return displaced.Device is { } device ? $"reused at {device} at {Wording.Percent(displaced.ConditionShare, culture)} of their rating, fitted for {money}"
            : displaced.Received > 0 ? $"sold for {money}"
            : displaced.Received < 0 ? $"taken away for {money}"
            : "kept as spares";
    }
}
