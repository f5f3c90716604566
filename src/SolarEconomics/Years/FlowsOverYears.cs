using System.Globalization;

namespace SolarEconomics;

/// <summary>The flows of a plant year after year.</summary>
/// <param name="Years">One row per year.</param>
/// <param name="System">The plant as it started.</param>
/// <param name="Plan">What aged, grew and was replaced.</param>
/// <param name="ControlName">Name of the control that decided.</param>
public sealed record FlowsOverYears(IReadOnlyList<YearOfFlows> Years, EnergySystem System, YearsAhead Plan, string ControlName) : IFinding
{
    /// <summary>Whether only some years were worked out and the others lie on lines between them.</summary>
    public bool IsPreview { get; init; }

    /// <summary>How far the cost of a year between may be off, measured: the most by which a curve that left out a year which was worked out missed that one. Unit: the currency of the
    /// prices. <see langword="null"/> in a full answer, and where no curve of the preview has such a year.</summary>
    public double? CostOff { get; init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var (first, last) = (Years[0], Years[^1]);
        var replaced = Years.Where(y => y.IsBatteryReplaced).Select(y => y.Year.ToString(culture)).ToList();
        var words = (IsPreview ? PreviewWords(culture) : "") + (Years.Count == 1 ? "of the wanted use comes from the arrays in the one year looked at."
            : $"of the wanted use comes from the arrays in year {last.Year}, after {Wording.Percent(first.Totals.SelfSufficiency, culture)} in the first.");
        if (System.Battery is not null)
            words += replaced.Count == 0 ? " The battery is not replaced." : $" The battery is replaced at the end of year {Listed(replaced)}.";
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
                .. Plan.Battery.Origin is { } origin ? [$"Battery ageing: {origin}."] : Array.Empty<string>(),
                .. Plan.Tariffs is { } tariffs
                    ? [$"Each year is priced by the tariff in force then, on the days of the first: {tariffs}. After the last, prices change by {Wording.Percent(Plan.PriceGrowth, culture)} a year."]
                    : Array.Empty<string>(),
            ],
            Cautions = [Cautions.Money, .. EnergyFlows.CautionsOf(System)],
        };
    }

    private string PreviewWords(CultureInfo culture)
    {
        var worked = Years.Count(y => !y.IsEstimated);
        var off = CostOff is { } most
            ? $"the energy costs of these are off by at most {most.ToString("#,0.0", culture)} a year, in the currency of the prices, as years left out on purpose show"
            : "how far these are off was not measured";
        return $"is a preview: {worked.ToString(culture)} of {Years.Count.ToString(culture)} years were worked out, the others lie between them; {off}. So much ";
    }

    private static string Listed(List<string> years) => years.Count == 1 ? years[0] : $"{string.Join(", ", years[..^1])} and {years[^1]}";
}
