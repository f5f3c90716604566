namespace SolarEconomics;

/// <summary>What waiting brings, and what is known when it is over.</summary>
public sealed record WaitingOptions
{
    /// <summary>Fall of the price per year, with its odds; known when the waiting is over. Values beyond −0.5 and 0.5 are held there. Default: it does not fall.</summary>
    public IDistribution PriceFallPerYear { get; init; } = Certain.Of(0);

    /// <summary>Fall per year of what displaced parts sell for, a fraction. Range: 0 to 1. Default: 0.</summary>
    public double ResaleFallPerYear { get; init => field = Require.Fraction(value); }

    /// <summary>Inputs that have shown themselves when the waiting is over. Default: the growth of import prices, of the feed-in price and of costs.</summary>
    /// <remarks>Each counts as fully known then, which is more than a few years can tell of a growth rate: the worth of deciding again is an upper estimate in this.
    /// Ageing and yield are left out: what a few years tell of them is less than the weather hides.</remarks>
    public IReadOnlyList<OutlookInput> Known { get; init; } = [OutlookInput.PriceGrowth, OutlookInput.FeedInGrowth, OutlookInput.CostGrowth];
}
