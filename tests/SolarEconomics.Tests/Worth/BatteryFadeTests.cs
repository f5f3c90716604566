using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>A battery that fades in an outlook.</summary>
// Oracles: by hand (a year of like days), a naive loop over days, properties. Published: none for a home's own days; the fade itself is BatteryAgeing's.
public sealed class BatteryFadeTests
{
    private static readonly WorthToDate Worth = BatterySite.Worth();

    // Each day is worth 1 kWh through the battery at 0.30 and 2 kWh exported at 0.10. A kWh that is not stored turns 0.30 into 0.10: 0.20 less.
    private static readonly BatteryFade Calendar = new(1, BatterySite.First, new BatteryAgeing { CalendarFade = 0.02 });

    private static Outlook With(BatteryFade? fade, params Replacement[] replacements) =>
        Worth.Outlook(YearSite.Plain with { BatteryFade = fade, Replacements = replacements });

    [Fact]
    public void By_calendar_two_per_cent_a_year_take_two_per_cent_of_what_was_left_when_recorded()
    {
        // By hand: the records' middle is 182 days in, with 1 − 0.02 · 182 / 365.25 = 0.990034 of new; the middle of 2024 has age 1.5 and 0.97, a share of 0.97976.
        var (flat, faded) = (With(null).YearsAhead, With(Calendar).YearsAhead);
        var lost = 366 * (1 - (0.97 / (1 - (0.02 * 182 / 365.25))));
        Assert.Equal(lost * 0.30, (double)(flat[1].Savings - faded[1].Savings).Amount, 0.03);
        Assert.Equal(lost * 0.10, (double)(faded[1].FeedIn - flat[1].FeedIn).Amount, 0.03);
        Assert.Equal(flat[0], faded[0]);
    }

    [Fact]
    public void Savings_fall_year_by_year_until_a_new_battery_restores_them()
    {
        var years = With(Calendar, new Replacement("battery", 10.01, 300)).YearsAhead;
        for (var y = 2; y < 10; y++) Assert.True(years[y].Savings.Amount < years[y - 1].Savings.Amount + 0.31m); // a leap day is worth 0.30
        Assert.True(years[9].Savings.Amount < years[1].Savings.Amount - 10);
        Assert.Equal((double)With(null).YearsAhead[10].Savings.Amount, (double)years[10].Savings.Amount, 0.5);
        Assert.Equal(-300m, years[10].Replacement.Amount);
        Assert.Equal(With(Calendar).YearsAhead[9].Savings, years[9].Savings);
    }

    [Fact]
    public void Cycles_wear_it_too_at_the_pace_of_the_days() // 365 cycles a year at 0.0001 each, a little fewer as it fades: about 0.0365 a year
    {
        var months = With(Calendar with { Ageing = new BatteryAgeing { CycleFade = 0.0001 } }).BatteryMonths;
        Assert.Equal(1 - 0.0365, months[0].ShareOfNew, 3);
        // A year later the cycles of 2024 are 366 of what is left of a share, 0.9635 / 0.98181 falling.
        Assert.Equal(months[0].ShareOfNew - (0.0001 * 366 * 0.964), months[12].ShareOfNew, 3);
    }

    [Fact]
    public void Days_that_did_not_fill_it_lose_nothing_until_they_no_longer_fit() // 0.5 kWh a day in a battery of 1 kWh: fits down to half
    {
        var half = BatterySite.Worth(_ => 0.5).Outlook(YearSite.Plain with { BatteryFade = Calendar with { Ageing = new BatteryAgeing { CalendarFade = 0.04 } } }).BatteryMonths;
        Assert.All(half.Where(m => m.ShareOfNew > 0.501), m => Assert.Equal(0, m.LostKwh, 9));
        Assert.True(half[^1].ShareOfNew < 0.3 && half[^1].LostKwh > 5);
    }

    [Fact]
    public void The_running_sums_agree_with_a_naive_loop_over_days() =>
        Gen.Select(Gen.Double[0, 3].Array[0, 40], Gen.Double[0.1, 3], Gen.Double[0, 1.2]).Sample((kwh, capacity, share) =>
        {
            var days = kwh.Select((d, k) => new StoredDay(d, d * (0.2 + (0.01 * k)), d * 0.1, d * 1.1)).ToList();
            var (lost, naive) = (new StoredDays(24.0 * kwh.Length, days).Lost(capacity, share), default(StoredDay));
            foreach (var day in days.Where(d => d.DischargeKwh > 0))
                naive += day * (Math.Max(0, day.DischargeKwh - (share * Math.Max(capacity, day.DischargeKwh))) / day.DischargeKwh);
            Assert.Equal(naive.DischargeKwh, lost.DischargeKwh, 1e-9);
            Assert.Equal(naive.Avoided, lost.Avoided, 1e-9);
            Assert.Equal(naive.FeedIn, lost.FeedIn, 1e-9);
            Assert.Equal(naive.ExportedKwh, lost.ExportedKwh, 1e-9);
        }, iter: 300);

