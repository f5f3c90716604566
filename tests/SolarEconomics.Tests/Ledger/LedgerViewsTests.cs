using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: sums by hand; properties (months and devices sum to the ledger). Nothing is published about how a household's receipts add up.
public sealed class LedgerViewsTests
{
    private static readonly Ledger Book = SolarEconomics.Ledger.Read(new StringReader(
        """
        date,kind,amount,currency,device,description,market price
        2023-01-10,purchase,1000.00,EUR,roof,modules,
        2023-01-20,purchase,150.00,EUR,roof,second-hand inverter,400.00
        2023-03-05,spare,80.00,EUR,roof,two fuses and a board,
        2023-03-09,gift,60.00,EUR,roof,cable,
        2023-04-02,warranty refused,300.00,EUR,roof,,
        2023-04-12,spare used,50.00,EUR,roof,the board,
        2023-05-01,warranty paid,90.00,EUR,roof,,
        2023-05-03,loan received,500.00,EUR,,,
        2023-06-03,insurance,30.00,EUR,,,
        """), "ledger.csv");

    [Fact]
    public void Months_hold_every_entry_and_months_without_any()
    {
        var months = Book.ByMonth();
        Assert.Equal(6, months.Count);
        Assert.Equal(1_150m, months[0].Invested.Amount);
        Assert.Equal(0m, months[1].CashFlow.Amount);
        Assert.Equal(80m, months[2].Invested.Amount);
        Assert.Equal(90m, months[4].Income.Amount);
        Assert.Equal(500m, months[4].Finance.Amount);
        Assert.Equal(Book.CashFlows().Total.Amount, months.Sum(m => m.CashFlow.Amount));
        Assert.Equal([LedgerKind.Insurance], months[5].ByKind.Select(k => k.Kind));
    }

    [Fact]
    public void Spares_are_stock_until_they_are_used()
    {
        var stock = Book.Spares();
        Assert.Equal((80m, 50m, 30m), (stock.Bought.Amount, stock.Used.Amount, stock.Left.Amount));
        Assert.Equal("€30", stock.Say(CultureInfo.InvariantCulture).Figure);
        Assert.Equal(-1_170m, Book.CashFlows().Total.Amount); // Using one moves no money: 1000 + 150 + 80 + 30 - 90.
    }

    [Fact]
    public void Claims_say_what_was_paid_and_what_was_refused()
    {
        var claims = Book.Claims();
        Assert.Equal((90m, 300m), (claims.PaidOut.Amount, claims.TurnedDown.Amount));
        Assert.StartsWith("claims were paid, €90 in all; €300 were claimed and refused.", claims.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Gifts_and_bargains_have_a_price_paid_and_a_price_of_the_market() // by hand: 150 paid for what costs 400, a gift of 60
    {
        var inKind = Book.InKind();
        Assert.Equal((150m, 460m, 310m), (inKind.Paid.Amount, inKind.AtMarketPrices.Amount, inKind.NotPaid.Amount));
    }

    [Fact]
    public void Receipts_stand_by_kind_and_device()
    {
        var rows = Book.Receipts().Rows;
        Assert.Equal((LedgerKind.Purchase, "roof", 2, 1_150m), (rows[0].Kind, rows[0].Device, rows[0].Entries, rows[0].Sum.Amount));
        Assert.Equal(Book.Entries.Count, rows.Sum(r => r.Entries));
    }

    [Fact]
    public void In_the_money_of_a_year_each_entry_grows_by_its_own_month() // by hand: prices 10 % higher in 2024 than in every month of 2023
    {
        var index = PriceIndex.Of(Enumerable.Range(0, 24).Select(m => (new YearMonth(2023, 1).PlusMonths(m), m < 12 ? 100.0 : 110.0)));
        var today = Book.TotalsInMoneyOf(index, 2024);
        Assert.Equal(Book.Totals().Invested.Amount * 1.1m, today.Invested.Amount);
        Assert.Equal("real 2024", today.NetPaid.Basis.ToString());
        Assert.Contains("In money of 2024", today.Say(CultureInfo.InvariantCulture).Notes[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_market_price_that_is_no_number_is_refused_with_line_and_column()
    {
        var e = Assert.Throws<RecordException>(() => SolarEconomics.Ledger.Read(new StringReader("date,kind,amount,currency,market price\n2023-01-10,purchase,1000.00,EUR,cheap\n"), "ledger.csv"));
        Assert.Contains("ledger.csv, line 2, column 5", e.Message, StringComparison.Ordinal);
        Assert.Contains("market price \"cheap\"", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Maintenance_falls_due_by_the_calendar_with_hours_and_money()
    {
        var eur = Currency.Of("EUR");
        MaintenanceTask[] tasks = [new("clean the modules", new LocalDate(2025, 3, 31), 6, 3, 0), new("test the isolators", new LocalDate(2024, 5, 1), 12, 1, 80) { Device = "roof" }];
        var calendar = MaintenanceCalendar.Of(tasks, new DateSpan(new LocalDate(2025, 1, 1), new LocalDate(2027, 1, 1)), eur);
        Assert.Equal([new(2025, 3, 31), new(2025, 5, 1), new(2025, 9, 30), new(2026, 3, 31), new(2026, 5, 1), new LocalDate(2026, 9, 30)], calendar.Due.Select(d => d.Day));
        Assert.Equal(14, calendar.Hours);
        Assert.Equal(160m, calendar.Cost.Amount);
        Assert.Equal(80.05m, calendar.CostPerYear.Amount); // 160 over 730 days.
        Assert.Throws<ArgumentOutOfRangeException>(() => MaintenanceCalendar.Of([tasks[0] with { EveryMonths = 0 }], calendar.Span, eur));
    }
}
