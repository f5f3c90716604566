using NodaTime;

namespace SolarEconomics;

/// <summary>Modules replaced by others, the old ones sold, reused, kept or taken away.</summary>
/// <param name="Name">A few words.</param>
/// <param name="Swap">The change.</param>
public sealed record SwapOption(string Name, PanelSwap Swap) : UpgradeOption(Name)
{
    /// <inheritdoc/>
    public override LocalDate From => Swap.On;

    /// <inheritdoc/>
    public override decimal Price => Swap.Cost;

    internal override bool FollowsWeather => true;

    internal override IEnumerable<CashEvent> OwnEvents(OutlookRecord record, Assumptions assumptions) =>
        new SwapFutures(record, assumptions, Swap).Events(e => (e.Avoided, e.FeedIn, e.ExportedKwh));

    private protected override UpgradeOption Later(int years, double priceFactor, double resaleFactor) => this with
    {
        Swap = Swap with { On = Swap.On.PlusYears(years), Cost = Swap.Cost * (decimal)priceFactor, Displaced = Swap.Displaced.WithReceived(resaleFactor) },
    };
}
