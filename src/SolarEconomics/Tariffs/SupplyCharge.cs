namespace SolarEconomics;

/// <summary>A charge for being connected, whatever is used; below zero, a fixed discount.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Amount">Charge before tax for one <paramref name="Per"/>, in the tariff's currency.</param>
/// <param name="Per">What it is counted by.</param>
public sealed record SupplyCharge(string Name, decimal Amount, ChargePeriod Per = ChargePeriod.Day) : TariffPart(Name)
{
    /// <summary>Name of the season in which it is charged; <see langword="null"/> for all year.</summary>
    public string? Season { get; init; }

    /// <summary>Whether it is charged only where a controlled load is metered. Default: no.</summary>
    public bool OnlyWithControlledLoad { get; init; }

    /// <summary>How part of a month, year or bill counts. Default: by days.</summary>
    public Proration Proration { get; init; }

    /// <summary>What is paid for, in words that go on from "2 months of". Default: <c>being connected</c>.</summary>
    public string PaysFor { get; init; } = "being connected";

    internal override SegmentPart On(SegmentContext context) => new SegmentSupply(this, context);

    internal override IEnumerable<TariffMistake> Mistakes(Tariff tariff, DayCalendar calendar)
    {
        var seasons = tariff.Seasons.Select(s => s.Name).ToList();
        if (Season is { } season && !seasons.Contains(season, StringComparer.Ordinal))
            yield return Throw.UnknownSeason(tariff, "supply", season, seasons);
    }

    internal override TariffPart Scaled(decimal importFactor, decimal exportFactor, decimal supplyFactor) =>
        this with { Amount = Amount * supplyFactor };
}
