using System.Globalization;
using NodaTime;

namespace SolarEconomics;

public sealed partial class WorthToDate
{
    internal static WorthToDate Compute(Site site, Readings readings, TariffHistory tariffs, Ledger? ledger, WorthOptions options)
    {
        var records = SiteRecords.Lay(site, readings);
        var plan = tariffs.On(records.Grid, site.Zone);
        var prices = PricesOf(plan, records, site);
        var ladder = new EvidenceLadder(records, prices);
        var bills = new BillDifference(plan, site.TaxReclaimedShare);
        var (lowFlows, highFlows) = ladder.Ends();
        var flows = records.GenerationIsBounded ? EnergySet.Middle(lowFlows, highFlows) : lowFlows;
        var perMonth = bills.PerPeriod(flows);
        var period = PeriodOf(records.Grid, site.Zone);
        Money? value = records.GenerationIsBounded ? Money.Nominal(perMonth.Sum(), site.Currency) : null;
        var ranges = new WorthLadder(site, ladder, bills);
        var top = ranges.Highest(value is null ? null : flows);
        var months = MonthsOf(flows, records, prices, perMonth, site);
        return new WorthToDate(site, tariffs, ledger, options, records, flows, prices, new Lazy<IReadOnlyList<LadderStep>>(() => ranges.All(top)))
        {
            Period = period,
            Rung = ladder.Highest,
            Range = top.Range,
            Value = value,
            Months = months,
            Energy = TotalsOf(months, flows),
            StraightLine = StraightLineOf(records, tariffs, ledger, options, period),
            RunningCosts = RunningCostsOf(ledger, period, site.Currency),
            CashSoFar = value is null ? null : CashOf(ledger, months, period, site.Currency),
            Notes = [.. NotesOf(records, ladder, tariffs, plan), .. UncountedHours(ledger)],
        };
    }

    internal static EvidencePrices PricesOf(BillingPlan plan, SiteRecords records, Site site)
    {
        var count = records.Grid.Count;
        var import = new double[count];
        var export = new double[count];
        var monthOf = new int[count];
        for (var i = 0; i < count; i++)
        {
            var withTax = plan.ImportPricePerKwhWithTax(i);
            import[i] = withTax - (site.TaxReclaimedShare * (withTax - plan.ImportPricePerKwhBeforeTax(i)));
            export[i] = plan.ExportPricePerKwh(i);
            monthOf[i] = ((records.Days[i].Year - records.Days[0].Year) * 12) + records.Days[i].Month - records.Days[0].Month;
        }
        return new EvidencePrices(import, export, monthOf);
    }

    private static DateSpan PeriodOf(IntervalGrid grid, DateTimeZone zone)
    {
        var start = grid.Start.InZone(zone).Date;
        var end = grid.End.InZone(zone);
        return new DateSpan(start, end.TimeOfDay == LocalTime.Midnight ? end.Date : end.Date.PlusDays(1));
    }

    private static List<MonthOfEnergy> MonthsOf(EnergySet flows, SiteRecords records, EvidencePrices prices, decimal[] values, Site site)
    {
        var went = Destinations.Of(flows);
        var months = new List<MonthOfEnergy>();
        for (var from = 0; from < flows.Grid.Count;)
        {
            var to = from;
            while (to < flows.Grid.Count && prices.MonthOf[to] == prices.MonthOf[from]) to++;
            var day = records.Days[from];
            months.Add(new MonthOfEnergy(
                new YearMonth(day.Year, day.Month),
                Sum(went.UsedDirectlyKwh, from, to),
                Sum(went.UsedFromStorageKwh, from, to),
                Sum(went.ExportedKwh, from, to),
                Sum(went.LostKwh, from, to),
                Sum(records.CensoredHours, from, to),
                Sum(flows.ImportKwh, from, to),
                Money.Nominal(values[months.Count], site.Currency),
                records.MissingHours(from, to)));
            from = to;
        }
        return months;
    }

    private static EnergyTotals TotalsOf(List<MonthOfEnergy> months, EnergySet flows) => new(
        flows.GenerationKwh.Sum(),
        months.Sum(m => m.UsedDirectlyKwh),
        months.Sum(m => m.UsedFromStorageKwh),
        months.Sum(m => m.ExportedKwh),
        months.Sum(m => m.LostKwh),
        months.Sum(m => m.ImportedKwh),
        months.Sum(m => m.CensoredHours));

    private static double Sum(double[] values, int from, int to)
    {
        var sum = 0.0;
        for (var i = from; i < to; i++) sum += values[i];
        return sum;
    }

