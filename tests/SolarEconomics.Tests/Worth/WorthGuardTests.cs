using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>Every public member of the rooms of worth, upgrades and the ledger refuses nothing where it must have something, by the parameter's name.</summary>
public sealed class WorthGuardTests(AlderWeirSite demo) : IClassFixture<AlderWeirSite>
{
    [Theory]
    [InlineData("Worth", 5)]
    [InlineData("Upgrades", 4)]
    [InlineData("Ledger", 5)]
    [InlineData("Money", 10)]
    public void Nothing_is_refused_by_its_name(string room, int least)
    {
        var outlook = demo.Worth.Outlook();
        var flow = MoneyFlow.Nominal(Currency.Of("EUR"), -1000, 600, 600);
        var guards = new NullGuards("text", CultureInfo.InvariantCulture, demo.Site.Zone, demo.Site, demo.Readings, demo.Tariffs, demo.Ledger, demo.Worth, demo.Site.Plant, outlook, flow,
            DatedMoneyFlow.Sorted(Currency.Of("EUR"), PriceBasis.Nominal, [new DatedAmount(new NodaTime.LocalDate(2024, 1, 1), -1000), new DatedAmount(new NodaTime.LocalDate(2025, 1, 1), 1200)]));
        var (tried, faults) = guards.Try(NullGuards.TypesOf(room));
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
        Assert.InRange(tried, least, 1000);
    }
}
