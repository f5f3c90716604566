using NodaTime;

namespace SolarEconomics;

/// <summary>What is asked: which of several tariffs would bill a series of energy least, such as a modelled future with a new array or battery.</summary>
/// <param name="Choices">The tariffs, at least one, all in one currency; the latest version of each is taken for all time.</param>
/// <param name="Grid">Intervals of the series.</param>
/// <param name="Energy">Import and export in each, and what else the meter counts.</param>
/// <param name="Zone">The clock of the rates, where a tariff names none, and of the billing days.</param>
public sealed record SeriesComparison(IReadOnlyList<TariffChoice> Choices, IntervalGrid Grid, MeteredEnergy Energy, DateTimeZone Zone)
{
    /// <summary>Name of the choice that the home has today, to say what a change saves. Default: <see langword="null"/>, not said.</summary>
    public string? Today { get; init; }

    /// <summary>Share of the tax that the home reclaims, such as a workshop's. Range: 0 to 1. Default: 0.</summary>
    public decimal TaxReclaimedShare { get; init; }

    /// <summary>Names of the conditions that the home meets, such as <c>pay on time</c>. Default: none.</summary>
    public IReadOnlyList<string> ConditionsMet { get; init; } = [];

    /// <summary>Asked for a home as it is or with another plant, such as a new battery.</summary>
    /// <param name="choices">The tariffs, at least one.</param>
    /// <param name="home">Its energy.</param>
    public static SeriesComparison Of(IReadOnlyList<TariffChoice> choices, HomeEnergy home)
    {
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(home);
        return new SeriesComparison(choices, home.Grid, home.Energy, home.Site.Zone) { TaxReclaimedShare = (decimal)home.Site.TaxReclaimedShare };
    }

    /// <summary>Bills the series under every tariff and ranks the totals.</summary>
    /// <param name="cancel">Stops between two tariffs.</param>
    /// <exception cref="TariffException">There is no tariff, there are two currencies, or a condition that no tariff names.</exception>
    /// <exception cref="ArgumentException">A column has another length than the grid, or holds no finite number somewhere.</exception>
    public CompareAnswer Answer(CancellationToken cancel = default)
    {
        var last = Grid.StartOf(Grid.Count - 1).InZone(Zone).Date;
        var days = new DateSpan(Grid.Start.InZone(Zone).Date, last.PlusDays(1));
        return TariffRanking.Of(Choices, new BilledReadings(Grid, days, Zone, Energy, 1), Zone, new RankingTerms(Today, TaxReclaimedShare, ConditionsMet), cancel);
    }
}
