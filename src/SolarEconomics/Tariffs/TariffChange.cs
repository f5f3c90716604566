using NodaTime;

namespace SolarEconomics;

/// <summary>Where the difference between two tariffs comes from: fixed charges, each rate of the first one's import, and what is paid for export.</summary>
/// <param name="Parts">Each part with what the second tariff saves on it, tax included, before rounding; largest first. What belongs to no single kWh stands under the rest.</param>
/// <param name="Saved">What the second tariff saves in all.</param>
public sealed record TariffChange(IReadOnlyList<TariffChangePart> Parts, Money Saved)
{
    /// <summary>Name of the part that saves most; <see langword="null"/> where none saves anything.</summary>
    public string? Main => Parts.Count > 0 && Parts[0].Saved.Amount > 0 ? Parts[0].Name : null;

    internal static TariffChange Between(TariffChoice from, TariffChoice to, BilledReadings readings, DateTimeZone zone, IReadOnlyList<string> conditionsMet)
    {
        var options = new BillingOptions { BillingZone = readings.BillingZone, Periods = [readings.Days], ConditionsMet = conditionsMet };
        BillingPlan Plan(TariffChoice choice) => TariffHistory.Of(choice.Tariffs.OnlyLatest().Latest.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere)).On(readings.Grid, zone, options);
        var (before, after) = (Plan(from), Plan(to));
        var (old, other) = (before.Bills(readings.Energy)[0], after.Bills(readings.Energy)[0]);
        var currency = from.Tariffs.Currency;
        var saved = new Dictionary<string, double>(StringComparer.Ordinal);
        var rates = before.ImportRates();
        for (var i = 0; i < readings.Grid.Count; i++)
        {
            var import = readings.Energy.ImportKwh[i] * (before.ImportPricePerKwhWithTax(i) - after.ImportPricePerKwhWithTax(i));
            saved[rates[i]] = saved.GetValueOrDefault(rates[i]) + import;
            saved["export"] = saved.GetValueOrDefault("export") + (readings.Energy.ExportKwh[i] * (after.ExportPricePerKwh(i) - before.ExportPricePerKwh(i)));
        }
        saved["fixed charges"] = (double)(Fixed(old) - Fixed(other));
        var all = (old.Total - other.Total).Amount;
        saved["the rest"] = (double)all - saved.Values.Sum();
        return new TariffChange([.. saved.Where(s => Math.Abs(s.Value) >= 0.005).OrderByDescending(s => s.Value).ThenBy(s => s.Key, StringComparer.Ordinal)
            .Select(s => new TariffChangePart(s.Key, Money.Nominal(Math.Round((decimal)s.Value, currency.MinorDigits), currency)))],
            Money.Nominal(Math.Round(all, currency.MinorDigits), currency));
    }

    private static decimal Fixed(Bill bill) => bill.Lines.Where(l => l.Unit is "day" or "month" or "year" or "bill").Sum(l => l.Amount.Amount + l.Tax.Amount);
}
