using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>All that was read of a plan, part by part, or how it was refused: for results held word for word.</summary>
internal sealed class ToldPlan(string text) : IFinding
{
    public Finding Say(CultureInfo culture)
    {
        var path = TestFiles.Write(text);
        try
        {
            var plan = TariffHistory.Load(path);
            var tariff = plan.Latest;
            return new Finding(tariff.Name, $"clock {tariff.Zone?.Id ?? "of the home"}, place {plan.PlaceZone?.Id ?? "unknown"}, {tariff.Holidays.Days.Count} holidays, for {tariff.Needs}{(tariff.IsClosedToNew ? ", closed to new homes" : "")}"
                + FormattableString.Invariant($", {tariff.Currency}, tax {tariff.Tax}, rounded {tariff.Rounding.Mode} each {tariff.Rounding.Place} to {tariff.Rounding.Digits?.ToString(CultureInfo.InvariantCulture) ?? "its coins"}, nets in {tariff.NetsWithinMinutes} minutes, {tariff.EnergyAtChange}, buys and sells all: {tariff.IsBuyAllSellAll}, {plan.Versions.Count} versions from {plan.Versions[0].From:uuuu-MM-dd}"))
            {
                Tables =
                [
                    new FindingTable("seasons", ["name", "from", "until"], [.. tariff.Seasons.Select(s => (IReadOnlyList<string>)[s.Name, Date(s.From), Date(s.Until)])]),
                    new FindingTable("parts", ["part", "what"], [.. tariff.Parts.SelectMany(Rows)]),
                ],
                Notes = plan.Unpriced,
            };
        }
        catch (Exception refusal) when (refusal is RecordException or TariffException)
        {
            return new Finding(refusal.GetType().Name, refusal.Message.Replace(path, "PLAN", StringComparison.Ordinal));
        }
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(TariffPart part) => part switch
    {
        EnergyPart energy => energy.Rates.Select(r => (IReadOnlyList<string>)[$"{energy.Name} ({energy.Side})", Rate(r) + Quantity(energy)]),
        SupplyCharge supply => [[supply.Name, FormattableString.Invariant($"{supply.Amount:0.####} a {supply.Per}, season {supply.Season ?? "none"}, for {supply.PaysFor}{(supply.OnlyWithControlledLoad ? ", only with a controlled load" : "")}")]],
        DemandCharge d => [[d.Name, FormattableString.Invariant($"{d.PerKw} a {d.Unit} and {d.Per}, at least {d.MinimumKw}{(d.EachDay ? ", each day" : "")}{(d.EachMonth ? ", each month" : "")}, {Window(d.Window)}")]],
        PercentCharge share => [[share.Name, FormattableString.Invariant($"{share.Fraction} of {(share.Of.Count == 0 ? "all" : string.Join(" and ", share.Of))}, if {share.Condition ?? "always"}")]],
        ConnectionCharge c => [[c.Name, FormattableString.Invariant($"{c.PerUnit} a {c.Unit} of {c.Size} and {c.Per}")]],
        EventCharge e => [[e.Name, FormattableString.Invariant($"{e.PerKwh} on {Days(e.Days)} in {string.Join(" ", e.Hours)}")]],
        EventRebate e => [[e.Name, FormattableString.Invariant($"{e.PerKwh} on {Days(e.Days)} in {string.Join(" ", e.Hours)} against {e.BaselineDays} days, tax {e.TaxFraction}")]],
        SeriesPrice s => [[s.Name, FormattableString.Invariant($"{s.Side} {s.Prices.Name} times {s.Factor} and {s.AddPerKwh}, {s.FloorPerKwh} to {s.CapPerKwh}, tax {s.TaxFraction}")]],
        TieredCharge t => t.Tiers.Select(tier => (IReadOnlyList<string>)[$"{t.Name} a {t.Per}", FormattableString.Invariant($"to {tier.UpToKwh?.ToString(CultureInfo.InvariantCulture) ?? "the end"}: {tier.Fixed} and {Steps(tier.Steps)}")]),
        NetMetering n => n.Rates.Select(r => (IReadOnlyList<string>)[n.Name, FormattableString.Invariant($"{Rate(r)}, settled in month {n.SettlesInMonth}, {n.CashOutPerKwh} a kWh left, kept {n.ExpiresAfterMonths} months")]),
        CreditLimit c => [[c.Name, FormattableString.Invariant($"at most {c.Amount} a {c.Per} of {string.Join(" and ", c.Of)}")]],
        PowerFactorCharge f => [[f.Name, FormattableString.Invariant($"{f.FractionPerHundredth} for each hundredth below {f.Least} of {string.Join(" and ", f.Of)}")]],
        _ => [[part.Name, part.ToString()]],
    };

    private static string Rate(EnergyRate rate) => FormattableString.Invariant($"{rate.Name} {rate.PerKwh}")
        + (rate.Blocks is { } blocks ? " in blocks a " + blocks.Per + ": " + Steps(blocks.Steps) + (blocks.RunsOn ? ", running on" : "") : "")
        + (rate.IsOtherwise ? ", other hours" : ", " + string.Join(" and ", rate.Windows.Select(Window)));

    private static string Quantity(EnergyPart energy) => (energy.QuantityFactor == 1 ? "" : FormattableString.Invariant($", kWh times {energy.QuantityFactor}")) + (energy.QuantityDigits is { } digits ? FormattableString.Invariant($", to {digits} digits") : "")
        + (energy.MostKw is { } most ? FormattableString.Invariant($", up to {most} kW") : "") + (energy.TaxFraction is { } tax ? FormattableString.Invariant($", tax {tax}") : "");

    private static string Days(IEnumerable<LocalDate> days) => string.Join(" ", days.Select(NodaTime.Text.LocalDatePattern.Iso.Format));

    private static string Steps(IEnumerable<RateBlock> steps) => string.Join(", ", steps.Select(s => FormattableString.Invariant($"to {s.UpToKwh?.ToString("0.####", CultureInfo.InvariantCulture) ?? "the end"} {s.PerKwh}")));

    private static string Window(RateWindow window) => $"{DayWords.When(window.Season, window.Days, window.Hours)}";

    private static string Date(AnnualDate day) => FormattableString.Invariant($"{day.Month:00}-{day.Day:00}");
}
