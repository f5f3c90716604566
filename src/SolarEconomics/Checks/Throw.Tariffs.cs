using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <content>Messages of the tariffs.</content>
internal static partial class Throw
{
    internal static FormatException NotHours(string text) =>
        new($"Found hours \"{text}\", expected a start and an end such as 17:00-19:00 or, across midnight, 23:00-08:00.");

    internal static TariffException NoTariff() =>
        new("Found no tariff, expected at least one version. Write it down with Tariff.Flat(…) or Tariff.Named(…).");

    internal static TariffException NoTariffYet(LocalDate day, Tariff first) =>
        new($"Found no tariff in force on {Iso(day)}, expected one: the first version, \"{first.Name}\", starts on {Iso(first.From)}. " +
            "Add the version that was in force before, or start the readings later.");

    internal static string TwoVersionsFromOneDay(Tariff a, Tariff b) =>
        $"Found two versions from {Iso(a.From)}, \"{a.Name}\" and \"{b.Name}\", expected one version from each day. Correct a date or leave one out.";

    internal static string TwoCurrencies(Tariff a, Tariff b) =>
        $"Found {a.Currency} in \"{a.Name}\" and {b.Currency} in \"{b.Name}\", expected one currency in a history. Write the older version in {a.Currency} by a named rate.";

    internal static InvalidOperationException NotByTheHour(Tariff tariff) =>
        new($"Found blocks, demand, levies or another part of \"{tariff.Name}\" that needs the whole bill, expected fixed charges and prices by the hour only. Ask for Bills(…).");

    internal static ArgumentException NoPlan() => new("Found no plan, expected at least one tariff laid on a grid.");

    internal static ArgumentException PlansApart(BillingPlan a, BillingPlan b) => new(
        $"Found plans of \"{a.History.Latest.Name}\" and \"{b.History.Latest.Name}\" on other grids, periods or billing clocks, expected the same. Lay all tariffs on one grid with one set of options.");

    internal static RecordException NoTariffFolder(string folder) =>
        new($"{folder}: found no such folder, expected one with tariff files (*.json). Looked in {Path.GetFullPath(folder)}.");

    internal static RecordException EmptyTariffFolder(string folder) =>
        new($"{folder}: found no file that ends in .json, expected tariff files or energy plans.");

    internal static TariffMistake SeasonTwice(Tariff tariff, string season) =>
        new(tariff, "seasons", $"season \"{season}\" twice", "each name once. Give one of them another name");

    internal static TariffMistake TooManySeasons(Tariff tariff) => new(tariff, "seasons",
        FormattableString.Invariant($"{tariff.Seasons.Count} seasons"), FormattableString.Invariant($"at most {TariffCheck.MostSeasons}"));

    internal static TariffMistake UnknownSeason(Tariff tariff, string place, string season, IReadOnlyList<string> seasons) =>
        new(tariff, place, $"season \"{season}\"", seasons.Count == 0
            ? "none, as the tariff names no season. Add it to the tariff's seasons"
            : $"one of the tariff's seasons: {Nearest.List(season, seasons)}") { ComparesParts = true };

    internal static TariffMistake TwoRests(Tariff tariff, EnergyPart part) => new(tariff, part.Name,
        $"rates {DayWords.And([.. part.Rates.Where(r => r.IsOtherwise).Select(r => $"\"{r.Name}\"")])} all without hours",
        "at most one rate that takes the remaining hours. Give the others their hours");

    internal static TariffMistake BlocksOutOfOrder(Tariff tariff, EnergyPart part, EnergyRate rate) => new(tariff, part.Name,
        $"blocks of \"{rate.Name}\" ending at {string.Join(", ", rate.Blocks!.Steps.Select(s => s.UpToKwh?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "no end"))}",
        "each to end above the one before, and only the last without an end");

    internal static TariffMistake AveragingMinutes(Tariff tariff, DemandCharge charge) => new(tariff, "demand",
        FormattableString.Invariant($"averages of {charge.AveragingMinutes} minutes in \"{charge.Name}\""), "a divisor of 60 such as 15, 30 or 60");

    internal static TariffMistake UnknownPart(Tariff tariff, TariffPart charge, string name, IReadOnlyList<string> names) => new(tariff, "levies",
        $"\"{charge.Name}\" on \"{name}\"", names.Count == 0 ? "a part that stands before it" : $"a part that stands before it: {Nearest.List(name, names)}") { ComparesParts = true };

    internal static TariffMistake TiersOutOfOrder(Tariff tariff, TieredCharge charge) => new(tariff, charge.Name,
        "tiers or their blocks out of order", "each to end above the one before, only the last without an end, and none stated for a day");

    internal static TariffMistake BlocksInNetMetering(Tariff tariff, NetMetering net, EnergyRate rate) => new(tariff, net.Name,
        $"blocks in the rate \"{rate.Name}\"", "one price for each rate: net metering with blocks is not priced here");

    internal static TariffMistake RateCount(Tariff tariff, EnergyPart part) => new(tariff, part.Name,
        FormattableString.Invariant($"{part.Rates.Count} rates"), FormattableString.Invariant($"1 to {TariffCheck.MostRates}"));

    internal static TariffMistake Coverage(Tariff tariff, EnergyPart part, string sentence) =>
        new(tariff, part.Name, sentence, "every hour covered once") { IsOfHours = true, ComparesParts = true };

    internal static TariffException NoImport(Tariff tariff) =>
        new($"Tariff \"{tariff.Name}\": found no price for import, expected at least one. Add one with Import(…).");

    internal static RecordException NoImportReadings(Readings readings) => new(
        "Found no readings of import in kWh, expected at least one channel of energy taken from the grid. The readings hold " +
        (readings.Channels.Count == 0 ? "no channel." : DayWords.And([.. readings.Channels.Select(c => $"\"{c.Name}\" ({c.Flow}, {c.Unit})")]) + "."));

    internal static RecordException SeveralMeters(IReadOnlyList<string> meters) => new(
        $"Found readings of {meters.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)} meters, {DayWords.And([.. meters.Select(m => $"\"{m}\"")])}, " +
        "expected one, as each has a bill of its own. Choose one (on the command line: --meter).");

    internal static RecordException UnknownMeter(string meter, IReadOnlyList<string> meters) => new(
        $"Found meter \"{meter}\", expected {(meters.Count == 0 ? "none, as the readings name no meter" : "one that the readings hold: " + Nearest.List(meter, meters))}.");

    internal static RecordException UnknownChannel(string name, IReadOnlyList<string> names) => new(
        $"Found \"{name}\" as the controlled load, expected a channel of import: {Nearest.List(name, names)}.");

    internal static RecordException NoBillingDay(LocalDate from, LocalDate to) =>
        new($"Found a bill from {Iso(from)} to {Iso(to)}, expected the end after the start: the end is the first day that is no longer billed.");

    internal static ArgumentException WrongLength(string name, int found, int expected) => new(FormattableString.Invariant(
        $"Found {Wording.CountInMessage(found, "value")} of {name}, expected {expected}, one for each interval of the plan's grid."), name);

    internal static ArgumentException NotFinite(string name, int index) => new(FormattableString.Invariant(
        $"Found no finite number in {name} at interval {index}, expected kWh. Fill or leave out missing readings by a named policy first."), name);

    internal static ArgumentException NotWholeSeconds(Duration step) => new(
        $"Found intervals of {step}, expected whole seconds, at most a week.", nameof(step));

    internal static ArgumentException PeriodsOverlap(DateSpan a, DateSpan b) => new(
        $"Found billing periods {a} and {b}, expected them in order and apart.", nameof(b));

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
