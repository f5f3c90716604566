using NodaTime;

namespace SolarEconomics;

/// <summary>What is asked: which of several tariffs would have billed a home's own readings least.</summary>
/// <param name="Choices">The tariffs, at least one, all in one currency; the latest version of each is taken for all time.</param>
/// <param name="Readings">The home's readings; import is needed, export counts as none where it is not recorded.</param>
/// <param name="Zone">The clock of the rates, where a tariff names none.</param>
public sealed record CompareRequest(IReadOnlyList<TariffChoice> Choices, Readings Readings, DateTimeZone Zone)
{
    /// <summary>First billing day. Default: the day of the first reading of import.</summary>
    public LocalDate? From { get; init; }

    /// <summary>First billing day that is no longer billed. Default: the day after the last reading of import.</summary>
    public LocalDate? To { get; init; }

    /// <summary>The clock of the billing days. Default: as <see cref="BillRequest.BillingZone"/>.</summary>
    public DateTimeZone? BillingZone { get; init; }

    /// <summary>Whether times without a reading are filled with the mean of the same time of day. Default: no.</summary>
    public bool EstimateWhereMissing { get; init; }

    /// <summary>Bills the readings under every tariff, month by month from the first day, and ranks the totals.</summary>
    /// <param name="cancel">Stops between two tariffs.</param>
    /// <exception cref="RecordException">The readings hold no import of energy.</exception>
    /// <exception cref="TariffException">There is no tariff, or there are two currencies.</exception>
    public CompareAnswer Answer(CancellationToken cancel = default)
    {
        if (Choices.Count == 0) throw Throw.NoTariff();
        foreach (var choice in Choices)
            if (choice.Tariffs.Currency != Choices[0].Tariffs.Currency)
                throw new TariffException(Throw.TwoCurrencies(Choices[0].Tariffs.Latest, choice.Tariffs.Latest));
        var readings = BilledReadings.Of(Readings, Zone, From, To, BillingZone, EstimateWhereMissing);
        var options = new BillingOptions { BillingZone = readings.BillingZone, Periods = Months(readings.Days) };
        var totals = new List<(string Name, decimal[] Months)>();
        foreach (var choice in Choices)
        {
            cancel.ThrowIfCancellationRequested();
            var plan = choice.Tariffs.OnlyLatest().On(readings.Grid, Zone, options);
            totals.Add((choice.Name, [.. plan.Bills(readings.ImportKwh, readings.ExportKwh).Select(b => b.Total.Amount)]));
        }
        var wholeYears = Enumerable.Range(1, 200).TakeWhile(y => readings.Days.Start.PlusYears(y) <= readings.Days.End).Count();
        return CompareAnswer.Of(readings, Choices[0].Tariffs.Currency, totals, wholeYears);
    }

    /// <summary>Months counted from the first day, so that twelve of them are a year of these readings.</summary>
    private static List<DateSpan> Months(DateSpan days)
    {
        var months = new List<DateSpan>();
        for (var i = 0; days.Start.PlusMonths(i) < days.End; i++)
            months.Add(new DateSpan(days.Start.PlusMonths(i), days.Start.PlusMonths(i + 1)));
        return months;
    }
}
