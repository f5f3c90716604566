namespace SolarEconomics.Tests;

/// <summary>Amounts that are no money are refused before they are added up.</summary>
public sealed class AmountGuardTests
{
    [Fact]
    public void An_amount_that_is_no_money_is_refused_with_its_line()
    {
        var e = Assert.Throws<RecordException>(() => Ledger.Read(new StringReader(
            "date,kind,amount,currency\n2023-01-10,purchase,79000000000000000000000000000,EUR\n2023-01-11,part,79000000000000000000000000000,EUR\n"), "ledger.csv"));
        Assert.Contains("ledger.csv, line 2", e.Message, StringComparison.Ordinal);
        Assert.Contains("at most 1,000,000,000,000", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_largest_amount_is_taken() => Assert.Single(Ledger.Read(new StringReader(
        "date,kind,amount,currency\n2023-01-10,purchase,1000000000000,EUR\n"), "ledger.csv").Entries);

    [Fact]
    public void Assumed_amounts_that_are_no_money_are_refused_by_name()
    {
        var worth = YearSite.Worth();
        Assert.Contains("money for inverter", Assert.Throws<ArgumentOutOfRangeException>(() =>
            worth.Outlook(YearSite.Plain with { Replacements = [new Replacement("inverter", 8, -400)] })).Message, StringComparison.Ordinal);
        Assert.Contains("money a year", Assert.Throws<ArgumentOutOfRangeException>(() =>
            worth.Outlook(YearSite.Plain with { RunningCostsPerYear = decimal.MaxValue })).Message, StringComparison.Ordinal);
        Assert.Contains("money at the horizon", Assert.Throws<ArgumentOutOfRangeException>(() =>
            worth.Outlook(YearSite.Plain with { ResidualValue = decimal.MinValue })).Message, StringComparison.Ordinal);
    }
}
