using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: by hand on a year of equal days; properties. There is no published worked example of a panel swap with its own hours.
public class UpgradeTests
{
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain);

    private static readonly PanelSwap Doubled = new("roof", NewKwp: 4, Cost: 300, On: new LocalDate(2024, 1, 1));

    [Fact]
    public void Twice_the_modules_export_all_they_add_where_nothing_is_bought_at_noon() // by hand: 365.25 · 2 kWh · 0.10
    {
        var result = Outlook.Upgrade(Doubled);
        Assert.Equal(730.5, result.ExtraKwhPerYear, 6);
        Assert.Equal(0, result.ExtraUsedShare);
        Assert.Equal(73.05m, result.FirstYearValue.Amount);
        Assert.Equal(new MoneyRange(Eur(73.05m), Eur(219.15m)), result.FirstYearRange);
    }

    [Fact]
    public void It_pays_for_itself_after_cost_over_yearly_value() => Assert.Equal(300 / 73.05, Outlook.Upgrade(Doubled).PaybackYears!.Value, 2);

    [Fact]
    public void Money_spent_on_the_plant_before_changes_nothing() =>
        Assert.Equal(Outlook.Upgrade(Doubled).Npv, YearSite.Worth(cost: 50_000m).Outlook(YearSite.Plain).Upgrade(Doubled).Npv);

    [Fact]
    public void What_the_old_modules_sell_for_is_worth_just_that() =>
        Assert.Equal(120m, (Outlook.Upgrade(Doubled with { Displaced = Displaced.Sold(120) }).Npv - Outlook.Upgrade(Doubled).Npv).Amount);

    [Fact]
    public void An_inverter_that_is_full_already_gains_nothing() =>
        Assert.Equal(0, Outlook.Upgrade(Doubled with { InverterKw = 2 }).ExtraKwhPerYear, 9);

    [Fact]
    public void The_same_modules_again_gain_nothing_but_their_youth()
    {
        var aged = YearSite.Worth().Outlook(YearSite.Plain with { Ageing = Ageing.Compound(0.01) }).Upgrade(Doubled with { NewKwp = 2 });
        // By hand: the record's middle is half a year old.
        Assert.Equal(730.5 * ((1 / Math.Pow(0.99, 0.5)) - 1), aged.ExtraKwhPerYear, 1);
    }

    [Fact]
    public void Twelve_modules_of_550_W_for_fourteen_of_270_W_are_74_6_per_cent_more() // common practice, no source
        => Assert.Equal(0.746, (12 * 0.550 / (14 * 0.270)) - 1, 3);

    [Fact]
    public void A_device_that_the_plant_does_not_have_is_named_with_the_nearest()
    {
        var e = Assert.Throws<UnknownNameException>(() => Outlook.Upgrade(Doubled with { Device = "rof" }));
        Assert.Equal("Found device \"rof\", expected one of the plant: roof.", e.Message);
    }

    [Fact]
    public void A_change_in_the_past_is_refused() =>
        Assert.StartsWith("Found a change on 2023-06-01, expected a day from 2024-01-01",
            Assert.Throws<ArgumentOutOfRangeException>(() => Outlook.Upgrade(Doubled with { On = new LocalDate(2023, 6, 1) })).Message, StringComparison.Ordinal);

    private static Money Eur(decimal amount) => Money.Nominal(amount, Currency.Of("EUR"));
}
