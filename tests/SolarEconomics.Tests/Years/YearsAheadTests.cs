using NodaTime;

namespace SolarEconomics.Tests;

public class YearsAheadTests
{
    private static readonly Timeline s_time = Timeline.Year(2025, Duration.FromHours(1), Made.Dublin);
    private static readonly EnergySystem s_system = new() { Battery = Battery.Of(8, 0.9, 3) };

    private static Conditions Year()
    {
        var sun = Enumerable.Range(0, s_time.Count).Select(i => Math.Max(0, 3 * Math.Sin(((i % 24) - 6) * Math.PI / 12))).ToArray();
        double[] All(double value) => Enumerable.Repeat(value, s_time.Count).ToArray();
        return new Conditions(LoadSeries.Of(s_time, All(0.6))) { Arrays = [ArraySupply.Ac("roof", sun)], ImportPricePerKwh = All(0.3), ExportPricePerKwh = All(0.08) };
    }

    [Fact]
    public void A_plan_in_which_nothing_changes_repeats_the_first_year_but_for_the_charge_carried_over()
    {
        var years = s_system.RunYears(Year(), Control.SelfConsumption, new YearsAhead(3)).Years;
        Assert.Equal(years[1].Totals.ImportKwh, years[2].Totals.ImportKwh, 9);
        Assert.InRange(years[0].Totals.ImportKwh - years[1].Totals.ImportKwh, -1e-9, 8);
        Assert.Equal(1, years[2].ArrayFactor, 12);
    }

