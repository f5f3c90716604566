using System.Globalization;

namespace SolarEconomics;

/// <summary>Every receipt by kind and device: what was paid or received for what, and where it stands in the file.</summary>
/// <param name="Rows">Kind, device, number of entries and their sum, in the order of kinds and names.</param>
/// <param name="Currency">Currency of the sums.</param>
public sealed record ReceiptTable(IReadOnlyList<(LedgerKind Kind, string Device, int Entries, Money Sum)> Rows, Currency Currency) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => new(
        Rows.Sum(r => r.Entries).ToString(culture),
        $"{(Rows.Sum(r => r.Entries) == 1 ? "receipt" : "receipts")} of {Wording.Count(Rows.Select(r => r.Kind).Distinct().Count(), "kind", culture)} for " +
        $"{Wording.Count(Rows.Select(r => r.Device).Distinct(StringComparer.Ordinal).Count(), "device", culture)}.")
    {
        Tables =
        [
            new FindingTable($"Receipts by kind and device ({Currency}, money of the day)", ["Kind", "Device", "Entries", "Sum"],
                [.. Rows.Select(r => (IReadOnlyList<string>)[LedgerKinds.WordOf(r.Kind), r.Device, r.Entries.ToString(culture), Wording.Plain(r.Sum, culture)])]),
        ],
        Cautions = [Cautions.Money],
    };
}
