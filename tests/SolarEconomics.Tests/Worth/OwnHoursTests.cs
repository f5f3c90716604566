using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: by hand (a year of days that are all alike), a twin whose hours were entered as paid receipts, properties. Published: none.
public sealed class OwnHoursTests
{
    private static readonly Currency Eur = Currency.Of("EUR");
    private static readonly Money Twenty = Money.Nominal(20, Eur);

    /// <summary>10 hours on the day the roof went into service, 4 in the summer after.</summary>
    private static readonly WorthToDate Free = YearSite.Worth(1_000m, Hours(new(2023, 1, 1), 10), Hours(new(2023, 6, 1), 4));

    private static readonly WorthToDate Paid = Free.WithOwnHours(Twenty);

    private static readonly LedgerKind[] Kinds =
        [LedgerKind.OwnHours, LedgerKind.Gift, LedgerKind.Sale, LedgerKind.Purchase, LedgerKind.Repair, LedgerKind.Grant, LedgerKind.Finance];

    private static readonly Gen<LedgerEntry[]> Worked =
        Gen.Select(Gen.Int[-30, 364], Gen.Int[0, 400], Gen.Int[0, 6])
            .Array[0, 8].Select(all => all.Select(e => Entry(e.Item1, e.Item2 / 4.0, Kinds[e.Item3])).ToArray());

    [Fact]
    public void Hours_that_put_the_plant_up_are_invested_and_later_ones_run_it() // by hand: 10 × 20 and 4 × 20
    {
        Assert.Equal((1_200m, 80m), (Paid.Recovery.Invested.Amount, Paid.Recovery.Running.Amount));
        Assert.Equal(80, Paid.RunningCosts.Amount);
        Assert.Equal(1_200, Paid.StraightLine!.Cost.Amount);
        Assert.Equal(Free.CashSoFar!.Total.Amount - 280, Paid.CashSoFar!.Total.Amount);
        Assert.Equal((1_000m, 0m), (Free.Recovery.Invested.Amount, Free.Recovery.Running.Amount));
        Assert.Equal(Free.Value, Paid.Value);
        Assert.Equal((Twenty, null), (Paid.OwnHourRate, Free.OwnHourRate));
        Assert.Same(Free, Paid.WithoutOwnHours);
    }

    [Fact]
    public void An_outlook_goes_on_with_the_mean_of_the_hours_that_run_the_plant() // by hand: 280 so far, then 80 a year for 6,940 days
    {
        var (free, paid) = (Free.Outlook(YearSite.Plain), Paid.Outlook(YearSite.Plain));
        Assert.Equal(280 + (80 * 6_940 * 24 / 8_766.0), (double)(free.PositionAtHorizon - paid.PositionAtHorizon).Amount, 0.01);
        var stated = YearSite.Plain with { RunningCostsPerYear = 0 };
        Assert.Equal(280, (double)(Free.Outlook(stated).PositionAtHorizon - Paid.Outlook(stated).PositionAtHorizon).Amount, 0.01);
    }

    [Fact]
    public void Priced_hours_are_what_the_same_receipts_would_have_been() => Gen.Select(Worked, Gen.Int[0, 60]).Sample((worked, rate) =>
    {
        var paid = YearSite.Worth(1_000m, worked).WithOwnHours(Money.Nominal(rate, Eur));
        // The twin: each hour entered as a receipt of its own, on a day no earlier than the first purchase.
        var receipts = worked.Where(e => e.OwnHours > 0 && e.Kind != LedgerKind.Finance).Select(e => new LedgerEntry(
            LocalDate.Max(e.Date, YearSite.First),
            e.Kind is LedgerKind.Purchase || (e.Kind != LedgerKind.Repair && e.Date <= YearSite.First) ? LedgerKind.Purchase : LedgerKind.Labour,
            Money.Nominal(Math.Round((decimal)e.OwnHours * rate, 2, MidpointRounding.AwayFromZero), Eur)));
        var twin = YearSite.Worth(1_000m, [.. worked.Select(e => e with { OwnHours = 0 }), .. receipts]);
        Assert.Equal(twin.CashSoFar!.Total, paid.CashSoFar!.Total);
        Assert.Equal(twin.Recovery.Invested, paid.Recovery.Invested);
        Assert.Equal(twin.Recovery.Running, paid.Recovery.Running);
        var (a, b) = (twin.Outlook(), paid.Outlook());
        Assert.Equal((double)a.Npv.Amount, (double)b.Npv.Amount, 0.011);
        Assert.Equal((double)a.PositionAtHorizon.Amount, (double)b.PositionAtHorizon.Amount, 0.011);
    }, iter: 30);

