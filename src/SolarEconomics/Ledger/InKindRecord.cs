using System.Globalization;

namespace SolarEconomics;

/// <summary>What came as a gift, in exchange or below its market price: what was paid, and what it would have cost.</summary>
/// <param name="Entries">Gifts, barter, and purchases with a market price beside what was paid.</param>
/// <param name="Paid">Money that moved for them.</param>
/// <param name="AtMarketPrices">What they would have cost.</param>
/// <remarks>The account of the owner counts what was paid. Whoever asks what such a plant costs somebody else adds <see cref="NotPaid"/>.</remarks>
public sealed record InKindRecord(IReadOnlyList<LedgerEntry> Entries, Money Paid, Money AtMarketPrices) : IFinding
{
    /// <summary>What market prices would have added.</summary>
    public Money NotPaid => AtMarketPrices - Paid;

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => new(Wording.Whole(NotPaid, culture), Entries.Count == 0
        ? "came as gifts or in exchange: no entry says so."
        : $"more would have been paid at market prices: {Wording.Whole(AtMarketPrices, culture)} instead of {Wording.Whole(Paid, culture)}. The account counts what was paid.")
    {
        Cautions = [Cautions.Money],
    };
}
