namespace SolarEconomics;

/// <summary>One tariff in a comparison.</summary>
/// <param name="Name">Name of the choice.</param>
/// <param name="Total">What it would have billed, tax and rounding included.</param>
/// <param name="Difference">Its total less the cheapest one's, 0 or more.</param>
/// <param name="Tie">Whether its difference to the cheapest is no larger than it swings from year to year; for the cheapest, whether any other ties with it.</param>
/// <param name="ByYear">What it would have billed in each whole year of the readings.</param>
public sealed record TariffRank(string Name, Money Total, Money Difference, bool Tie, IReadOnlyList<Money> ByYear)
{
    /// <summary>What a home needs to be given it, or that it is closed to new homes; empty where anybody can have it.</summary>
    public string Remark { get; init; } = "";
}
