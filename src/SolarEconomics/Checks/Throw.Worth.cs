using NodaTime;

namespace SolarEconomics;

internal static partial class Throw
{
    internal static RecordException ReadingAcrossGrid(Channel channel, Instant start, IntervalGrid grid) =>
        new($"{channel.File ?? channel.Name}: found a reading of \"{channel.Name}\" from {start} that crosses the edge of an interval of {grid.Step}, " +
            "expected readings that start and end on the edges of the longest interval in the records. " +
            "Sum the readings to that interval first, or leave the channel out.");

    internal static RecordException NothingToValue(string site) =>
        new($"{site}: found neither interval readings nor counters, expected at least one lifetime counter or one channel of generation, import or export. " +
            "Load a meter or counter file first.");

    internal static RecordException CurrencyOfSite(Currency site, Currency other, string what) =>
        new($"Found {what} in {other}, expected {site}, the currency of the site. Give the site the currency of its bills, or convert the {what} first.");

    internal static ArgumentOutOfRangeException RateAsPercent(string name, double value) =>
        new(name, value, FormattableString.Invariant($"Found a rate of {value}, expected a fraction a year from -0.5 to 1.") +
            // Only a number that makes sense as per cent is asked back; it is never guessed.
            (value / 100 is >= -0.5 and <= 1 ? FormattableString.Invariant($" If you mean {value} %, write {value / 100}.") : " 5 % a year is written 0.05."));

    internal static RecordException NoStraightLine(string site) =>
        new($"{site}: found nothing that counted generation, expected a lifetime counter or a channel of generation: a bridge starts from counters times one price. " +
            "Load the inverter's counter or its interval readings.");

    internal static RecordException NoLedger(string site) =>
        new($"{site}: found no ledger, expected one with at least a purchase: payback and outlook start from what was paid. Load it with Ledger.Load.");

    internal static RecordException NoValue(string site) =>
        new($"{site}: found no upper end for the value to date, expected records that bound the generation. " +
            "Load generation by interval or the inverter's lifetime counter; until then the answer is \"at least\".");

    internal static ArgumentOutOfRangeException HorizonInThePast(LocalDate first, int years, LocalDate end) =>
        new("Years", years, FormattableString.Invariant(
            $"Found a horizon of {Wording.CountInMessage(years, "year")} from {first:uuuu-MM-dd}, expected one after the records, which end on {end:uuuu-MM-dd}. Take more years."));

    internal static ArgumentOutOfRangeException ChangeOutsideOutlook(LocalDate on, LocalDate from, LocalDate until) =>
        new("On", on, FormattableString.Invariant(
            $"Found a change on {on:uuuu-MM-dd}, expected a day from {from:uuuu-MM-dd}, where the records end, and before {until:uuuu-MM-dd}, the horizon."));

    internal static UnknownNameException UnknownDevice(string name, IEnumerable<string> names) =>
        new($"Found device \"{name}\", expected one of the plant: {Nearest.List(name, names, 5)}.");

    internal static ArgumentException NoRating(string device) =>
        new($"{device}: found no rated power, expected ratedKwp above 0 in the plant's description: a swap scales the record by kWp.");

    internal static ArgumentException NoOption() =>
        new("Found no option, expected one or more to set beside doing nothing.");

    internal static ArgumentException PaymentsNotByMonths(int perYear) =>
        new(FormattableString.Invariant($"Found a loan with {perYear} payments a year, expected 1, 2, 3, 4, 6 or 12: payments fall on a day of a month."));

    internal static ArgumentException NoBatteryInRecords(string part) =>
        new($"{part}: found a fade but no discharge in the records, expected some: nothing says what is saved through it. Add its charge and discharge to the records, or leave the fade out.");

    internal static ArgumentException BatteryGone(string part, LocalDate inService, LocalDate middle) =>
        new(FormattableString.Invariant(
            $"{part}: found no capacity left on {middle:uuuu-MM-dd}, the middle of the records, from a start on {inService:uuuu-MM-dd}, expected some as it was at work. State a slower fade, a later start or what it really held when new."));

    internal static ArgumentException FadingPartByOdds(string part) =>
        new($"{part}: found a fade and odds of failure for the same part, expected one of them: nothing says when it is new again. State its replacement by its year.");

    internal static BasisMismatchException LoanNotNominal(string name, PriceBasis found) =>
        new($"{name}: found a loan that is {found}, expected a nominal one: lenders count money of the day. State what the contract says.");

    internal static ArgumentException LoanBeyondHorizon(string option, LocalDate last, LocalDate horizon) =>
        new(FormattableString.Invariant(
            $"{option}: found a loan whose last payment falls on {last:uuuu-MM-dd}, expected one by {horizon:uuuu-MM-dd}, the horizon: debt would be left out. Take more years."));

    internal static RecordException DaysOutsideRecords(string device, DateSpan down, DateSpan records) =>
        new($"{device}: found a failure from {down}, expected one day or more inside the records, {records}.");

    internal static RecordException NoLikeDays(string device, int month) =>
        new(FormattableString.Invariant($"{device}: found no day of month {month} outside the failure on which it worked, expected some: nothing tells what it would have made. State the lost kWh."));
}
