using System.Globalization;
using CsCheck;

namespace SolarEconomics.Tests;

// Oracles: by hand (a residual value counts one for one), the outlook itself, properties. No published tornado carries its whole model.
public sealed class WhatIfTests
{
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain with { DiscountRate = 0.04, RunningCostsPerYear = 10 });

    [Fact]
    public void Both_ends_of_each_bar_are_the_outlook_with_that_one_input_moved()
    {
        var tornado = Outlook.Tornado([OutlookInput.PriceGrowth.Between(0, 0.04), OutlookInput.RunningCostsPerYear.Between(5, 40)]);
        var price = tornado.Bars.Single(b => b.Range.Input == OutlookInput.PriceGrowth);
        Assert.Equal(Outlook.With(Outlook.Assumptions with { PriceGrowth = 0.04 }).Npv, price.AtHigh);
        Assert.Equal(Outlook.Npv, price.AtLow);
        Assert.Equal(Outlook.Npv, tornado.Base);
        Assert.Equal(10, tornado.Bars.Single(b => b.Range.Input == OutlookInput.RunningCostsPerYear).Base);
    }

    [Fact]
    public void The_longest_bar_comes_first_whatever_the_order_given()
    {
        DeclaredRange[] ranges = [OutlookInput.ResidualValue.Between(0, 10), OutlookInput.PriceGrowth.Between(-0.02, 0.06), OutlookInput.AgeingPerYear.Between(0, 0.01)];
        var tornado = Outlook.Tornado(ranges);
        Assert.Equal("import price growth", tornado.Bars[0].Range.Input.Name);
        Assert.Equal(tornado.Bars.Select(b => b.Swing.Amount).OrderDescending(), tornado.Bars.Select(b => b.Swing.Amount));
        Assert.Equal(tornado.Bars, Outlook.Tornado([.. ranges.Reverse()]).Bars);
    }

    [Fact]
    public void A_residual_value_moves_the_undiscounted_position_one_for_one() =>
        Assert.Equal(500m, Outlook.Tornado([OutlookInput.ResidualValue.Between(-200, 300)], OutlookMeasure.PositionAtHorizon).Bars[0].Swing.Amount);

    [Fact]
    public void A_tornado_says_what_moves_most_and_what_turns_the_sign()
    {
        var words = Outlook.Tornado([OutlookInput.PriceGrowth.Between(-0.1, 0.05), OutlookInput.AgeingPerYear.Between(0, 0.01)]).Say(CultureInfo.InvariantCulture);
        Assert.Equal("Import price growth", words.Figure);
        Assert.Contains("moves the net present value most: from ", words.Words, StringComparison.Ordinal);
        Assert.Single(words.Cautions);
    }

    [Fact]
    public void A_grid_holds_the_outlook_at_each_pair()
    {
        var grid = Outlook.Grid(OutlookInput.PriceGrowth.Between(0, 0.04), OutlookInput.DiscountRate.Between(0, 0.08), steps: 3);
        Assert.Equal(Outlook.With(Outlook.Assumptions with { PriceGrowth = 0.02, DiscountRate = 0.08 }).Npv, grid.Amounts[1][2]);
        Assert.Equal(4, grid.Say(CultureInfo.InvariantCulture).Tables[0].Columns.Count);
    }

    [Fact]
    public void At_the_break_even_the_value_is_just_0() => Gen.Double[0, 0.1].Sample(rate =>
    {
        var outlook = Outlook.With(Outlook.Assumptions with { DiscountRate = rate });
        var even = outlook.BreakEven(OutlookInput.YieldFactor.Between(0.1, 2));
        Assert.Equal(BreakEvenEnd.Found, even.End);
        Assert.Equal(0, outlook.With(outlook.Assumptions with { YieldFactor = even.Values[0] }).ExactNpv, 1e-6);
    }, iter: 20);

    [Fact]
    public void The_break_even_discount_rate_is_the_rate_of_return() =>
        Assert.Equal(Outlook.Irr.Roots[0].PerYear, Outlook.BreakEven(OutlookInput.DiscountRate.Between(0, 0.5)).Values[0], 3);

    [Fact]
    public void Where_no_value_helps_it_says_why()
    {
        var hopeless = YearSite.Worth(cost: 90_000m).Outlook(YearSite.Plain);
        var even = hopeless.BreakEven(OutlookInput.PriceGrowth.Between(-0.02, 0.05));
        Assert.Equal(BreakEvenEnd.AlwaysBelow, even.End);
        var finding = even.Say(CultureInfo.InvariantCulture);
        Assert.Equal("none", finding.Figure);
        Assert.Contains("Of the two ends it is nearer to 0 at 5.0 % a year: a range that goes further up may hold a value.", finding.Words, StringComparison.Ordinal);
        Assert.StartsWith("for the import price growth from −2.0 % a year to 5.0 % a year: the net present value stays below 0, −€", finding.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void An_amount_that_crosses_0_twice_gives_both_values() // by hand: x² − 0.01 is 0 at ±0.1
    {
        var square = new OutlookMeasure("a square", o => (o.Assumptions.PriceGrowth * o.Assumptions.PriceGrowth) - 0.01);
        var even = Outlook.BreakEven(OutlookInput.PriceGrowth.Between(-0.4, 0.41), square);
        Assert.Equal(BreakEvenEnd.Several, even.End);
        Assert.Equal(-0.1, even.Values[0], 9);
        Assert.Equal(0.1, even.Values[1], 9);
    }

    [Fact]
    public void Every_point_of_a_break_even_line_is_just_0()
    {
        var line = Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.YieldFactor.Between(0.1, 2), steps: 5);
        Assert.Equal(5, line.Points.Count);
        foreach (var (rate, yield) in line.Points)
            Assert.Equal(0, Outlook.With(Outlook.Assumptions with { DiscountRate = rate, YieldFactor = yield }).ExactNpv, 1e-6);
        Assert.StartsWith("values of the discount rate go with a value of the future generation at which the net present value is just 0: ", line.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_break_even_line_tells_which_side_of_each_point_gains() // by hand: a square is below 0 between its two zeros
    {
        BreakEvenLine Line(DeclaredRange solved, Func<Outlook, double> amount) =>
            Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), solved, 2, new OutlookMeasure("amount", amount));
        var square = Line(OutlookInput.PriceGrowth.Between(-0.4, 0.41), o => (o.Assumptions.PriceGrowth * o.Assumptions.PriceGrowth) - 0.01);
        Assert.Equal([false, true, false, true], square.GainsAbove);
        Assert.DoesNotContain(square.Say(CultureInfo.InvariantCulture).Notes, n => n.Contains("At higher", StringComparison.Ordinal) || n.Contains("At lower", StringComparison.Ordinal));
        var atTheEnd = Line(OutlookInput.PriceGrowth.Between(0, 0.25), o => 0.25 - o.Assumptions.PriceGrowth);
        Assert.Equal([false, false], atTheEnd.GainsAbove);
        Assert.Equal([true, true], Line(OutlookInput.PriceGrowth.Between(-0.25, 0), o => o.Assumptions.PriceGrowth).GainsAbove);
        var touching = Line(OutlookInput.PriceGrowth.Between(-0.25, 0.25), o => o.Assumptions.PriceGrowth * o.Assumptions.PriceGrowth);
        Assert.Equal([null, null], touching.GainsAbove);
        Assert.Contains("At 2 of the values the amount only touches 0 and lies on the same side of it below and above.", touching.Say(CultureInfo.InvariantCulture).Notes);
        Assert.Contains("At lower values of the import price growth than these the amount is above 0, at higher ones below.", atTheEnd.Say(CultureInfo.InvariantCulture).Notes);
        Assert.Contains(
            $"As it stands: discount rate {OutlookInput.DiscountRate.InWords(Outlook.Assumptions.DiscountRate, Outlook.Currency, CultureInfo.InvariantCulture)}, " +
            $"import price growth {OutlookInput.PriceGrowth.InWords(Outlook.Assumptions.PriceGrowth, Outlook.Currency, CultureInfo.InvariantCulture)}.",
            atTheEnd.Say(CultureInfo.InvariantCulture).Notes);
    }

    [Theory]
    [InlineData(10.5, 11, true)]
    [InlineData(10, 10, true)]
    [InlineData(20, 20, true)]
    public void A_whole_input_gains_from_the_value_found_on(double zero, double found, bool gains) // by hand: years less a number, and its opposite
    {
        var rising = Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.Horizon.Between(5, 20), 2, new OutlookMeasure("amount", o => o.Assumptions.Years - zero));
        Assert.Equal([found, found], rising.Points.Select(p => p.Solved));
        Assert.Equal([gains, gains], rising.GainsAbove);
        var falling = Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.Horizon.Between(5, 20), 2, new OutlookMeasure("amount", o => zero - o.Assumptions.Years));
        Assert.Equal([found, found], falling.Points.Select(p => p.Solved));
        Assert.Equal([!gains, !gains], falling.GainsAbove);
        Assert.Equal(zero != found ? 2 : 0, rising.Jumps.Count);
        var said = rising.Say(CultureInfo.InvariantCulture);
        Assert.Contains(zero != found ? "changes its sign" : "is just 0", said.Words, StringComparison.Ordinal);
        Assert.Contains($"At {(zero != found ? "these and higher values of the horizon" : "higher values of the horizon than these")} the amount is above 0, at lower ones below.", said.Notes);
        Assert.Equal(zero != found, said.Notes.Contains("From the horizon named on, the amount lies on the other side of 0; no whole number gives just 0."));
    }

    [Fact]
    public void A_line_leaves_the_range_at_its_own_pair() // by hand: growth and rate add up to 12 %
    {
        var line = Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.PriceGrowth.Between(0, 0.1), 3,
            new OutlookMeasure("amount", o => o.Assumptions.PriceGrowth + o.Assumptions.DiscountRate - 0.12));
        Assert.Equal([0], line.AlwaysBelow);
        var (across, solved) = Assert.Single(line.Edges);
        Assert.Equal((0.02, 0.1), (Math.Round(across, 9), solved));
        Assert.Equal([true, true], line.GainsAbove);
    }

    [Fact]
    public void Where_the_input_solved_for_does_not_matter_the_line_stands_upright()
    {
        var line = Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.PriceGrowth.Between(0, 0.05), 3, new OutlookMeasure("amount", o => 0.07 - o.Assumptions.DiscountRate));
        Assert.Equal([0, 0.05], line.AlwaysAbove);
        Assert.Equal([0.1], line.AlwaysBelow);
        Assert.Equal([(0.07, 0), (0.07, 0.05)], line.Edges.Select(e => (Math.Round(e.Across, 9), e.Solved)));
        Assert.Contains("Between 5.0 % a year and 10.0 % a year of the discount rate the amount changes its sign whatever the import price growth from 0.0 % a year to 5.0 % a year: at 7.0 % a year.",
            line.Say(CultureInfo.InvariantCulture).Notes);
        Assert.Contains("from 5.0 % a year to 10.0 % a year", Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0.05, 0.1), OutlookInput.PriceGrowth.Between(0, 0.05), 2,
            new OutlookMeasure("amount", _ => 1)).Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_that_was_not_looked_into_to_the_end_is_on_neither_side() // a wave that almost touches 0, twelve times over
    {
        var line = Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.YieldFactor.Between(0, 2), 2,
            new OutlookMeasure("amount", o => 1.000001 + Math.Cos(12 * Math.PI * o.Assumptions.YieldFactor)));
        Assert.Equal(2, line.Unclear.Count);
        Assert.Empty(line.AlwaysAbove);
        Assert.Empty(line.AlwaysBelow);
    }

    [Fact]
    public void A_leap_is_no_zero()
    {
        var line = Outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.YieldFactor.Between(0, 2), 2, new OutlookMeasure("amount", o => o.Assumptions.YieldFactor < 0.7 ? -1 : 1));
        Assert.Equal(line.Points, line.Jumps);
        Assert.Contains("It leaps over 0, so that no value gives just 0, with a future generation of 70.0 % at 0.0 % a year, 70.0 % at 10.0 % a year.", line.Say(CultureInfo.InvariantCulture).Notes);
    }

    [Fact]
    public void A_range_beyond_what_an_outlook_takes_is_refused()
    {
        Assert.StartsWith("Found a rate of 5, expected", Assert.Throws<ArgumentOutOfRangeException>(() => OutlookInput.PriceGrowth.Between(0, 5)).Message, StringComparison.Ordinal);
        Assert.Equal("future generation: found a range from -1 to 1, expected one within 0 to 2.", Assert.Throws<ArgumentException>(() => OutlookInput.YieldFactor.Between(-1, 1)).Message);
        Assert.StartsWith("Found \"discount rate\" twice", Assert.Throws<ArgumentException>(() =>
            Outlook.Tornado([OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.DiscountRate.Between(0, 0.2)])).Message, StringComparison.Ordinal);
    }
}
