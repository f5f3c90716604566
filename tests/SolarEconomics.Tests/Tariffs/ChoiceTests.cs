using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Choosing a tariff: where a difference comes from, break-even use, modelled futures, tax reclaimed. By hand, on one year of 1 kWh in every half hour.</summary>
public sealed class ChoiceTests
{
    private static readonly LocalDate Start = new(2023, 1, 1);
    private static readonly IntervalGrid Year = new(Start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromMinutes(30), 365 * 48);
    private static readonly MeteredEnergy Even = new([.. Enumerable.Repeat(1.0, Year.Count)], new double[Year.Count]);
    private static readonly Tariff Peak = Tariff.Named("Peak", "EUR", Start).SupplyPerDay(1).Import("evening peak", 0.50m, "17:00-19:00").Import("day", 0.20m).Taxed(0.10m);
    private static readonly Tariff Flat = Tariff.Flat("Flat", "EUR", 0.21m, supplyPerDay: 1.10m, tax: 0.10m, from: Start);

    [Fact]
    public void The_words_say_what_a_change_saves_and_where_it_comes_from()
    {
        // A year: the peak's 1,460 kWh cost 0.29 less, the other 16,060 kWh 0.01 more, 365 days 0.10 more; all with 10 % tax.
        var answer = Ask() with { Today = "Peak" };
        var change = answer.Answer().Change!;
        Assert.Equal(["evening peak 465.74", "fixed charges -40.15", "day -176.66"], change.Parts.Select(p => FormattableString.Invariant($"{p.Name} {p.Saved.Amount:0.00}")));
        Assert.Equal(248.93m, change.Saved.Amount);
        Assert.EndsWith(" It is €249 a year less than today's; the evening peak is where it comes from.", answer.Answer().Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
        Assert.Contains("expected one of the choices: Peak", Assert.Throws<TariffException>(() => (Ask() with { Today = "Peek" }).Answer()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_modelled_future_is_ranked_like_readings_and_a_workshop_s_tax_comes_back()
    {
        var ranks = Ask().Answer().Ranks;
        Assert.Equal(["Flat", "Peak"], ranks.Select(r => r.Name));
        Assert.Equal(Math.Round(((0.21m * 17_520) + (1.10m * 365)) * 1.10m, 2), ranks[0].Total.Amount);
        // Half of the tax, 10 % of 4,080.70, comes back.
        Assert.Equal(ranks[0].Total.Amount - 204.04m, (Ask() with { TaxReclaimedShare = 0.5m }).Answer().Ranks[0].Total.Amount, 2);
    }

    [Fact]
    public void A_tariff_says_what_it_needs()
    {
        var needs = Flat with { Needs = TariffNeeds.Solar | TariffNeeds.Battery, IsClosedToNew = true };
        var rank = new SeriesComparison([new TariffChoice("Flat", TariffHistory.Of(needs))], Year, Even, DateTimeZone.Utc).Answer().Ranks[0];
        Assert.Equal("needs a solar plant and a battery; closed to new homes", rank.Remark);
    }

    [Fact]
    public void Two_tariffs_break_even_where_their_lines_cross()
    {
        // 365 a year and 0.20 a kWh against 0.25 a kWh: 7,300 kWh.
        var (fixedOne, free) = (Choice(Tariff.Flat("A", "EUR", 0.20m, supplyPerDay: 1, from: Start)), Choice(Tariff.Flat("B", "EUR", 0.25m, from: Start)));
        var point = Assert.Single(BreakEvenUse.Between(fixedOne, free, Year, Even, DateTimeZone.Utc));
        Assert.Equal(7300, point.ImportKwh, 0);
        Assert.Equal(("B", "A"), (point.CheaperBelow, point.CheaperAbove));
        Assert.Empty(BreakEvenUse.Between(fixedOne, Choice(Tariff.Flat("C", "EUR", 0.30m, supplyPerDay: 2, from: Start)), Year, Even, DateTimeZone.Utc));
    }

    [Fact]
    public void Bills_with_and_without_battery_and_plant()
    {
        // One day: 1 kWh used in each half hour, 2 generated in the second half of the day, stored and taken back at will: 10 kWh still bought.
        var grid = Year with { Count = 48 };
        var plan = TariffHistory.Of(Tariff.Flat("A", "EUR", 0.30m, exportPerKwh: 0.10m, from: Start)).On(grid, DateTimeZone.Utc);
        double[] made = [.. Enumerable.Range(0, 48).Select(i => i < 24 ? 0.0 : 2.0)];
        double[] bought = [.. Enumerable.Range(0, 48).Select(i => i < 10 ? 1.0 : 0.0)];
        var bills = BillWithAndWithout.Of(plan, new MeteredEnergy(bought, new double[48]) { UseKwh = [.. Enumerable.Repeat(1.0, 48)], GenerationKwh = made });
        Assert.Equal((3.00m, 7.20m - 2.40m, 14.40m), (bills.Actual[0].Total.Amount, bills.WithoutBattery[0].Total.Amount, bills.WithoutSolar[0].Total.Amount));
        Assert.Equal((11.40m, 1.80m), (bills.SavedByAll.Amount, bills.SavedByBattery.Amount));
        Assert.Throws<TariffException>(() => BillWithAndWithout.Of(plan, new MeteredEnergy(bought, made)));
    }

    [Fact]
    public void Periods_are_months_quarters_or_own_dates()
    {
        var days = new DateSpan(new LocalDate(2024, 2, 10), new LocalDate(2024, 7, 2));
        Assert.Equal(6, BillingPeriods.Months(days).Count);
        Assert.Equal([new DateSpan(new LocalDate(2024, 1, 1), new LocalDate(2024, 4, 1)), new DateSpan(new LocalDate(2024, 4, 1), new LocalDate(2024, 7, 1)), new DateSpan(new LocalDate(2024, 7, 1), new LocalDate(2024, 10, 1))],
            BillingPeriods.Quarters(days));
        Assert.Equal([31, 29], BillingPeriods.Between(new LocalDate(2024, 1, 1), new LocalDate(2024, 2, 1), new LocalDate(2024, 3, 1)).Select(p => p.Days));
        Assert.Throws<ArgumentException>(() => BillingPeriods.Between(new LocalDate(2024, 1, 1)));
    }

    private static SeriesComparison Ask() => new([Choice(Peak), Choice(Flat)], Year, Even, DateTimeZone.Utc);

    private static TariffChoice Choice(Tariff tariff) => new(tariff.Name, TariffHistory.Of(tariff));
}
