using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What a ledger adds up, and which way money goes.</summary>
public sealed class LedgerTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    private const string Small = """
        # a remark
        date,kind,amount,currency,device,description,own hours
        2022-03-01,purchase,4200,EUR,south roof,"modules, second-hand",
        2022-04-10,grant,1000,EUR,,,
        2022-05-01,own hours,0,EUR,south roof,putting up,12.5
        2023-06-01,repair,180.50,EUR,inverter,,
        2023-07-01,warranty refused,300,EUR,inverter,,
        2024-01-15,sale,90,EUR,,,
        2024-02-01,finance,75,EUR,,,
        """;

    [Fact]
    public void Purchases_are_negative_and_grants_positive_in_the_owners_pocket()
    {
        var flow = Read(Small).CashFlows();
        Assert.Equal([-4200m, 1000m, -180.50m, 90m], flow.Amounts.Select(a => a.Amount));
        Assert.Equal(new LocalDate(2022, 3, 1), flow.FirstDate);
        Assert.Equal(PriceBasis.Nominal, flow.Basis);
    }

    [Fact]
    public void Loan_flows_are_in_the_owners_view_only()
    {
        var ledger = Read(Small);
        Assert.Equal(-3290.50m, ledger.CashFlows().Total.Amount);
        Assert.Equal(-3365.50m, ledger.OwnerCashFlows().Total.Amount);
    }

    [Fact]
    public void Own_hours_cost_nothing_until_they_are_priced()
    {
        var ledger = Read(Small);
        Assert.Equal(-3290.50m - 12.5m * 20, ledger.CashFlowsWithOwnHours(Money.Nominal(20, Eur)).Total.Amount);
        Assert.Throws<MixedMoneyException>(() => ledger.CashFlowsWithOwnHours(Money.Nominal(20, Currency.Of("USD"))));
        Assert.Throws<ArgumentOutOfRangeException>(() => ledger.CashFlowsWithOwnHours(Money.Nominal(-1, Eur)));
    }

    [Fact]
    public void Totals_sum_to_the_cash_flow_by_class_by_kind_and_by_device()
    {
        var ledger = Read(Small);
        var totals = ledger.Totals();
        Assert.Equal(3200m, totals.Invested.Amount);
        Assert.Equal(180.50m, totals.Running.Amount);
        Assert.Equal(90m, totals.Income.Amount);
        Assert.Equal(-ledger.CashFlows().Total.Amount, totals.NetPaid.Amount);
        Assert.Equal(ledger.CashFlows().Total.Amount, totals.ByDevice.Sum(d => d.CashFlow.Amount));
        Assert.Equal(ledger.Entries.Count, totals.ByKind.Sum(k => k.Entries));
        Assert.Equal(12.5, totals.OwnHours);
    }

    [Fact]
    public void A_ledger_says_itself_without_the_owners_words()
    {
        var finding = Read(Small).Say(CultureInfo.InvariantCulture);
        Assert.Equal("€3,290.50", finding.Figure);
        Assert.Equal("was paid in all: €3,200.00 invested after grants and refunds, €180.50 of running costs, less €90.00 received.", finding.Words);
        Assert.DoesNotContain(finding.Tables.SelectMany(t => t.Rows).SelectMany(r => r), cell => cell.Contains("second-hand", StringComparison.Ordinal));
    }

    [Fact]
    public void An_entry_remembers_its_file_and_line()
    {
        var entry = Read(Small).Of(LedgerKind.Repair).Single();
        Assert.Equal(("ledger.csv", 6, "inverter"), (entry.File, entry.Line, entry.Device));
    }

    [Fact]
    public void Entries_out_of_order_are_put_in_place_and_noted()
    {
        var ledger = Read("date,kind,amount,currency\n2023-01-01,repair,10,EUR\n2022-01-01,purchase,100,EUR\n");
        Assert.Equal(LedgerKind.Purchase, ledger.Entries[0].Kind);
        Assert.Equal("ledger.csv, line 3, column 1: found date 2022-01-01 below a later day, expected entries in date order; it was put in its place",
            Assert.Single(ledger.Notes).ToString());
    }

    [Fact]
    public void A_repeating_entry_stands_once_a_period_before_its_end()
    {
        var ledger = Read("date,kind,amount,currency,every,until\n2022-01-31,purchase,100,EUR,,\n2022-01-31,insurance,60,EUR,month,2022-04-30\n");
        Assert.Equal(["2022-01-31", "2022-02-28", "2022-03-31"],
            ledger.Of(LedgerKind.Insurance).Select(e => e.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void A_semicolon_file_reads_like_a_comma_file() =>
        Assert.Equal(-100m, Read("date;kind;amount;currency\n2022-01-01;purchase;100;EUR\n").CashFlows().Total.Amount);

    [Fact]
    public void A_part_of_the_ledger_ends_before_a_day()
    {
        Assert.Equal(2, Read(Small).Before(new LocalDate(2022, 5, 1)).Entries.Count);
        Assert.Throws<RecordException>(() => Read(Small).Before(new LocalDate(2022, 3, 1)));
    }

    [Fact]
    public void Every_kind_has_a_word_and_the_word_reads_back()
    {
        foreach (var kind in Enum.GetValues<LedgerKind>())
        {
            Assert.True(LedgerKinds.TryParse(LedgerKinds.WordOf(kind), out var back));
            Assert.Equal(kind, back);
            Assert.Equal(LedgerKinds.ClassOf(kind) == LedgerClass.NoMoney, LedgerKinds.SignOf(kind) == 0);
        }
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void A_ledger_reads_the_same_under_every_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal(-3290.50m, Read(Small.Replace(",grant,", ",GRANT,", StringComparison.Ordinal).Replace("finance", "FINANCE", StringComparison.Ordinal)).CashFlows().Total.Amount);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static Ledger Read(string text) => Ledger.Read(new StringReader(text), "ledger.csv");
}
