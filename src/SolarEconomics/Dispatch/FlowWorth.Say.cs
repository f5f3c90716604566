using System.Globalization;

namespace SolarEconomics;

/// <content>The worth in words.</content>
public sealed partial class FlowWorth : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var currency = FromStorage.Currency;
        var earned = Destinations.Where(d => d.Worth.Amount > 0).Aggregate(Money.Nominal(0, currency), (sum, d) => sum + d.Worth);
        var words = "is what the energy of arrays and battery was worth, each kWh at the price of its hour.";
        if (FromStorageKwh > 0)
            words += $" A kWh from the battery cost {Wording.Price(Money.Nominal((decimal)StorageCostPerKwh, currency), culture)} in charging, losses, standby and wear: "
                + (StorageGain.Amount < 0 ? $"the battery lost {Wording.Whole(-StorageGain, culture)} against the same plant without it."
                    : $"the battery brought {Wording.Whole(StorageGain, culture)} more than the same plant without it.");
        return new Finding(Wording.Whole(earned, culture), words)
        {
            Tables = [new FindingTable($"Worth of each flow, {currency}", ["flow", "kWh", "stood in for", "per kWh", "worth"], [.. Destinations.Select(d => Row(d, culture))])],
            Notes =
            [
                "An attribution of a difference of bills: fixed charges, blocks and demand belong to no single kWh.",
                "Charging from the arrays costs the feed-in that it forgoes; it costs nothing where the export limit would have curtailed that energy.",
            ],
            Cautions = FromStorageKwh > 0 ? [Cautions.Money, Cautions.Batteries] : [Cautions.Money],
        };
    }

    private static IReadOnlyList<string> Row(DestinationWorth row, CultureInfo culture) =>
    [
        Split(row.Path.ToString()), row.Kwh.ToString("#,0", culture), Split(row.StoodInFor.ToString()),
        Wording.Price(Money.Nominal((decimal)row.PerKwh, row.Worth.Currency), culture), Wording.Whole(row.Worth, culture),
    ];

    /// <summary>Words of a name: <c>array to use</c>.</summary>
    private static string Split(string name) =>
        string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));
}
