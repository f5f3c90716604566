using NodaTime;

namespace SolarEconomics.Tests.Demo;

public class DemoLedgerTests
{
    private static readonly Ledger Ledger = Ledger.Load(Path.Combine(DemoScenario.Folder, "ledger.csv"));

    [Fact]
    public void Every_receipt_is_read_without_a_note()
    {
        Assert.Equal(DemoScenario.Rows("ledger.csv").Count, Ledger.Entries.Count);
        Assert.Empty(Ledger.Notes);
    }

    [Fact]
    public void The_first_purchase_is_that_of_November_2021() => Assert.Equal(new LocalDate(2021, 11, 12), Ledger.FirstPurchase.Date);

    [Fact]
    public void The_plant_was_bought_net_of_its_grant_for_21_764_35() =>   // by hand from data-demo/ledger.csv: purchases 23,864.35 less the grant of 2,100.00
        Assert.Equal(-21_764.35m, Ledger.Of(LedgerClass.Investment).Sum(e => e.CashFlow.Amount));
}
