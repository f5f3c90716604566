using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>All that value to date, outlook, owner's view, fading battery and panel swap say of one invented home, word for word.</summary>
public sealed class WorthWholeWordsTests
{
    private static readonly Currency s_euro = Currency.Of("EUR");
    private static readonly LocalDate s_end = new(2023, 12, 31);

    private static readonly Assumptions s_all = new()
    {
        Years = 18, PriceGrowth = 0.03, FeedInGrowth = -0.01, CostGrowth = 0.02, DiscountRate = 0.05, YieldFactor = 0.97, ImportPriceLevel = 1.05, FeedInPriceLevel = 0.9, ResidualValue = 120,
        AvoidedSupplyChargePerYear = 30, FeedInTaxRate = 0.2, FeedInGuarantee = new FeedInGuarantee(new LocalDate(2031, 3, 15), 0.05m), PriceSteps = [new PriceStep(new LocalDate(2026, 7, 1), 1.1, 0.95)],
        Replacements = [new Replacement("inverter", 9.3, 700), new Replacement("battery", 12, 900)], WearingParts = [new WearingPart("fan", 60, WeibullDistribution.OfMean(6, 2.5), MixedSite.First)],
        BatteryFade = new BatteryFade(4, MixedSite.First, new BatteryAgeing { CalendarFade = 0.015, CycleFade = 0.00005 }),
    };

    [Fact]
    public void What_it_has_been_worth()
    {
        var worth = MixedSite.Worth();
        var down = new DateSpan(new LocalDate(2023, 7, 3), new LocalDate(2023, 7, 9));
        WholeWords.Check("worth", ("the value to date", worth), ("with own hours at 20", worth.WithOwnHours(Money.Nominal(20, s_euro))), ("spent and come back", worth.Recovery),
            ("a failure", worth.CostOfFailure("south", down)), ("a failure, energy stated", worth.CostOfFailure("south", down, 40)), ("the bridge", worth.Bridge()));
    }

    [Fact]
    public void What_it_will_be_worth()
    {
        var worth = MixedSite.Worth();
        var plain = worth.Outlook();
        var loan = new LoanTaken("the bank", new Loan(Money.Nominal(2_000, s_euro), 0.004, 96) { UpfrontFee = 25, FeePerPayment = 1, Balloon = 300 }, MixedSite.First.PlusDays(20));
        var all = worth.Outlook(s_all with { Loans = [loan] });
        WholeWords.Check("outlook", ("as assumed without a word", plain), ("with everything assumed", all), ("its payback", all.Payback), ("its curve", all.CashCurve()),
            ("its bridge", all.Bridge()), ("the bridge without a word", plain.Bridge()), ("with own hours at 20", worth.WithOwnHours(Money.Nominal(20, s_euro)).Outlook(s_all)),
            ("a panel swap", all.Upgrade(new PanelSwap("shed", 2.4, 800, s_end) { Displaced = Displaced.Sold(90) })), ("a panel swap behind a small inverter", plain.Upgrade(new PanelSwap("south", 5, 1_400, s_end) { InverterKw = 2.5 })));
    }

    [Fact]
    public void Twelve_months_are_a_year_in_every_category()
    {
        var all = MixedSite.Worth().Outlook(s_all);
        var (years, months) = (all.YearsAhead, all.MonthsAhead);
        // The first purchase falls on the first of a month; the horizon's own month holds what is paid on that day.
        Assert.Equal((18, (18 * 12) + 1, MixedSite.First.ToYearMonth()), (years.Count, months.Count, months[0].Month));
        foreach (var year in years)
        {
            var own = months.Where(m => m.Month >= year.Start.ToYearMonth() && m.Month < year.Start.PlusYears(1).ToYearMonth()).ToList();
            if (year == years[^1]) own.Add(months[^1]);
            (Money Year, Func<OutlookMonth, Money> Month)[] columns =
                [(year.Investment, m => m.Investment), (year.Savings, m => m.Savings), (year.FeedIn, m => m.FeedIn), (year.Running, m => m.Running), (year.Replacement, m => m.Replacement), (year.Income, m => m.Income), (year.Net, m => m.Net)];
            foreach (var (sum, of) in columns) Assert.Equal((double)sum.Amount, (double)own.Sum(m => of(m).Amount), 0.25);
        }
        // The records end a day before the year does: the last month is not all on record.
        Assert.Equal(Enumerable.Repeat(true, 13).Concat(Enumerable.Repeat(false, months.Count - 13)), months.Select(m => m.IsRecorded));
        Assert.Equal((double)months.Sum(m => m.Net.Amount), (double)months[^1].Position.Amount, 0);
        Assert.Equal((double)all.PositionAtHorizon.Amount, (double)months[^1].Position.Amount, 1.0);
        Assert.Equal(s_all.ResidualValue, months[^1].Income.Amount);
    }
}
