using System.Globalization;

namespace SolarEconomics;

/// <summary>A bridge as a table: printed order, Shapley average, range over all orders.</summary>
internal static class BridgeTable
{
    internal static FindingTable Of(string caption, Money start, Money end, IReadOnlyList<Correction> corrections, string standing, CultureInfo culture)
    {
        var rows = new List<IReadOnlyList<string>> { Row("Straight line", Wording.Whole(start, culture)) };
        foreach (var c in corrections)
        {
            rows.Add([c.Label, Wording.Signed(c.Part, culture), Wording.Signed(c.ShapleyPart, culture),
                $"{Wording.Signed(c.SmallestPart, culture)} to {Wording.Signed(c.LargestPart, culture)}", c.Standing ?? ""]);
        }
        rows.Add(Row("Honest answer", Wording.Whole(end, culture)));
        return new FindingTable($"{caption} ({start.Currency})", ["Correction", "In this order", "Average over all orders", "Range over all orders", standing], rows);
    }

    private static IReadOnlyList<string> Row(string label, string amount) => [label, amount, "", "", ""];
}
