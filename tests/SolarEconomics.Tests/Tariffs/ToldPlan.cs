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
            return new Finding(tariff.Name, $"clock {tariff.Zone?.Id ?? "of the home"}, place {plan.PlaceZone?.Id ?? "unknown"}, {tariff.Holidays.Days.Count} holidays, for {tariff.Needs}{(tariff.IsClosedToNew ? ", closed to new homes" : "")}")
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
        EnergyPart energy => energy.Rates.Select(r => (IReadOnlyList<string>)[$"{energy.Name} ({energy.Side})", Rate(r)]),
        SupplyCharge supply => [[supply.Name, FormattableString.Invariant($"{supply.Amount:0.####} a {supply.Per}, season {supply.Season ?? "none"}, for {supply.PaysFor}{(supply.OnlyWithControlledLoad ? ", only with a controlled load" : "")}")]],
        DemandCharge d => [[d.Name, FormattableString.Invariant($"{d.PerKw} a {d.Unit} and {d.Per}, at least {d.MinimumKw}{(d.EachDay ? ", each day" : "")}{(d.EachMonth ? ", each month" : "")}, {Window(d.Window)}")]],
        PercentCharge share => [[share.Name, FormattableString.Invariant($"{share.Fraction} of {(share.Of.Count == 0 ? "all" : string.Join(" and ", share.Of))}, if {share.Condition ?? "always"}")]],
        _ => [[part.Name, part.ToString()]],
    };

    private static string Rate(EnergyRate rate) => FormattableString.Invariant($"{rate.Name} {rate.PerKwh}")
        + (rate.Blocks is { } blocks ? " in blocks a " + blocks.Per + ": " + string.Join(", ", blocks.Steps.Select(s => FormattableString.Invariant($"to {s.UpToKwh?.ToString("0.####", CultureInfo.InvariantCulture) ?? "the end"} {s.PerKwh}"))) : "")
        + (rate.IsOtherwise ? ", other hours" : ", " + string.Join(" and ", rate.Windows.Select(Window)));

    private static string Window(RateWindow window) => $"{DayWords.When(window.Season, window.Days, window.Hours)}";

    private static string Date(AnnualDate day) => FormattableString.Invariant($"{day.Month:00}-{day.Day:00}");
}