    [Fact]
    public void The_priced_ledger_has_the_cash_flows_of_own_hours_paid() => Gen.Select(Worked, Gen.Int[0, 6_000]).Sample((worked, cents) =>
    {
        var ledger = Ledger.From([new LedgerEntry(YearSite.First, LedgerKind.Purchase, Money.Nominal(1_000, Eur)), .. worked]);
        var rate = Money.Nominal(cents / 100m, Eur);
        var paid = ledger.WithOwnHoursPaid(rate, _ => false);
        Assert.Equal(ledger.CashFlowsWithOwnHours(rate).Total, paid.CashFlows().Total);
        Assert.Equal(paid.CashFlows().Total, paid.CashFlowsWithOwnHours(rate).Total);
        Assert.Equal(ledger.FirstPurchase.Date, ledger.WithOwnHoursPaid(rate, _ => true).FirstPurchase.Date);
        Assert.Equal(worked.Sum(e => e.OwnHours), paid.OwnHours, 1e-9);
    });

    [Fact]
    public void Another_rate_takes_the_place_of_the_first_and_none_changes_nothing()
    {
        Assert.Equal(Free.WithOwnHours(Money.Nominal(30, Eur)).CashSoFar!.Total, Paid.WithOwnHours(Money.Nominal(30, Eur)).CashSoFar!.Total);
        Assert.Equal(Free.CashSoFar!.Total, Free.WithOwnHours(Money.Nominal(0, Eur)).CashSoFar!.Total);
    }

    [Fact]
    public void Both_answers_stand_in_the_words()
    {
        Assert.Contains("14 own hours of work cost nothing here; with a rate for own hours they count.", Free.Notes);
        Assert.Equal("Own hours are counted at €20.00 each: 14 hours so far. Those that put a device up are purchases, the others running costs.", Paid.Notes[^1]);
        Assert.DoesNotContain(Paid.Notes, n => n.Contains("cost nothing here", StringComparison.Ordinal));
        var rows = Paid.Say(CultureInfo.InvariantCulture).Tables.Single(t => t.Caption.StartsWith("Cash from", StringComparison.Ordinal)).Rows;
        Assert.Equal("The same without own hours, counted here at €20.00 each", rows[^1][0]);
        Assert.Contains($"Own hours count at €20.00 each, ahead at their mean so far. Without them the net present value is {Wording.Whole(Free.Outlook(YearSite.Plain).Npv, CultureInfo.InvariantCulture)}.",
            Paid.Outlook(YearSite.Plain).Say(CultureInfo.InvariantCulture).Notes);
        Assert.Contains("14 own hours are counted at €20.00 each.", Paid.Ledger!.Say(CultureInfo.InvariantCulture).Notes);
    }

    [Fact]
    public void A_rate_below_0_in_another_currency_or_without_a_ledger_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Free.WithOwnHours(Money.Nominal(-1, Eur)));
        Assert.Throws<MixedMoneyException>(() => Free.WithOwnHours(Money.Nominal(20, Currency.Of("USD"))));
        Assert.Throws<MixedMoneyException>(() => Free.WithOwnHours(new Money(20, Eur, PriceBasis.RealOf(2024))));
        Assert.StartsWith("a small site: found no ledger", Assert.Throws<RecordException>(() => SmallDay(null)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rate_among_the_options_counts_them_at_once()
    {
        var worth = SmallDay(Ledger.From(new LedgerEntry(SmallSite.Day, LedgerKind.Purchase, Money.Nominal(100, Eur)) { OwnHours = 1.5 }));
        Assert.Equal((Twenty, -130m), (worth.OwnHourRate, worth.Ledger!.CashFlows().Total.Amount)); // by hand: 100 + 1.5 × 20
    }

    [Fact]
    public void A_maintenance_calendar_costs_its_hours_too() // by hand: 2 times a year (50 + 3 h × 20) over 730 days
    {
        var calendar = MaintenanceCalendar.Of([new MaintenanceTask("wash", new LocalDate(2025, 1, 1), 6, 3, 50)],
            new DateSpan(new(2025, 1, 1), new(2027, 1, 1)), Eur);
        Assert.Equal(Math.Round(4 * 110 * 365.25m / 730, 2), calendar.CostPerYearWithOwnHours(Twenty).Amount);
        Assert.Equal(calendar.CostPerYear, calendar.CostPerYearWithOwnHours(Money.Nominal(0, Eur)));
        Assert.Throws<MixedMoneyException>(() => calendar.CostPerYearWithOwnHours(Money.Nominal(20, Currency.Of("USD"))));
    }

    /// <summary>What is paid with its hours falls on or after the first purchase; all else may come before.</summary>
    private static LedgerEntry Entry(int day, double hours, LedgerKind kind) =>
        new(YearSite.First.PlusDays(kind is LedgerKind.Purchase or LedgerKind.Repair ? Math.Abs(day) : day), kind, Money.Nominal(7, Eur)) { OwnHours = hours };

    private static LedgerEntry Hours(LocalDate day, double hours) => new(day, LedgerKind.OwnHours, Money.Nominal(0, Eur)) { OwnHours = hours };

    private static WorthToDate SmallDay(Ledger? ledger) => SolarEconomics.Worth.ToDate(
        SmallSite.Site(new Device("roof", MeasurementPoint.InverterAcOut)), SmallSite.Of(SmallSite.Hours("roof", FlowKind.Generation, (12, 1)), SmallSite.Hours("import", FlowKind.Import, (20, 1))),
        SmallSite.Flat(0.30m, 0.10m), ledger, new WorthOptions { OwnHourRate = Twenty });
}
