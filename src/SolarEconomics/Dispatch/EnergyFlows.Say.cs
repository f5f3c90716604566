using System.Globalization;

namespace SolarEconomics;

/// <content>The flows in words.</content>
public sealed partial class EnergyFlows : IFinding
{
    /// <summary>Last digits of floating point are no flow to speak of.</summary>
    private const double DustKwh = 1e-6;

    private static readonly (string Words, FlowPath[] Paths)[] s_rows =
    [
        ("generation → use", [FlowPath.ArrayToUse]), ("generation → battery", [FlowPath.ArrayToBattery]),
        ("generation → export", [FlowPath.ArrayToExport]), ("curtailed", [FlowPath.ArrayCurtailed]),
        ("battery → use", [FlowPath.BatteryToUse]), ("battery → export", [FlowPath.BatteryToExport]),
        ("grid → use", [FlowPath.GridToUse]), ("grid → battery", [FlowPath.GridToBattery]),
        ("generator → use", [FlowPath.GeneratorToUse]), ("generator → battery", [FlowPath.GeneratorToBattery]),
        ("the plant's own standby", [FlowPath.ArrayToStandby, FlowPath.GridToStandby, FlowPath.BatteryToStandby, FlowPath.GeneratorToStandby]),
        ("lost in converter and battery", [FlowPath.ConverterLost, FlowPath.ChargeLost, FlowPath.DischargeLost, FlowPath.SelfDischargeLost]),
        ("equalising the battery", [FlowPath.EqualisingLost]),
        ("wanted and not served", [FlowPath.Unserved]),
    ];

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var totals = Totals;
        return new Finding(Wording.Percent(totals.SelfSufficiency, culture), Words(totals, culture))
        {
            Tables = [FlowTable(totals, culture), MonthTable(culture), .. Deferrable.Count > 0 ? [WaitingTable(culture)] : Array.Empty<FindingTable>()],
            Notes = [.. Notes(totals, culture)],
            Cautions = [.. CautionsOf(System)],
        };
    }

    internal static IEnumerable<string> CautionsOf(EnergySystem system)
    {
        if (system.Battery is { UsableKwh: > 0 }) yield return Cautions.Batteries;
        if (system.Generator is not null || system.Grid is { IsOffGrid: false, RunsInOutages: true }) yield return Cautions.Backup;
    }

    private string Words(FlowTotals totals, CultureInfo culture)
    {
        var words = $"of the {Wording.Kwh(totals.WantedKwh, culture)} that were wanted came from the arrays{(System.Battery is { UsableKwh: > 0 } ? ", directly or through the battery" : "")}. ";
        words += System.Grid.IsOffGrid
            ? $"Use took {Wording.Percent(totals.UsedShareOfPotential, culture)} of what they could have made; "
            : $"Of what they made, {Wording.Percent(totals.SelfConsumption, culture)} was used on site; ";
        words += totals[FlowPath.ArrayCurtailed] > DustKwh
            ? System.Grid.IsOffGrid ? $"{Wording.Percent(totals.CurtailedShare, culture)} of it was curtailed." : $"{Wording.Percent(totals.CurtailedShare, culture)} of what they could have made was curtailed."
            : "nothing was curtailed.";
        if (totals.UnservedKwh > DustKwh)
            words += $" {Wording.Kwh(totals.UnservedKwh, culture)} could not be served, spread over {Hours(totals.UnservedHours, culture)}.";
        if (totals.GeneratorHours > 0)
            words += $" The generator ran for {Hours(totals.GeneratorHours, culture)} and burned {totals.FuelLitres.ToString("#,0", culture)} litres.";
        return words;
    }

    /// <summary>Hours in words, with a fraction where there are few.</summary>
    private static string Hours(double hours, CultureInfo culture) =>
        Wording.Count(hours, hours < 10 ? "0.#" : "#,0", "hour", culture);

    /// <summary>The length of the intervals: one, or from the shortest to the longest.</summary>
    private string Lengths(CultureInfo culture)
    {
        var (shortest, longest) = (Time.Hours[0], Time.Hours[0]);
        foreach (var hours in Time.Hours) (shortest, longest) = (Math.Min(shortest, hours), Math.Max(longest, hours));
        string Said(double hours) => hours < 1 ? $"{(hours * 60).ToString("0.#", culture)} min" : $"{hours.ToString("0.##", culture)} h";
        return longest - shortest < 1e-9 ? Said(shortest) : $"{Said(shortest)} to {Said(longest)}";
    }

    private static FindingTable FlowTable(FlowTotals totals, CultureInfo culture) => new("Where the energy went, kWh", ["flow", "kWh"],
        [.. s_rows.Select(row => (row.Words, Kwh: row.Paths.Sum(path => totals[path]))).Where(row => row.Kwh > DustKwh)
            .Select(row => (IReadOnlyList<string>)[row.Words, row.Kwh.ToString("#,0", culture)])]);

    private FindingTable MonthTable(CultureInfo culture) => new("By month, kWh", ["month", "use", "generation", "import", "export", "curtailed", "not served"],
        [.. ByMonth().Select(m => (IReadOnlyList<string>)
        [
            m.From.ToString("MMM uuuu", culture), .. new[] { m.UseKwh, m.GenerationKwh, m.ImportKwh, m.ExportKwh, m[FlowPath.ArrayCurtailed], m.UnservedKwh }
                .Select(kwh => kwh.ToString("#,0", culture)),
        ])]);

    private FindingTable WaitingTable(CultureInfo culture) => new("Loads that may wait, kWh", ["load", "in time", "late", "given up"],
        [.. Deferrable.Select(load => (IReadOnlyList<string>)
            [load.Name, .. new[] { load.InTimeKwh, load.ServedLateKwh, load.MissedKwh }.Select(kwh => kwh.ToString("#,0.0", culture))])]);

    /// <summary>What came of equalising: how often it was due, how often complete, how long it had to wait.</summary>
    private string? EqualisingNote(CultureInfo culture)
    {
        if (System.Battery is not { UsableKwh: > 0, Equalising: { } plan }) return null;
        var rule = $"Equalising: every {plan.EveryDays.ToString("0.#", culture)} days, once the battery is full, {plan.NeededKwh.ToString("#,0.0", culture)} kWh beyond full, all of it heat and gas; ";
        if (Equalising.Count == 0) return rule + "none was due.";
        var done = Equalising.Count(charge => charge.Done is not null);
        rule += $"complete {done.ToString(culture)} of {Wording.Count(Equalising.Count, "time", culture)} that it was due";
        var longest = Equalising.MaxBy(charge => charge.WaitedDays)!;
        return rule + $", the longest wait {longest.WaitedDays.ToString("0.#", culture)} days from {longest.Due.ToString("d MMM uuuu", culture)}.";
    }

    private IEnumerable<string> Notes(FlowTotals totals, CultureInfo culture)
    {
        foreach (var doubt in Doubts(totals, culture)) yield return doubt;
        if (Deferrable.Count > 0) yield return "A waiting load is late after its deadline and given up when it can no longer be tried; what is given up counts as wanted and not served.";
        yield return $"Control: {ControlName}. Generation serves the plant's standby, then use, then the battery, then export; use is then served by generator, battery, grid.";
        yield return $"Netted inside intervals of {Lengths(culture)} with all phases as one: use met by generation is an upper bound, clipping a lower one.";
        if (EqualisingNote(culture) is { } equalising) yield return equalising;
        if (System.Battery is not { UsableKwh: > 0 }) yield break;
        yield return "The battery's discharge takes what arrays, grid and generator charged in proportion; what was inside at the start counts as the arrays'. "
            + (Math.Abs(totals.StoredChangeKwh) < 0.05 ? "It ended as full as it began."
                : $"It ended with {Math.Abs(totals.StoredChangeKwh).ToString("#,0.0", culture)} kWh {(totals.StoredChangeKwh > 0 ? "more" : "less")} inside than it began.");
        yield return $"The battery did {Wording.Count((int)Math.Round(totals.Cycles), "full cycle", culture)} and gave {Wording.Kwh(totals.ThroughputKwh, culture)}; "
            + $"it was full for {totals.HoursFull.ToString("#,0", culture)} h and empty for {totals.HoursEmpty.ToString("#,0", culture)} h of {totals.Hours.ToString("#,0", culture)} h.";
    }
}
