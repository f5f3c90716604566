using System.Globalization;

namespace SolarEconomics;

/// <summary>The words of expected against measured.</summary>
internal static class ExpectedWords
{
    internal static Finding Say(ExpectedAgainstMeasured result, CultureInfo culture)
    {
        var worth = result.LostValue is { } value ? $", worth {Wording.Whole(value, culture)} by the hours in which it would have come" : "";
        var words = result.Failures.Count == 0
            ? $"fell short at {result.Device} beyond what weather explains, on the days that could be told."
            : $"was lost at {result.Device} in {result.Failures.Count} {(result.Failures.Count == 1 ? "event" : "events")}{worth}. The largest: {Largest(result, culture)}.";
        return new Finding(result.Failures.Count == 0 ? "nothing" : Wording.Kwh(result.LostKwh, culture), words + Beside(result, culture))
        {
            Tables = [.. result.Events.Count == 0 ? [] : new[] { Events(result, culture) }, .. result.Failures.Count == 0 ? [] : new[] { Spare(result, culture) }],
            Notes =
            [
                "Expected from: " + string.Join("; ", result.References) + ".",
                string.Create(culture, $"{result.DaysUntold:#,0} of {result.Days.Count:#,0} days cannot be told: readings are missing here or in every reference."),
                result.TellsCurtailment
                    ? string.Create(culture, $"What a full battery or an export limit held back is told beside the weather, on {result.HeldBackDays:#,0} days that the record marks.")
                    : "What a full battery or an export limit holds back it holds back in all arrays alike, so it is in no event here; weather would tell it.",
                .. result.UntoldHoursAtLimit > 0 ? new[] { string.Create(culture, $"For {result.UntoldHoursAtLimit:#,0.#} of {result.HoursAtLimit:#,0.#} hours at the inverter's limit no reference tells what was clipped.") } : [],
                .. result.Yields is { } yields ? new[] { string.Create(culture, $"Of the intervals that were read and not held back: {yields.FinalHours:#,0} kWh per kWp of {yields.ReferenceHours:#,0} hours of full sun, performance ratio {yields.PerformanceRatio:0.00}, {result.PerformanceRatioAt25C:0.00} at 25 °C. Without a sensor in the plane it carries the weather's error.") } : [],
                "A kind is a likeness, not a proof. Lost energy would first have served what was bought; a battery would have used more of it.",
                .. result.Events.SelectMany(e => e.Log).Distinct().Select(l => $"Logged on {Wording.Day(l.On, culture)}: {KindOf(l.Kind)}{(l.Note is null ? "" : ", " + l.Note)}."),
                .. result.Events.Any(e => e.Receipts.Count > 0) ? new[] { "Receipts about the device from ten days before an event to sixty after are set beside it: an assumption." } : [],
            ],
            Cautions = [Cautions.Panels, Cautions.Records],
        };
    }

    internal static string KindOf(ShortfallKind kind) => kind switch
    {
        ShortfallKind.Outage => "outage",
        ShortfallKind.PartialString => "part of the strings",
        ShortfallKind.Dirt => "dirt",
        ShortfallKind.HeatDerating => "held back by heat",
        ShortfallKind.Clipping => "inverter at its limit",
        ShortfallKind.Curtailment => "held back",
        _ => "unexplained",
    };

    private static string KindOf(LogKind kind) => kind switch
    {
        LogKind.Cleaning => "cleaning",
        LogKind.Snow => "snow",
        LogKind.TreeCut => "tree cut",
        LogKind.Fault => "fault",
        LogKind.Repair => "repair",
        _ => "note",
    };

    private static string Largest(ExpectedAgainstMeasured result, CultureInfo culture)
    {
        var largest = result.Failures.MaxBy(e => e.Shortfall.LostKwh)!;
        return $"{Wording.Days(largest.Shortfall.Days, culture)}, {KindOf(largest.Shortfall.Kind)} ({largest.Shortfall.Why}), {Wording.Kwh(largest.Shortfall.LostKwh, culture)}";
    }

    /// <summary>What was held back is said beside, as it is no shortfall.</summary>
    private static string Beside(ExpectedAgainstMeasured result, CultureInfo culture)
    {
        var clipped = result.ClippedKwh > 0 ? string.Create(culture, $" Beside it the inverter stood at its limit for {result.HoursAtLimit:#,0.#} hours and clipped about {Wording.Kwh(result.ClippedKwh, culture)}: no shortfall.") : "";
        var held = result.CurtailedKwh > 0 ? $" A full battery or a limit held back about {Wording.Kwh(result.CurtailedKwh, culture)}: no shortfall either." : "";
        return clipped + held;
    }

    private static FindingTable Events(ExpectedAgainstMeasured result, CultureInfo culture) =>
        new("What fell short", ["Days", "Looks like", "Why", "Lost, kWh", "Worth", "From all exported to all used", "Receipts", "Cost"],
        [.. result.Events.Select(e => (IReadOnlyList<string>)
        [
            Wording.Days(e.Shortfall.Days, culture),
            KindOf(e.Shortfall.Kind),
            e.Shortfall.Why,
            string.Create(culture, $"{e.Shortfall.LostKwh:#,0} ± {e.UncertaintyKwh:#,0}"),
            Or(e.Value, culture),
            e.Range is { High: { } high } range ? $"{Wording.Whole(range.Low, culture)} to {Wording.Whole(high, culture)}" : "not told",
            e.Paid is { } paid ? Wording.Whole(paid, culture) : "none",
            Or(e.Cost, culture),
        ])]);

    private static FindingTable Spare(ExpectedAgainstMeasured result, CultureInfo culture) =>
        new("Not lost, had it worked again after so many days", ["Days", "1 day, kWh", "worth", "3 days, kWh", "worth", "7 days, kWh", "worth"],
        [.. result.Events.Where(e => e.Shortfall.Kind is ShortfallKind.Outage or ShortfallKind.PartialString).Select(e => (IReadOnlyList<string>)
        [
            Wording.Days(e.Shortfall.Days, culture),
            .. new[] { 1, 3, 7 }.Select(e.SavedIfMendedAfter).SelectMany(s => new[] { s.Kwh.ToString("#,0", culture), Or(s.Value, culture) }),
        ])]);

    private static string Or(Money? money, CultureInfo culture) => money is { } known ? Wording.Whole(known, culture) : "not told";
}
