using NodaTime;

namespace SolarEconomics;

public sealed partial class WorthToDate
{
    private const int DaysOfReceipts = 90;

    private static readonly LedgerKind[] s_ofFailures =
    [
        LedgerKind.Purchase, LedgerKind.Repair, LedgerKind.Part, LedgerKind.SpareUsed, LedgerKind.Labour, LedgerKind.LiftHire, LedgerKind.Disposal,
        LedgerKind.Sale, LedgerKind.WarrantyPaid, LedgerKind.WarrantyRefused,
    ];

    /// <summary>What a failure cost: the receipts of the device and its successor around it, and the energy that was not made.</summary>
    /// <param name="device">The device, as the plant names it.</param>
    /// <param name="down">Days without it, inside the records.</param>
    /// <param name="lostKwh">Energy not made, where it is known from weather or neighbours. Unit: kWh of AC. Default: <see langword="null"/>, taken from the device's own other years.</param>
    /// <exception cref="UnknownNameException">No such device; the message names the nearest.</exception>
    /// <exception cref="RecordException">There is no ledger, nothing bounds the generation, or the days are outside the records or without a like in other years.</exception>
    /// <remarks>Lost energy by default: the device's and its successor's mean per day of the same calendar months outside the failure. Its worth: the mean worth of a kWh made in those months.</remarks>
    public FailureCost CostOfFailure(string device, DateSpan down, double? lostKwh = null)
    {
        ArgumentNullException.ThrowIfNull(device);
        if (Ledger is null) throw Throw.NoLedger(Site.Name);
        if (Value is null) throw Throw.NoValue(Site.Name);
        if (Site.Plant.Find(device) is null) throw Throw.UnknownDevice(device, Site.Plant.Devices.Select(d => d.Name));
        if (down.Days < 1 || down.Start < Period.Start || down.End > Period.End) throw Throw.DaysOutsideRecords(device, down, Period);
        var names = Site.Plant.Devices.Where(d => d.Name == device || d.Replaces == device).Select(d => d.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var receipts = Ledger.Of(s_ofFailures).Where(e => e.Device is { } name && names.Contains(name) && e.Date >= down.Start && e.Date < down.End.PlusDays(DaysOfReceipts)).ToList();
        var repair = -receipts.Sum(e => e.Kind == LedgerKind.SpareUsed ? -e.Amount.Amount : e.CashFlow.Amount);
        var rule = lostKwh is null
            ? "Lost energy: the mean day of the same calendar months outside the failure, from the device's own record and its successor's; no weather correction."
            : "Lost energy as stated.";
        var kwh = lostKwh is { } stated ? Require.Within(stated, 0, 1e9, "kWh") : LikeDays(names, down, device);
        return new FailureCost(device, down, receipts, Money.Nominal(repair, Site.Currency), kwh,
            Money.Nominal(Math.Round((decimal)(kwh * WorthPerKwh(down)), Site.Currency.MinorDigits, MidpointRounding.AwayFromZero), Site.Currency), rule);
    }

    /// <summary>Energy of the mean day of the same calendar months outside the failure, times the days down. Unit: kWh.</summary>
    private double LikeDays(HashSet<string> names, DateSpan down, string device)
    {
        var made = Flows.ByDevice.Where(d => names.Contains(d.Key)).Select(d => d.Value).ToList();
        var daysOfMonth = DaysOfMonth(down);
        var likeDays = new Dictionary<LocalDate, double>();
        for (var i = 0; i < Flows.Grid.Count; i++)
        {
            var day = Records.Days[i];
            if (daysOfMonth.ContainsKey(day.Month) && !down.Contains(day)) likeDays[day] = likeDays.GetValueOrDefault(day) + made.Sum(m => m[i]);
        }
        // A day on which nothing was made is no like day: the device was not there yet, or down as well.
        var perDay = likeDays.Where(d => d.Value > 0).GroupBy(d => d.Key.Month).ToDictionary(g => g.Key, g => g.Average(d => d.Value));
        foreach (var month in daysOfMonth.Keys) if (!perDay.ContainsKey(month)) throw Throw.NoLikeDays(device, month);
        return daysOfMonth.Sum(m => perDay[m.Key] * m.Value);
    }

    /// <summary>What a kWh was worth in the calendar months of the failure, in all years of the records.</summary>
    private double WorthPerKwh(DateSpan down)
    {
        var months = DaysOfMonth(down);
        var (worth, all) = (0.0, 0.0);
        for (var i = 0; i < Flows.Grid.Count; i++)
        {
            if (!months.ContainsKey(Records.Days[i].Month)) continue;
            worth += (Prices.Import[i] * (Flows.GenerationKwh[i] - Flows.ExportKwh[i])) + (Prices.Export[i] * Flows.ExportKwh[i]);
            all += Flows.GenerationKwh[i];
        }
        return all > 0 ? worth / all : 0;
    }

    /// <summary>How many days of the failure fall into each calendar month.</summary>
    private static Dictionary<int, int> DaysOfMonth(DateSpan down) => Enumerable.Range(0, down.Days).CountBy(d => down.Start.PlusDays(d).Month).ToDictionary();
}
