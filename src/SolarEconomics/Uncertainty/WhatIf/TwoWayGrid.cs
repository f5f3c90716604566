using System.Globalization;

namespace SolarEconomics;

/// <summary>An amount over two inputs at once.</summary>
/// <param name="Measure">The amount in words.</param>
/// <param name="Down">The input that changes from row to row.</param>
/// <param name="DownValues">Its values, one per row.</param>
/// <param name="Across">The input that changes from column to column.</param>
/// <param name="AcrossValues">Its values, one per column.</param>
/// <param name="Amounts">Row by row, as many rows as <paramref name="DownValues"/>.</param>
public sealed record TwoWayGrid(
    string Measure, OutlookInput Down, IReadOnlyList<double> DownValues, OutlookInput Across, IReadOnlyList<double> AcrossValues,
    IReadOnlyList<IReadOnlyList<Money>> Amounts) : IFinding
{
    /// <summary>Rows, and columns, of the grid that is still at work where this is a preview of it; 0 in a full answer.</summary>
    public int PreviewOf { get; internal init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var all = Amounts.SelectMany(row => row).ToList();
        var gains = all.Count(m => m.Amount >= 0);
        var currency = all[0].Currency;
        var (low, high) = (all.MinBy(m => m.Amount), all.MaxBy(m => m.Amount));
        return new Finding(
            $"{gains.ToString(culture)} of {all.Count.ToString(culture)}",
            (PreviewOf == 0 ? "" : $"is a preview of {PreviewOf.ToString(culture)} rows and columns. So many ") + $"pairs of {Down.Name} and {Across.Name} do not lose: the {Measure} runs from {Wording.Whole(low, culture)} to {Wording.Whole(high, culture)}.")
        {
            Tables =
            [
                new FindingTable($"{Measure} by {Down.Name} (down) and {Across.Name} (across), {currency}",
                    ["", .. AcrossValues.Select(v => Across.InWords(v, currency, culture))],
                    [.. DownValues.Zip(Amounts, (value, row) => (IReadOnlyList<string>)[Down.InWords(value, currency, culture), .. row.Select(m => Wording.Whole(m, culture))])]),
            ],
            Notes = ["Each cell is a full recomputation of all years; all other inputs stand as they are."],
            Cautions = [Cautions.Money],
        };
    }
}
