using NodaTime;

namespace SolarEconomics.Tests.GenerationRoom;

public sealed class ShortfallsTests
{
    private static readonly LocalDate First = new(2024, 6, 1);

    /// <summary>Sixty days of 10 kWh expected; the model is 5 % too high, as models are.</summary>
    private static DayOfOutput[] Days(Func<int, double> share, Func<int, double>? air = null, Func<int, bool>? censored = null) =>
        [.. Enumerable.Range(0, 60).Select(i => new DayOfOutput(First.PlusDays(i), 9.5 * share(i), 10, air?.Invoke(i), censored?.Invoke(i) ?? false))];

    [Fact]
    public void A_model_that_is_too_high_every_day_is_no_failure() => Assert.Empty(Shortfalls.Find(Days(_ => 1)));

    [Fact]
    public void Days_of_nothing_are_an_outage_with_their_lost_energy()
    {
        var found = Assert.Single(Shortfalls.Find(Days(i => i is 20 or 21 ? 0 : 1)));
        Assert.Equal(ShortfallKind.Outage, found.Kind);
        Assert.Equal(new DateSpan(First.PlusDays(20), First.PlusDays(22)), found.Days);
        Assert.Equal(19, found.LostKwh, 1e-9); // by hand: two days of 9.5 kWh
        Assert.Equal(5.7m, found.Worth(Money.Nominal(0.30m, Currency.Of("EUR"))).Amount);
    }

    [Fact]
    public void A_steady_two_thirds_is_one_string_of_three()
    {
        var found = Assert.Single(Shortfalls.Find(Days(i => i is >= 10 and < 30 ? 2.0 / 3 : 1), strings: 3));
        Assert.Equal(ShortfallKind.PartialString, found.Kind);
        Assert.Contains("1 of 3 strings", found.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Less_from_day_to_day_and_all_back_at_once_is_dirt()
    {
        var found = Assert.Single(Shortfalls.Find(Days(i => i is >= 10 and < 40 ? 1 - (0.012 * (i - 9)) : 1)));
        Assert.Equal(ShortfallKind.Dirt, found.Kind);
        Assert.Equal(First.PlusDays(40), found.Days.End);
    }

    [Fact]
    public void Short_on_hot_days_only_is_heat()
    {
        var found = Assert.Single(Shortfalls.Find(Days(i => i is >= 20 and < 25 ? 0.7 : 1, air: i => i is >= 20 and < 25 ? 31 : 22)));
        Assert.Equal(ShortfallKind.HeatDerating, found.Kind);
    }

    [Fact]
    public void Days_marked_as_held_back_are_curtailment_not_failure()
    {
        var found = Assert.Single(Shortfalls.Find(Days(i => i is >= 20 and < 25 ? 0.4 : 1, censored: i => i is >= 20 and < 25)));
        Assert.Equal(ShortfallKind.Curtailment, found.Kind);
    }

    [Fact]
    public void A_gap_in_the_record_is_no_failure()
    {
        var days = Days(_ => 1);
        days[30] = days[30] with { MeasuredKwh = null };
        Assert.Empty(Shortfalls.Find(days));
    }

    [Fact]
    public void Days_out_of_order_are_named()
    {
        var days = Days(_ => 1);
        Assert.Equal("Found 2024-06-03 after 2024-06-01, expected the next day. A day without a reading stands in the list without a measured value.",
            Assert.Throws<ArgumentException>(() => Shortfalls.Find([days[0], days[2]])).Message);
    }
}
