using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>Every public member of the rooms of worth, upgrades and the ledger refuses nothing where it must have something, by the parameter's name.</summary>
public sealed class WorthGuardTests
{
    [Theory]
    [InlineData("Worth", 5)]
    [InlineData("Upgrades", 4)]
    [InlineData("Ledger", 5)]
    [InlineData("Money", 10)]
    public void Nothing_is_refused_by_its_name(string room, int least)
    {
        var worth = YearSite.Worth();
        var flow = MoneyFlow.Nominal(Currency.Of("EUR"), -1000, 600, 600);
        var guards = new NullGuards("text", CultureInfo.InvariantCulture, YearSite.Place.Zone, YearSite.Place, YearSite.Records(), YearSite.Tariffs, YearSite.Paid(1_000m), worth, YearSite.Place.Plant, worth.Outlook(), flow,
            DatedMoneyFlow.Sorted(Currency.Of("EUR"), PriceBasis.Nominal, [new DatedAmount(new NodaTime.LocalDate(2024, 1, 1), -1000), new DatedAmount(new NodaTime.LocalDate(2025, 1, 1), 1200)]));
        var (tried, faults) = guards.Try(NullGuards.TypesOf(room));
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
        Assert.InRange(tried, least, 1000);
    }
}
