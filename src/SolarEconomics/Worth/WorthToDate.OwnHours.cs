using System.Globalization;

namespace SolarEconomics;

public sealed partial class WorthToDate
{
    /// <summary>The same value to date with own hours costing nothing; <see langword="null"/> where they cost nothing here already.</summary>
    public WorthToDate? WithoutOwnHours { get; private init; }

    /// <summary>What an own hour counts for in cash, payback, straight line and outlook; <see langword="null"/> where own hours cost nothing.</summary>
    public Money? OwnHourRate => Ledger?.OwnHourRate;

    /// <summary>The value to date with the owner's hours paid at a stated rate: receipts, cash, straight line, rates of return and every outlook from it count them.</summary>
    /// <param name="ratePerHour">What an hour is worth, in the site's currency. Range: 0 to 1e9.</param>
    /// <exception cref="RecordException">There is no ledger.</exception>
    /// <exception cref="MixedMoneyException">The rate is in another currency, or real.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rate is out of range.</exception>
    /// <remarks>Hours worked with a payment count where the payment counts. Hours by themselves put the plant up where they stand no later than the day on which
    /// their device went into service (the first day of the records where the plant does not say), and keep it running after that. An outlook goes on with the yearly mean of the latter,
    /// unless running costs are stated. The energy and its value stay as they are.</remarks>
    public WorthToDate WithOwnHours(Money ratePerHour)
    {
        var plain = WithoutOwnHours ?? this;
        if (plain.Ledger is null) throw Throw.NoLedger(Site.Name);
        var ledger = plain.Ledger.WithOwnHoursPaid(ratePerHour, plain.PutsUp);
        return new WorthToDate(Site, Tariffs, ledger, Options, Records, Flows, Prices, _ladder)
        {
            Period = Period,
            Rung = Rung,
            Range = Range,
            Value = Value,
            Months = Months,
            Energy = Energy,
            StraightLine = StraightLineOf(Records, Tariffs, ledger, Options, Period),
            RunningCosts = RunningCostsOf(ledger, Period, Site.Currency),
            CashSoFar = CashSoFar is null ? null : CashOf(ledger, [.. Months], Period, Site.Currency),
            Notes = [.. plain.Notes.Except(UncountedHours(plain.Ledger), StringComparer.Ordinal), HoursNote(ledger, ratePerHour)],
            WithoutOwnHours = plain,
        };
    }

    private static IEnumerable<string> UncountedHours(Ledger? ledger)
    {
        if (ledger is { OwnHours: > 0 and var hours })
            yield return $"{Wording.Count(hours, "#,0.#", "own hour", CultureInfo.InvariantCulture)} of work cost nothing here; with a rate for own hours they count.";
    }

    private bool PutsUp(LedgerEntry entry)
    {
        var devices = Site.Plant.Devices.Where(d => d.InService is not null && (entry.Device is null || string.Equals(d.Name, entry.Device, StringComparison.OrdinalIgnoreCase)));
        var inService = devices.Select(d => d.InService!.Value).DefaultIfEmpty(Period.Start).Min();
        return entry.Date <= inService;
    }

    private string HoursNote(Ledger ledger, Money ratePerHour)
    {
        var counted = ledger.Before(Period.End).Entries.Sum(e => e.PaidOwnHours);
        return $"Own hours are counted at {Wording.Exact(ratePerHour, CultureInfo.InvariantCulture)} each: {Wording.Count(counted, "#,0.#", "hour", CultureInfo.InvariantCulture)} so far. " +
            "Those that put a device up are purchases, the others running costs.";
    }
}
