using NodaTime;

namespace SolarEconomics;

/// <summary>What is asked: the bill of some readings under a tariff, over some days.</summary>
/// <param name="Tariffs">The tariff history that bills.</param>
/// <param name="Readings">The home's readings; import is needed, export counts as none where it is not recorded.</param>
/// <param name="Zone">The clock of the rates, where the tariff names none.</param>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed partial record BillRequest(TariffHistory Tariffs, Readings Readings, DateTimeZone Zone)
{
    /// <summary>First billing day. Default: the day of the first reading of import.</summary>
    public LocalDate? From { get; init; }

    /// <summary>First billing day that is no longer billed. Default: the day after the last reading of import.</summary>
    public LocalDate? To { get; init; }

    /// <summary>The clock of the billing days. Default: <see langword="null"/>, which takes the meter's own clock where its format fixes one; else
    /// the rates' clock, or its winter time all year where the readings start and end at midnight by that and not by the rates' clock.</summary>
    public DateTimeZone? BillingZone { get; init; }

    /// <summary>Billing periods in order. Default: <see langword="null"/>, one bill for all days asked for.</summary>
    public IReadOnlyList<DateSpan>? Periods { get; init; }

    /// <summary>How the days asked for are cut into bills, such as <c>BillingPeriods.Months</c>. Default: <see langword="null"/>, which takes <see cref="Periods"/>.</summary>
    public Func<DateSpan, IReadOnlyList<DateSpan>>? PeriodsBy { get; init; }

    /// <summary>Whether times without a reading are filled with the mean of the same time of day, which marks the bill as an estimate. Default: no.</summary>
    public bool EstimateWhereMissing { get; init; }

    /// <summary>Identifier of the meter that is billed. Default: <see langword="null"/>, the only one there is.</summary>
    public string? Meter { get; init; }

    /// <summary>Name of the channel, or its suffix such as E2, that counts the controlled load. Default: <see langword="null"/>: where the tariff
    /// prices one, a second element of the meter that sends nothing.</summary>
    public string? ControlledLoadChannel { get; init; }

    /// <summary>Names of the conditions that the home meets, such as <c>pay on time</c>. Default: none.</summary>
    public IReadOnlyList<string> ConditionsMet { get; init; } = [];

    /// <summary>Works the bill out.</summary>
    /// <exception cref="RecordException">The readings hold no import of energy, or several meters and none is chosen, or no day is left between first and last.</exception>
    /// <exception cref="TariffException">No tariff was in force on the first day, or a condition that the tariff does not name.</exception>
    public BillAnswer Answer()
    {
        BillingOptions.CheckConditions(ConditionsMet, Tariffs.Versions);
        var asked = new BilledSpan { From = From, To = To, BillingZone = BillingZone, Meter = Meter, ControlledLoad = ControlledLoadChannel, EstimateWhereMissing = EstimateWhereMissing };
        var read = BilledReadings.Of(asked, Readings, Zone, Tariffs.Versions);
        var periods = PeriodsBy?.Invoke(read.Days) ?? Periods;
        var options = new BillingOptions { BillingZone = read.BillingZone, Periods = periods ?? [read.Days], ConditionsMet = ConditionsMet };
        var plan = Tariffs.On(read.Grid, Zone, options);
        return new BillAnswer(read.Days, Tariffs.Currency, plan.Bills(read.Energy), read.CoveredShare)
        {
            IsEstimate = read.IsEstimate,
            HasPeriods = periods is not null,
            Unpriced = Tariffs.UnpricedBeside(ConditionsMet),
            Clocks = $"Hours follow {(Tariffs.Latest.Zone ?? Zone).Id}, billing days follow {read.BillingZone.Id}.",
            ReadingNotes = read.Notes,
        };
    }
}