    private static StraightLine? StraightLineOf(SiteRecords records, TariffHistory tariffs, Ledger? ledger, WorthOptions options, DateSpan period)
    {
        var counted = records.Generation.Sum(g => g.DisplayedKwh);
        if (ledger is null || counted <= 0) return null;
        var price = options.OnePricePerKwh ?? tariffs.Latest.StandardImportPerKwhWithTax;
        var value = Money.Nominal(Math.Round((decimal)counted * price, 2, MidpointRounding.AwayFromZero), ledger.Currency);
        var first = ledger.FirstPurchase.Date;
        var years = NodaTime.Period.DaysBetween(first, period.End) / 365.25;
        var cost = Money.Nominal(-ledger.Before(period.End).Of(LedgerClass.Investment).Sum(e => e.CashFlow.Amount), ledger.Currency);
        return new StraightLine(counted, price, value, cost, years, first);
    }

    private static Money RunningCostsOf(Ledger? ledger, DateSpan period, Currency currency) => Money.Nominal(
        ledger is null ? 0 : -ledger.Of(LedgerClass.Running).Where(e => period.Contains(e.Date)).Sum(e => e.CashFlow.Amount), currency);

    private static DatedMoneyFlow? CashOf(Ledger? ledger, List<MonthOfEnergy> months, DateSpan period, Currency currency)
    {
        if (ledger is null) return null;
        var savings = months.Select(m => new DatedAmount(
            LocalDate.Min(m.Month.OnDayOfMonth(1).PlusMonths(1), period.End), m.Value.Amount) { Origin = "savings" });
        var upToNow = ledger.CashFlows().Amounts.Where(a => a.Date < period.End);
        return DatedMoneyFlow.Sorted(currency, PriceBasis.Nominal, upToNow.Concat(savings));
    }

    private static List<string> NotesOf(SiteRecords records, EvidenceLadder ladder, TariffHistory tariffs, BillingPlan plan)
    {
        var notes = new List<string>
        {
            "Value is the bill without the plant less the bill with it, month by month with all rounding, at the tariff in force then.",
            "Generation serves the load first, then the battery, then the grid; battery energy is solar in proportion to what charged it.",
        };
        notes.AddRange(EndsInWords(ladder, plan));
        foreach (var device in records.Generation.Where(g => g.Series.MissingCount > 0))
            notes.Add(FormattableString.Invariant($"{device.Device.Name}: {Wording.Count(device.Series.MissingCount * records.Grid.StepHours, "0.#", "hour", CultureInfo.InvariantCulture)} without a reading; bounded by its counter and the clear sky."));
        if (records.Import is { MissingCount: > 0 } import)
            notes.Add(FormattableString.Invariant($"Import: {Wording.Count(import.MissingCount * records.Grid.StepHours, "0.#", "hour", CultureInfo.InvariantCulture)} without a reading; the month's mean at that time of day stands in, in both bills."));
        if (records.Export is { MissingCount: > 0 } export)
            notes.Add(FormattableString.Invariant($"Export: {Wording.Count(export.MissingCount * records.Grid.StepHours, "0.#", "hour", CultureInfo.InvariantCulture)} without a reading; between nothing and all of the generation."));
        notes.AddRange(ladder.Doubtful);
        notes.AddRange(tariffs.Unpriced.Select(path => $"Not priced from the tariff file: {path}"));
        return notes;
    }

    private static IEnumerable<string> EndsInWords(EvidenceLadder ladder, BillingPlan plan)
    {
        var rungs = Enumerable.Range((int)EvidenceRung.Counters, (int)ladder.Highest).Select(r => (EvidenceRung)r).ToList();
        var bounds = rungs.Where(rung => !ladder.IsAttained(rung)).Select(rung => new LadderStep(rung, default).Words).ToList();
        if (bounds.Count < rungs.Count)
            yield return "Ends of a range are full sets of flows that the records of its rung allow, worth least and most by the price of each interval, billed with all rounding; " +
                "a battery's flows keep to its totals and its power, not to a state of charge, which is no record.";
        if (bounds.Count > 0)
            yield return $"From {string.Join(", ", bounds)}: bounds from the price of each kWh with every unknown at its worst and at its best, as nobody read the battery; no flows need reach them.";
        if (!plan.IsPricedByTheHour)
            yield return "The tariff also has parts that are no price of an hour, such as blocks, demand or limits: the flows at the ends are billed with them but not chosen by them, so others may lie a little beyond.";
    }
}
