using NodaTime;

namespace SolarEconomics;

/// <summary>What is asked: which of several tariffs would have billed a home's own readings least.</summary>
/// <param name="Choices">The tariffs, at least one, all in one currency; the latest version of each is taken for all time.</param>
/// <param name="Readings">The home's readings; import is needed, export counts as none where it is not recorded.</param>
/// <param name="Zone">The clock of the rates, where a tariff names none.</param>
public sealed partial record CompareRequest(IReadOnlyList<TariffChoice> Choices, Readings Readings, DateTimeZone Zone)
{
    /// <summary>First billing day. Default: the day of the first reading of import.</summary>
    public LocalDate? From { get; init; }

    /// <summary>First billing day that is no longer billed. Default: the day after the last reading of import.</summary>
    public LocalDate? To { get; init; }

    /// <summary>The clock of the billing days. Default: as <see cref="BillRequest.BillingZone"/>.</summary>
    public DateTimeZone? BillingZone { get; init; }

    /// <summary>Whether times without a reading are filled with the mean of the same time of day. Default: no.</summary>
    public bool EstimateWhereMissing { get; init; }

    /// <summary>Identifier of the meter that is billed. Default: the only one there is.</summary>
    public string? Meter { get; init; }

    /// <summary>Name of the channel that counts the controlled load. Default: as <see cref="BillRequest.ControlledLoadChannel"/>.</summary>
    public string? ControlledLoadChannel { get; init; }

    /// <summary>Name of the choice that the home has today, to say what a change saves. Default: <see langword="null"/>, not said.</summary>
    public string? Today { get; init; }

    /// <summary>Share of the tax that the home reclaims, such as a workshop's. Range: 0 to 1. Default: 0.</summary>
    public decimal TaxReclaimedShare { get; init; }

    /// <summary>Names of the conditions that the home meets, such as <c>pay on time</c>. Default: none.</summary>
    public IReadOnlyList<string> ConditionsMet { get; init; } = [];

    /// <summary>Bills the readings under every tariff, over all days as <see cref="BillRequest"/> does and year by year, and ranks the totals.</summary>
    /// <param name="cancel">Stops between two tariffs.</param>
    /// <exception cref="RecordException">The readings hold no import of energy, or several meters and none is chosen.</exception>
    /// <exception cref="TariffException">There is no tariff, there are two currencies, a condition that no tariff names, or today's is not among the choices.</exception>
    public CompareAnswer Answer(CancellationToken cancel = default)
    {
        var asked = new BilledSpan { From = From, To = To, BillingZone = BillingZone, Meter = Meter, ControlledLoad = ControlledLoadChannel, EstimateWhereMissing = EstimateWhereMissing };
        var readings = BilledReadings.Of(asked, Readings, Zone, Choices.Select(c => c.Tariffs.Latest));
        return TariffRanking.Of(Choices, readings, Zone, new RankingTerms(Today, TaxReclaimedShare, ConditionsMet), cancel);
    }
}