    [Fact]
    public void Arrays_age_on_their_own_clock_and_start_again_when_renewed()
    {
        var plan = new YearsAhead(4)
        {
            Arrays = Ageing.Linear(0.01), ArrayAges = new Dictionary<string, double>(StringComparer.Ordinal) { ["roof"] = 10 }, Renewals = [new ArrayRenewal(3, "roof", 1.2)],
        };
        var years = s_system.RunYears(Year(), Control.SelfConsumption, plan).Years;
        Assert.Equal([0.895, 0.885, 1.2 * 0.995, 1.2 * 0.985], years.Select(y => Math.Round(y.ArrayFactor, 12)).ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(years[0].Totals.PotentialKwh / 0.895, years[1].Totals.PotentialKwh / 0.885, 6);
    }

    [Fact]
    public void A_battery_at_its_end_is_replaced_at_the_price_of_that_year()
    {
        var plan = new YearsAhead(8) { Battery = new BatteryAgeing { CalendarFade = 0.08, EndOfLifeShare = 0.75 }, BatteryPrice = 4000, BatteryPriceGrowth = -0.05 };
        var years = s_system.RunYears(Year(), Control.SelfConsumption, plan).Years;
        // By hand: 1 − 0.08 · 4 is the first below 0.75, at the end of the fourth year.
        Assert.Equal([4, 8], years.Where(y => y.IsBatteryReplaced).Select(y => y.Year));
        Assert.Equal(4000 * Math.Pow(0.95, 4), years[3].ReplacementCost, 9);
        Assert.Equal(8 * (1 - (0.08 * 3)), years[3].UsableKwh, 9);
        Assert.Equal(8, years[4].UsableKwh, 9);
        Assert.Equal(0, years[4].BatteryAge);
    }

    [Fact]
    public void Use_and_prices_grow_and_a_year_may_bring_something_else()
    {
        var plan = new YearsAhead(3) { UseGrowth = 0.1, PriceGrowth = 0.05, Change = (year, c) => year == 3 ? c with { GridIsOut = Enumerable.Repeat(true, s_time.Count).ToArray() } : c };
        var years = s_system.RunYears(Year(), Control.SelfConsumption, plan).Years;
        Assert.Equal(years[0].Totals.WantedKwh * 1.1, years[1].Totals.WantedKwh, 6);
        Assert.Equal((years[1].Totals.ImportKwh * 0.315) - (years[1].Totals.ExportKwh * 0.084), years[1].EnergyCost, 6);
        Assert.Equal(years[2].Totals.WantedKwh, years[2].Totals.UnservedKwh, 6);
    }

    [Fact]
    public void Agrees_with_the_sweep_where_both_apply()
    {
        var fade = new BatteryAgeing { CalendarFade = 0.02, CycleFade = 0.0001, EndOfLifeShare = 0 };
        var swept = BatterySweep.Of(Year()).Run([new BatteryCase(s_system.Battery!) { Ageing = fade, UseGrowth = 0.02, PriceGrowth = 0.03 }], 6)[0];
        var years = s_system.RunYears(Year(), Control.SelfConsumption, new YearsAhead(6) { Battery = fade, UseGrowth = 0.02, PriceGrowth = 0.03, ReplacesBattery = false }).Years;
        for (var y = 0; y < 6; y++)
        {
            Assert.Equal(years[y].EnergyCost, swept.Cost[y], 6);
            Assert.Equal(years[y].Totals.ImportKwh, swept.ImportKwh[y], 6);
        }
    }

    [Fact]
    public void Half_a_year_and_an_array_of_another_name_are_refused()
    {
        Assert.Contains("expected a year", Assert.Throws<ArgumentException>(() =>
            s_system.RunYears(new Conditions(LoadSeries.Of(Made.HoursOf(100), new double[100])), Control.SelfConsumption, new YearsAhead(2))).Message, StringComparison.Ordinal);
        Assert.Contains("\"rof\"", Assert.Throws<UnknownNameException>(() =>
            s_system.RunYears(Year(), Control.SelfConsumption, new YearsAhead(2) { Renewals = [new ArrayRenewal(1, "rof")] })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_preview_is_marked_works_few_years_out_and_replaces_the_battery_when_the_full_answer_does()
    {
        var plan = new YearsAhead(20) { Arrays = Ageing.Linear(0.005), Battery = new BatteryAgeing { CalendarFade = 0.02, CycleFade = 0.00005 }, BatteryPrice = 4000, PriceGrowth = 0.03 };
        var worked = 0;
        var counted = Control.Of("counted", now =>
        {
            if (now.Interval == 0) worked++;
            return now.StoreOrCover();
        });
        var preview = s_system.PreviewYears(Year(), counted, plan);
        var full = s_system.RunYears(Year(), Control.SelfConsumption, plan);
        Assert.True(preview.IsPreview);
        Assert.False(full.IsPreview);
        Assert.Equal(worked, preview.Years.Count(y => !y.IsEstimated));
        Assert.InRange(worked, 4, 10);
        Assert.Equal(full.Years.Where(y => y.IsBatteryReplaced).Select(y => y.Year), preview.Years.Where(y => y.IsBatteryReplaced).Select(y => y.Year));
        Assert.StartsWith($"is a preview: {worked} of 20 years were worked out", preview.Say(System.Globalization.CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.02, 0.00005, 0.02, 0.03), InlineData(0.04, 0, 0, 0), InlineData(0.01, 0.0002, -0.01, 0.06), InlineData(0, 0, 0.05, 0)]
    public void A_preview_s_costs_lie_within_what_it_says_of_itself(double calendar, double cycle, double growth, double prices)
    {
        var plan = new YearsAhead(20) { Arrays = Ageing.Linear(0.005), Battery = new BatteryAgeing { CalendarFade = calendar, CycleFade = cycle }, BatteryPrice = 4000, UseGrowth = growth, PriceGrowth = prices };
        var (preview, full) = (s_system.PreviewYears(Year(), Control.SelfConsumption, plan), s_system.RunYears(Year(), Control.SelfConsumption, plan));
        var most = preview.Years.Zip(full.Years, (p, f) => Math.Abs(p.EnergyCost - f.EnergyCost)).Max();
        // What is carried over from one year to the next is some kWh: a battery's charge at new year.
        Assert.True(most <= preview.CostOff!.Value + (8 * 0.3 * Math.Pow(1 + prices, 20)), $"off by {most}, said {preview.CostOff}");
    }

    [Fact]
    public void Sums_of_a_year_between_close_as_those_of_the_years_beside_it()
    {
        var preview = s_system.PreviewYears(Year(), Control.SelfConsumption, new YearsAhead(20) { Arrays = Ageing.Linear(0.01), UseGrowth = 0.02 });
        foreach (var t in preview.Years.Select(y => y.Totals))
            Assert.Equal(t.GenerationKwh + t.ImportKwh, t.UseKwh + t.StandbyKwh + t.ExportKwh + t.LostKwh + t.StoredChangeKwh, 6);
    }

    [Fact]
    public void Four_years_are_worked_out_in_full_at_once() => Assert.False(s_system.PreviewYears(Year(), Control.SelfConsumption, new YearsAhead(4)).IsPreview);
}
