using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>By hand with two versions of a tariff; the bills themselves are held by the tariff tests.</summary>
public class TariffYearsTests
{
    private static readonly TariffHistory s_tariffs = TariffHistory.Of(
        Tariff.Flat("old", currency: "EUR", importPerKwh: 0.30m, from: new LocalDate(2025, 1, 1)),
        Tariff.Flat("new", currency: "EUR", importPerKwh: 0.40m, from: new LocalDate(2026, 7, 1)));

    private static Conditions OneKwhAnHour(Timeline time) => new(LoadSeries.Of(time, Enumerable.Repeat(1.0, time.Count).ToArray()));

    private static Timeline Year => Timeline.Year(2025, Duration.FromHours(1), Made.Dublin);

    [Fact]
    public void Each_year_is_priced_by_the_version_in_force_then_and_growth_begins_after_the_last()
    {
        // By hand: 2026 has 181 days until July, less the hour that spring skips: 4,343 h at the old price, 4,417 h at the new. 2027 is the last version's first whole year.
        var years = new EnergySystem().RunYears(OneKwhAnHour(Year), Control.SelfConsumption, new YearsAhead(5) { Tariffs = s_tariffs, PriceGrowth = 0.1 }).Years;
        double[] byHand = [8760 * 0.30, (4343 * 0.30) + (4417 * 0.40), 8760 * 0.40, 8760 * 0.44, 8760 * 0.484];
        foreach (var (year, cost) in years.Zip(byHand)) Assert.Equal(cost, year.EnergyCost, 6);
    }

    [Fact]
    public void A_preview_works_out_the_years_around_a_new_version_and_agrees_where_only_prices_grow()
    {
        var plan = new YearsAhead(12) { Tariffs = s_tariffs, PriceGrowth = 0.1 };
        var preview = new EnergySystem().PreviewYears(OneKwhAnHour(Year), Control.SelfConsumption, plan);
        var full = new EnergySystem().RunYears(OneKwhAnHour(Year), Control.SelfConsumption, plan);
        Assert.Contains(preview.Years, y => y.IsEstimated);
        foreach (var (p, f) in preview.Years.Zip(full.Years)) Assert.Equal(f.EnergyCost, p.EnergyCost, 6);
    }

    [Fact]
    public void A_run_over_years_says_by_which_tariffs_it_was_priced() =>
        Assert.Contains(new EnergySystem().RunYears(OneKwhAnHour(Year), Control.SelfConsumption, new YearsAhead(2) { Tariffs = s_tariffs, PriceGrowth = 0.1 })
            .Say(System.Globalization.CultureInfo.InvariantCulture).Notes, n => n.StartsWith("Each year is priced by the tariff in force then", StringComparison.Ordinal) &&
                n.EndsWith("After the last, prices change by 10.0 % a year.", StringComparison.Ordinal));

    [Fact]
    public void A_tariff_that_begins_after_the_first_day_is_refused() =>
        Assert.Throws<TariffException>(() => new EnergySystem().RunYears(OneKwhAnHour(Year), Control.SelfConsumption,
            new YearsAhead(2) { Tariffs = TariffHistory.Of(s_tariffs.Latest) }));

    [Fact]
    public void Intervals_of_two_lengths_are_refused_with_the_first_that_differs()
    {
        var hours = Year;
        Instant[] starts = [.. Enumerable.Range(0, hours.Count).Select(hours.StartOf), hours.StartOf(hours.Count - 1) + Duration.FromMinutes(30)];
        var channel = new Channel("meter", FlowKind.Use, starts, [.. starts[1..], hours.End], new double[starts.Length], Enumerable.Repeat(Quality.Good, starts.Length).ToArray());
        Assert.StartsWith("2025-12-31 23:00: found an interval of 0.5 h, expected 1 h as the first", Assert.Throws<ArgumentException>(() =>
            new EnergySystem().RunYears(OneKwhAnHour(Timeline.Of(channel, Made.Dublin)), Control.SelfConsumption, new YearsAhead(2) { Tariffs = s_tariffs })).Message, StringComparison.Ordinal);
    }
}
