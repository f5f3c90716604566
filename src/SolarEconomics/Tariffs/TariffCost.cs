namespace SolarEconomics;

/// <summary>What one tariff bills for all days, and for each whole year of them.</summary>
internal sealed record TariffCost(string Name, decimal Total, IReadOnlyList<decimal> Years)
{
    internal string Remark { get; init; } = "";
}
