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

    /// <summary>Bills the readings under every tariff, over all days as <see cref="BillRequest"/> does and year by year, and ranks the totals.</summary>
    /// <param name="cancel">Stops between two tariffs.</param>
    /// <exception cref="RecordException">The readings hold no import of energy, or several meters and none is chosen, or no day is left between first and last.</exception>
    /// <exception cref="TariffException">There is no tariff, or there are two currencies.</exception>
    public CompareAnswer Answer(CancellationToken cancel = default)
    {
        if (Choices.Count == 0) throw Throw.NoTariff();
        foreach (var choice in Choices)
            if (choice.Tariffs.Currency != Choices[0].Tariffs.Currency)
                throw new TariffException(Throw.TwoCurrencies(Choices[0].Tariffs.Latest, choice.Tariffs.Latest));
        var asked = new BilledSpan { From = From, To = To, BillingZone = BillingZone, Meter = Meter, ControlledLoad = ControlledLoadChannel, EstimateWhereMissing = EstimateWhereMissing };
        var readings = BilledReadings.Of(asked, Readings, Zone, Choices.Any(c => c.Tariffs.Latest.PricesControlledLoad));
        var years = Years(readings.Days);
        var costs = new List<TariffCost>();
        foreach (var choice in Choices)
        {
            cancel.ThrowIfCancellationRequested();
            var tariffs = choice.Tariffs.OnlyLatest();
            costs.Add(new TariffCost(choice.Name, Totals(tariffs, readings, [readings.Days]).Single(), years.Count == 0 ? [] : Totals(tariffs, readings, years)));
        }
        return CompareAnswer.Of(readings, Choices[0].Tariffs.Currency, costs);
    }

    private decimal[] Totals(TariffHistory tariffs, BilledReadings readings, IReadOnlyList<DateSpan> periods)
    {
        var plan = tariffs.On(readings.Grid, Zone, new BillingOptions { BillingZone = readings.BillingZone, Periods = periods });
        return [.. plan.Bills(readings.Energy).Select(b => b.Total.Amount)];
    }

    /// <summary>The whole years of the readings, counted from the first day.</summary>
    private static List<DateSpan> Years(DateSpan days)
    {
        var years = new List<DateSpan>();
        for (var i = 0; days.Start.PlusYears(i + 1) <= days.End; i++)
            years.Add(new DateSpan(days.Start.PlusYears(i), days.Start.PlusYears(i + 1)));
        return years;
    }
}
