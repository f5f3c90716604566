using NodaTime;

namespace SolarEconomics;

/// <content>Messages of the parts that few tariffs have.</content>
internal static partial class Throw
{
    internal static UnknownNameException UnknownHolidayCountry(string country, IReadOnlyList<string> known) =>
        new($"Found country \"{country}\", expected an ISO 3166 code whose holidays are known, such as {Nearest.List(country, known)}. For another country, list the days.");

    internal static UnknownNameException UnknownHolidayRegion(string country, string region, IReadOnlyList<string> known) => new(known.Count == 0
        ? $"Found region \"{region}\", expected none, as the holidays of {country} are known for the whole country only. Add the region's own days to the list."
        : $"Found region \"{region}\", expected one of {country} such as {Nearest.List(region, known)}.");

    internal static ArgumentException TooFewPrices(string name, int count) => new(FormattableString.Invariant($"{name}: found {Wording.CountInMessage(count, "price")}, expected at least two."));

    internal static ArgumentException PricesOutOfOrder(string name, Instant at) =>
        new($"{name}: found no finite price after the one before at {NodaTime.Text.InstantPattern.General.Format(at)}, expected ascending starts, each with a price.");

    internal static TariffException NoPriceAt(PriceSeries series, long second) => new(
        $"{series.Name}: found no price at {NodaTime.Text.InstantPattern.General.Format(Instant.FromUnixTimeSeconds(second))}, expected prices for all days billed; " +
        $"it holds {NodaTime.Text.InstantPattern.General.Format(series.Start)} to {NodaTime.Text.InstantPattern.General.Format(series.End)}. Add the missing prices or choose other days.");

    internal static RecordException BadPriceLines(string path, IReadOnlyList<Problem> problems) =>
        new(string.Join(Environment.NewLine, problems.Take(20)) + (problems.Count > 20 ? FormattableString.Invariant($"{Environment.NewLine}and {problems.Count - 20} more like these.") : ""), problems);

    internal static RecordException FewPriceLines(string path, int count) =>
        new(FormattableString.Invariant($"{path}: found {Wording.CountInMessage(count, "price")}, expected at least two lines of start and price such as 2024-03-01 17:00,0.2134."));

    internal static TariffMistake BlocksCannotRunOn(Tariff tariff, EnergyPart part, EnergyRate rate) =>
        new(tariff, part.Name, $"blocks of \"{rate.Name}\" that run on from bill to bill", "them to be stated for a month, a quarter or a year");

    internal static TariffMistake CapBelowFloor(Tariff tariff, SeriesPrice part) =>
        new(tariff, part.Name, FormattableString.Invariant($"a cap of {part.CapPerKwh} below the floor of {part.FloorPerKwh}"), "the cap at or above the floor");

    internal static TariffMistake BaselineDays(Tariff tariff, EventRebate part) =>
        new(tariff, part.Name, FormattableString.Invariant($"{part.BaselineDays} earlier days to compare with"), "at least one");

    internal static TariffMistake ConnectionSize(Tariff tariff, ConnectionCharge part) =>
        new(tariff, part.Name, FormattableString.Invariant($"a connection of {part.Size}"), "a size above 0");

    internal static TariffMistake PowerFactor(Tariff tariff, PowerFactorCharge part) =>
        new(tariff, part.Name, FormattableString.Invariant($"a power factor of {part.Least}"), "one above 0 and at most 1, such as 0.90");

    internal static TariffMistake CreditNotLast(Tariff tariff, CreditKept part) =>
        new(tariff, part.Name, "parts after the rule on credit", "the rule on credit as the last part, since it looks at the whole bill");

    internal static TariffMistake DemandStepsOutOfOrder(Tariff tariff, DemandCharge part) => new(tariff, part.Name,
        $"steps of demand ending at {string.Join(", ", part.Steps.Select(s => s.UpTo?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "no end"))}",
        "each to end above the one before, and only the last without an end");

    internal static ArgumentOutOfRangeException GrowthTooLow(decimal growth) =>
        new(nameof(growth), growth, "Expected a growth above -1, as a fraction; 3 % a year is 0.03.");

    internal static ArgumentException BillsOfOtherPeriods() =>
        new("Found bills of other periods, or none, expected the same periods billed once by estimate and once by the meter.");

    internal static TariffException UnknownChoice(string name, IReadOnlyList<TariffChoice> choices) =>
        new($"Found \"{name}\" as today's tariff, expected one of the choices: {Nearest.List(name, [.. choices.Select(c => c.Name)])}.");

    internal static ArgumentException BillingDates(IReadOnlyList<LocalDate> dates) =>
        new($"Found {(dates.Count == 0 ? "no days" : string.Join(", ", dates.Select(Iso)))}, expected at least two days, each after the one before.");

    internal static RecordException NoGenerationReadings(Site site) => new(
        $"{site.Name}: found no readings of generation, no counter and no rated modules, expected one of them: without it nobody can tell what the home would take without its plant. " +
        "Add a channel of generation, or a plant with its rated power.");

    internal static TariffException UnknownCondition(string condition, IReadOnlyList<string> conditions) => new(
        $"Found condition \"{condition}\", expected {(conditions.Count == 0 ? "none, as the tariff names no condition" : "one that the tariff names: " + Nearest.List(condition, conditions))}.");

    internal static string TwoCurrenciesCompared(TariffChoice a, TariffChoice b) =>
        $"Found {a.Tariffs.Currency} in \"{a.Name}\" and {b.Tariffs.Currency} in \"{b.Name}\", expected tariffs of one currency to compare. Leave out those of the other, or compare them on their own.";

    internal static TariffException NeedsUseAndGeneration(Tariff tariff) => new(
        $"Tariff \"{tariff.Name}\": found no use and generation in the energy to bill, expected both, since it buys all that is generated and sells all that is used.");

    internal static ArgumentException NoBillFloor(Tariff tariff, string what) => new(
        $"No bound: \"{tariff.Name}\" {what}, which no linear program can say; expected energy prices, blocks, demand and fixed charges. Leave the bills out of the options to judge by the prices per kWh alone.", "plan");
}