    [Fact]
    public void What_the_modules_lost_is_not_lost_again() // arrays fall faster than the battery: each day is emptier than the battery is small
    {
        var aged = YearSite.Plain with { Ageing = Ageing.Linear(0.03) };
        Assert.Equal(Worth.Outlook(aged).Npv, Worth.Outlook(aged with { BatteryFade = Calendar with { Ageing = new BatteryAgeing { CalendarFade = 0.02 } } }).Npv);
    }

    [Fact]
    public void Draws_agree_with_the_whole_outlook() =>
        Gen.Select(Gen.Double[0, 0.06], Gen.Double[0, 0.0002], Gen.Double[0.5, 2], Gen.Double[0, 0.02], Gen.Double[1.5, 19]).Sample((calendar, cycle, kwh, loss, year) =>
        {
            var a = YearSite.Plain with
            {
                DiscountRate = 0.04, PriceGrowth = 0.02, Ageing = Ageing.Compound(loss), Replacements = [new Replacement("battery", year, 200)],
                BatteryFade = new BatteryFade(kwh, BatterySite.First, new BatteryAgeing { CalendarFade = calendar, CycleFade = cycle }),
            };
            var sampler = new OutlookSampler(Worth.ForOutlooks, a.Years);
            Assert.Equal(Worth.Outlook(a).ExactNpv, sampler.At(a, Enumerable.Repeat(1.0, sampler.WeatherYears).ToArray(), []).Npv, 1e-7);
        }, iter: 30);

    [Fact]
    public void No_fade_changes_nothing_and_a_faster_one_is_never_worth_more() => Gen.Select(Gen.Double[0, 0.05], Gen.Double[0, 0.03]).Sample((slow, more) =>
    {
        Assert.Equal(With(null).Npv, With(Calendar with { Ageing = BatteryAgeing.None }).Npv);
        double Npv(double fade) => With(Calendar with { Ageing = new BatteryAgeing { CalendarFade = fade } }).ExactNpv;
        Assert.True(Npv(slow + more) <= Npv(slow) + 1e-9);
    }, iter: 10);

    [Fact]
    public void In_the_bridge_fade_is_part_of_ageing_and_the_bridge_still_sums()
    {
        double Ageing(Outlook o) => (double)o.Bridge().Corrections.Single(c => c.Kind == CorrectionKind.Ageing).Part.Amount;
        Assert.Equal(0, Ageing(With(null)));
        Assert.True(Ageing(With(Calendar)) < -1);
        Assert.StartsWith("Modules yield less with age (0 % a year of what is left) and the battery holds less: −€", With(Calendar).Bridge().Corrections[0].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_note_says_what_is_left_and_what_is_lost()
    {
        var note = Assert.Single(With(Calendar).Say(CultureInfo.InvariantCulture).Notes, n => n.StartsWith("Battery", StringComparison.Ordinal));
        Assert.StartsWith("Battery of 1 kWh when new: 97.9 % of it left after the records, 60.1 % at the horizon, below 70.0 % from 1 Jan 2038. In all it delivers 1,", note, StringComparison.Ordinal);
        Assert.EndsWith("and a new battery saves no more than the records show.", note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fade_without_a_recorded_battery_or_beside_odds_of_failure_is_refused()
    {
        Assert.StartsWith("battery: found a fade but no discharge in the records", Assert.Throws<ArgumentException>(() =>
            YearSite.Worth().Outlook(YearSite.Plain with { BatteryFade = Calendar })).Message, StringComparison.Ordinal);
        Assert.StartsWith("battery: found a fade and odds of failure for the same part", Assert.Throws<ArgumentException>(() => Worth.Outlook(YearSite.Plain with
        {
            BatteryFade = Calendar, WearingParts = [new WearingPart("battery", 100, new WeibullDistribution(2, 10), BatterySite.First)],
        })).Message, StringComparison.Ordinal);
        Assert.StartsWith("battery: found no capacity left on 2023-07-02, the middle of the records", Assert.Throws<ArgumentException>(() =>
            With(new BatteryFade(1, new LocalDate(2013, 1, 1), new BatteryAgeing { CalendarFade = 0.2 }))).Message, StringComparison.Ordinal);
    }
}
