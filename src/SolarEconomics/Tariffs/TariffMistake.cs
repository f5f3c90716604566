namespace SolarEconomics;

/// <summary>One thing by which a tariff contradicts itself, with the part that it stands in.</summary>
internal sealed record TariffMistake(Tariff Tariff, string Place, string Found, string Expected)
{
    /// <summary>The mistake as one sentence.</summary>
    public override string ToString() => $"Tariff \"{Tariff.Name}\", {Place}: found {Found}, expected {Expected}.";
}
