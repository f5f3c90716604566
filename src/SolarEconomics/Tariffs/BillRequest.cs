using NodaTime;

namespace SolarEconomics;

/// <summary>What is asked: the bill of some readings under a tariff, over some days.</summary>
/// <param name="Tariffs">The tariff history that bills.</param>
/// <param name="Readings">The home's readings; import is needed, export counts as none where it is not recorded.</param>
/// <param name="Zone">The clock of the rates, where the tariff names none.</param>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record BillRequest(TariffHistory Tariffs, Readings Readings, DateTimeZone Zone)
{
    /// <summary>First billing day. Default: the day of the first reading of import.</summary>
    public LocalDate? From { get; init; }

    /// <summary>First billing day that is no longer billed. Default: the day after the last reading of import.</summary>
    public LocalDate? To { get; init; }

    /// <summary>The clock of the billing days. Default: <see langword="null"/>, which takes the rates' clock, or its standard time
    /// all year where the readings start and end at midnight by that and not by the rates' clock, as a meter's own day does.</summary>
    public DateTimeZone? BillingZone { get; init; }

    /// <summary>Billing periods in order. Default: <see langword="null"/>, one bill for all days asked for.</summary>
    public IReadOnlyList<DateSpan>? Periods { get; init; }

    /// <summary>Whether times without a reading are filled with the mean of the same time of day, which marks the bill as an estimate. Default: no.</summary>
    public bool EstimateWhereMissing { get; init; }

    /// <summary>Works the bill out.</summary>
    /// <exception cref="RecordException">The readings hold no import of energy.</exception>
    /// <exception cref="TariffException">No tariff was in force on the first day.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The last day is not after the first.</exception>
    public BillAnswer Answer()
    {
        var import = BillColumn.Channels(Readings, FlowKind.Import);
        if (import.Count == 0) throw Throw.NoImportReadings(Readings);
        var export = BillColumn.Channels(Readings, FlowKind.Export);
        var start = import.Min(c => c.Start!.Value);
        var end = import.Max(c => c.End!.Value);
        var billingZone = BillingZone ?? BillColumn.MeterClock(start, end, Zone);
        var from = From ?? start.InZone(billingZone).Date;
        var to = To ?? (end - Duration.Epsilon).InZone(billingZone).Date.PlusDays(1);
        if (to <= from) throw Throw.NoBillingDay(from, to);
        var grid = BillColumn.Grid(import.Concat(export), from, to, billingZone);
        var taken = new BillColumn(grid, import);
        var sent = new BillColumn(grid, export);
        if (export.Count > 0) taken.CoverOnlyWith(sent);
        var share = taken.CoveredShare;
        var estimate = share < 1 && EstimateWhereMissing && share > 0;
        if (estimate)
        {
            taken.FillByTimeOfDay(billingZone);
            if (export.Count > 0) sent.FillByTimeOfDay(billingZone);
        }
        var plan = Tariffs.On(grid, Zone, new BillingOptions { BillingZone = billingZone, Periods = Periods ?? [new DateSpan(from, to)] });
        return new BillAnswer(new DateSpan(from, to), Tariffs.Currency, plan.Bills(taken.Kwh, sent.Kwh), share)
        {
            IsEstimate = estimate,
            Unpriced = Tariffs.Unpriced,
            Clocks = $"Hours follow {(Tariffs.Latest.Zone ?? Zone).Id}, billing days follow {billingZone.Id}.",
        };
    }
}
