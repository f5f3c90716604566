namespace SolarEconomics;

/// <summary>What a plant has been worth: the main question.</summary>
public static class Worth
{
    /// <summary>The value to date: the bill of the same wanted load without the plant, less the actual bill, at the tariff in force then.</summary>
    /// <param name="site">Place, clock, currency and plant.</param>
    /// <param name="readings">Whatever records there are; the range says how much they tell.</param>
    /// <param name="tariffs">The tariff versions that cover the records.</param>
    /// <param name="ledger">What was paid and received; <see langword="null"/> where it is not known: there is then no payback and no outlook.</param>
    /// <param name="options">Choices; <see langword="null"/> for the defaults.</param>
    /// <exception cref="RecordException">Neither interval readings nor counters, a currency other than the site's, or a rate for own hours without a ledger.</exception>
    /// <remarks>Equation: value = Σ over billing periods of bill(wanted load, no export) − bill(import, export), taxes that are reclaimed left out.
    /// Where readings are missing, a low and a high end stand in, both consistent with every record.</remarks>
    public static WorthToDate ToDate(Site site, Readings readings, TariffHistory tariffs, Ledger? ledger = null, WorthOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(tariffs);
        if (tariffs.Currency != site.Currency) throw Throw.CurrencyOfSite(site.Currency, tariffs.Currency, "tariff prices");
        if (ledger is not null && ledger.Currency != site.Currency) throw Throw.CurrencyOfSite(site.Currency, ledger.Currency, "ledger");
        var worth = WorthToDate.Compute(site, readings, tariffs, ledger, options ?? new WorthOptions());
        return options?.OwnHourRate is { } rate ? worth.WithOwnHours(rate) : worth;
    }
}
