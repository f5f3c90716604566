using System.Globalization;

namespace SolarEconomics;

/// <summary>The flows of a plant year after year.</summary>
/// <param name="Years">One row per year.</param>
/// <param name="System">The plant as it started.</param>
/// <param name="Plan">What aged, grew and was replaced.</param>
/// <param name="ControlName">Name of the control that decided.</param>
public sealed record FlowsOverYears(IReadOnlyList<YearOfFlows> Years, EnergySystem System, YearsAhead Plan, string ControlName) : IFinding
{
    /// <summary>Whether only some years were worked out and the others repeat the last one that was.</summary>
    public bool IsPreview { get; init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var (first, last) = (Years[0], Years[^1]);
        var replaced = Years.Where(y => y.IsBatteryReplaced).Select(y => y.Year.ToString(culture)).ToList();
        var words = $"self-sufficiency in year {last.Year}, after {Wording.Percent(first.Totals.SelfSufficiency, culture)} in the first. ";
        if (System.Battery is not null)
            words += replaced.Count == 0 ? "The battery is not replaced." : $"The battery is replaced at the end of year {string.Join(", ", replaced)}.";
        return new Finding(Wording.Percent(last.Totals.SelfSufficiency, culture), words)
        {
            Tables = [new FindingTable("Year by year, kWh", ["year", "generation", "import", "export", "curtailed", "not served", "battery holds", "cycles"],
                [.. Years.Select(y => (IReadOnlyList<string>)
                [
                    y.Year.ToString(culture), .. new[] { y.Totals.GenerationKwh, y.Totals.ImportKwh, y.Totals.ExportKwh, y.Totals[FlowPath.ArrayCurtailed], y.Totals.UnservedKwh }
                        .Select(kwh => kwh.ToString("#,0", culture)), y.UsableKwh.ToString("0.0", culture), y.BatteryCycles.ToString("#,0", culture),
                ])])],
            Notes =
            [
                $"Control: {ControlName}. Arrays: {Plan.Arrays}. Each year repeats the same sun; what ages does so by whole years.",
                .. IsPreview ? [$"A preview: {Years.Count(y => !y.IsRepeated).ToString(culture)} of {Years.Count.ToString(culture)} years were worked out, the others repeat the last one that was."] : Array.Empty<string>(),
            ],
            Cautions = [Cautions.Money, .. EnergyFlows.CautionsOf(System)],
        };
    }
}
