using System.Globalization;

namespace SolarEconomics;

/// <summary>Spares on the shelf: bought, used, sold, and what is left at what was paid for it.</summary>
/// <param name="Bought">Spares bought.</param>
/// <param name="Used">Spares put to use, at what they had cost.</param>
/// <param name="Left">What is left in stock, at cost. Below 0 where more was used than is on record as bought: an entry is missing.</param>
/// <param name="ByDevice">Stock at cost by the device it is for.</param>
public sealed record SpareStock(Money Bought, Money Used, Money Left, IReadOnlyList<(string Device, Money Left)> ByDevice) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => new(Wording.Whole(Left, culture),
        $"of spares stand in stock, at what was paid: {Wording.Whole(Bought, culture)} bought, {Wording.Whole(Used, culture)} put to use.")
    {
        Tables =
        [
            new FindingTable($"Spares in stock at cost ({Left.Currency})", ["For", "Left"], [.. ByDevice.Select(d => (IReadOnlyList<string>)[d.Device, Wording.Exact(d.Left, culture)])]),
        ],
        Notes = Left.Amount < 0 ? ["More was put to use than is on record as bought: the purchase of a spare is missing."] : ["Spares count as invested when they are bought; using one moves no money."],
        Cautions = [Cautions.Money],
    };
}
