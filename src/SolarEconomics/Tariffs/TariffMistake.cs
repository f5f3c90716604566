namespace SolarEconomics;

/// <summary>One thing by which a tariff contradicts itself, with the part that it stands in.</summary>
internal sealed record TariffMistake(Tariff Tariff, string Place, string Found, string Expected)
{
    /// <summary>Whether it compares parts with each other, so that it means nothing where one of them could not be read.</summary>
    internal bool ComparesParts { get; init; }

    /// <summary>Whether it speaks of hours without or with two rates, which means nothing where anything could not be read.</summary>
    internal bool IsOfHours { get; init; }

    /// <summary>The mistake as one sentence.</summary>
    public override string ToString() => $"Tariff \"{Tariff.Name}\", {Place}: found {Found}, expected {Expected}.";
}
